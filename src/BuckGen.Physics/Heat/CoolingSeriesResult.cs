namespace BuckGen.Physics.Heat;

/// <summary>A part that cools on a buck.</summary>
/// <param name="Seconds">From the touch until it can be taken off, s.</param>
/// <param name="BuckBefore">Temperature of the buck's face when the sheet comes down, degrees C.</param>
/// <param name="BuckAfter">Temperature of the buck's face when the part is taken off, degrees C.</param>
public readonly record struct CooledPart(double Seconds, double BuckBefore, double BuckAfter);

/// <summary>The parts of a series.</summary>
/// <param name="First">The first part; null when it does not become cold enough within a day.</param>
/// <param name="Later">
/// A part after a number that makes each like the one before; null when such a part does not become cold enough within a day.
/// </param>
public sealed record CoolingSeriesResult(CooledPart? First, CooledPart? Later);
