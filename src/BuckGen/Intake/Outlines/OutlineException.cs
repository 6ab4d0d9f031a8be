namespace BuckGen.Intake.Outlines;

/// <summary>An outline that can't be used: the message names the place, the value, the limit and the remedy.</summary>
/// <param name="message">One clear line.</param>
/// <param name="inner">What lies behind it, if anything.</param>
public sealed class OutlineException(string message, Exception? inner = null) : Exception(message, inner);
