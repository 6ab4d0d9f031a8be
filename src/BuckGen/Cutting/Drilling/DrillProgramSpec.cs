namespace BuckGen.Cutting.Drilling;

/// <summary>
/// How a machine drills. Heights in mm above the top of the stock, which is Z 0. The default speeds suit small bits in board and
/// are common practice, no source.
/// </summary>
/// <param name="SafeHeight">Where the bit travels from hole to hole, above every clamp.</param>
/// <param name="RetractHeight">Where feeding begins, and where the bit returns to clear chips; not above the safe height.</param>
/// <param name="Feed">Speed of the bit into the material, mm/min.</param>
/// <param name="SpindleSpeed">Turns of the spindle a minute.</param>
/// <param name="Peck">Depth drilled before chips are cleared, mm; null drills each hole in one go.</param>
/// <param name="Cycles">
/// True writes each hole as one drilling cycle; false as plain moves, for controllers without cycles.
/// </param>
public sealed record DrillProgramSpec(
    double SafeHeight = 10,
    double RetractHeight = 2,
    double Feed = 300,
    double SpindleSpeed = 12_000,
    double? Peck = null,
    bool Cycles = true)
{
    /// <summary>Checks every number against its range.</summary>
    /// <exception cref="DrillException">A number is out of range.</exception>
    internal void Validate()
    {
        Require(SafeHeight is >= DrillText.Step and <= 500, "safe height", SafeHeight, "mm", "above 0, up to 500 mm");
        Require(RetractHeight >= DrillText.Step && RetractHeight <= SafeHeight, "retract height", RetractHeight, "mm",
            FormattableString.Invariant($"above 0, up to the safe height of {SafeHeight} mm"));
        Require(Feed is >= DrillText.Step and <= 20_000, "feed", Feed, "mm/min", "above 0, up to 20000 mm/min");
        Require(SpindleSpeed is >= 1 and <= 100_000, "spindle speed", SpindleSpeed, "turns a minute",
            "from 1 to 100000 turns a minute");
        Require(Peck is null or (>= 0.1 and <= 1000), "peck", Peck ?? 0, "mm", "from 0.1 to 1000 mm, or left out");
    }

    private static void Require(bool holds, string what, double value, string unit, string range)
    {
        if (!holds) throw new DrillException(FormattableString.Invariant($"The {what} is {value} {unit}; it must be {range}."));
    }
}
