namespace BuckGen.Cli;

/// <summary>The answer can't be printed: the stream is closed, or the disk behind it is full.</summary>
/// <param name="why">What the stream says.</param>
internal sealed class PrintException(Exception why) : IOException($"The answer could not be printed ({why.Message.TrimEnd('.')}).", why);
