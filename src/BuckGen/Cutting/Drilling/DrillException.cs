namespace BuckGen.Cutting.Drilling;

/// <summary>Holes or settings out of range, or a drill file that does not hold its holes; nothing is written.</summary>
/// <param name="message">One clear line with the value and its limit.</param>
public sealed class DrillException(string message) : Exception(message);
