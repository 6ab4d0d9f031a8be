using BuckGen.Settings;

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
    /// <exception cref="SpecException">A number is out of range.</exception>
    internal void Validate()
    {
        DrillSettings.SafeHeight.Require(SafeHeight);
        DrillSettings.RetractHeight.Require(RetractHeight);
        DrillSettings.Feed.Require(Feed);
        DrillSettings.Spindle.Require(SpindleSpeed);
        DrillSettings.Peck.Require(Peck);
        if (RetractHeight > SafeHeight)
            throw new SpecException(FormattableString.Invariant(
                $"The retract height is {RetractHeight} mm; it must not be above the safe height of {SafeHeight} mm."));
    }
}
