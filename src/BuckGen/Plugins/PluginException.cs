namespace BuckGen.Plugins;

/// <summary>A plug-in failed, or is not called any more.</summary>
/// <param name="message">What happened, to stand after its name.</param>
internal sealed class PluginException(string message) : Exception(message);
