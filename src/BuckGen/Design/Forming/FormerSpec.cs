using BuckGen.Design.Bucks;

namespace BuckGen.Design.Forming;

/// <summary>The machine that softens the sheet and pulls it over the buck. Lengths in mm.</summary>
public sealed record FormerSpec
{
    /// <summary>Clear opening of the clamp frame; null when the blank decides it.</summary>
    public RectangleSize? Opening { get; init; }

    /// <summary>How far the buck can be lifted into the sheet; null when not given.</summary>
    public double? Travel { get; init; }

    /// <summary>
    /// From the buck to the inside of the frame; null for as much as the buck is high, 25 at least. Measured: nearer to the frame
    /// than its own height the wall beside it thins further (Takahashi and Bando, Dental Traumatology 2018).
    /// </summary>
    public double? Gap { get; init; }

    /// <summary>Temperature of the heater, °C, 100 to 1000; 400 is common practice (no source).</summary>
    public double Heater { get; init; } = 400;

    /// <summary>True for a second heater under the sheet.</summary>
    public bool HeaterBelow { get; init; }

    /// <summary>
    /// How much smaller than the cavity's floor, on every side, the plug is that pushes the sheet in, mm; null for no plug. Only
    /// a cavity takes one.
    /// </summary>
    public double? PlugGap { get; init; }

    /// <summary>What the frame holds on each edge. 12 to 25 mm is common practice (no source).</summary>
    public double Grip { get; init; } = 15;

    /// <summary>What the seal needs beside the grip. 10 to 15 mm is common practice (no source).</summary>
    public double Lip { get; init; } = 12;

    internal void Validate()
    {
        if (Opening is { } opening)
        {
            SpecRange.Require(opening.Width is >= 50 and <= 5000, "width of the clamp frame", opening.Width, " mm", "from 50 to 5000 mm");
            SpecRange.Require(opening.Height is >= 50 and <= 5000, "height of the clamp frame", opening.Height, " mm", "from 50 to 5000 mm");
        }

        if (Travel is { } travel) SpecRange.Require(travel is >= 1 and <= 2000, "travel of the former", travel, " mm", "from 1 to 2000 mm");
        if (Gap is { } gap) SpecRange.Require(gap is >= 0 and <= 1000, "gap between buck and frame", gap, " mm", "from 0 to 1000 mm");
        if (PlugGap is { } plug) SpecRange.Require(plug is >= 0 and <= 200, "gap round the plug", plug, " mm", "from 0 to 200 mm");
        SpecRange.Require(Heater is >= 100 and <= 1000, "temperature of the heater", Heater, " degrees C", "from 100 to 1000 degrees C");
        SpecRange.Require(Grip is >= 0 and <= 100, "grip of the clamp frame", Grip, " mm", "from 0 to 100 mm");
        SpecRange.Require(Lip is >= 0 and <= 100, "seal lip", Lip, " mm", "from 0 to 100 mm");
    }
}
