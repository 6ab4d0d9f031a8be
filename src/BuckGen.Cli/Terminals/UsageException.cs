namespace BuckGen.Cli.Terminals;

/// <summary>Arguments that don't go together; the message says what to do instead.</summary>
/// <param name="message">One clear line.</param>
internal sealed class UsageException(string message) : Exception(message);
