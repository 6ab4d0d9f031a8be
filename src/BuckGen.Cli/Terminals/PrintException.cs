namespace BuckGen.Cli.Terminals;

/// <summary>The result can't be printed: the stream is closed, or the disk behind it is full.</summary>
/// <param name="why">What the stream says.</param>
internal sealed class PrintException(Exception why)
    : IOException($"The result could not be printed ({why.Message.TrimEnd('.')}).", why);
