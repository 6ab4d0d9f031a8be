namespace BuckGen.Jobs;

/// <summary>A job file that can't be used: the message names file, line, value and remedy.</summary>
/// <param name="message">One clear line.</param>
public sealed class JobFileException(string message) : Exception(message);
