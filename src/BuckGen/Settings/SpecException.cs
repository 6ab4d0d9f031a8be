namespace BuckGen.Settings;

/// <summary>A job that can't be worked on as written; the message names the value, the limit and the remedy.</summary>
/// <param name="message">One clear line.</param>
public sealed class SpecException(string message) : Exception(message);
