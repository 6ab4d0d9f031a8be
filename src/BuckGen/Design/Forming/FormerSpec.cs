using BuckGen.Design.Bucks;

namespace BuckGen.Design.Forming;

/// <summary>The machine that softens the sheet and pulls it over the buck. Lengths in mm.</summary>
public sealed record FormerSpec
{
    /// <summary>Clear opening of the clamp frame; null when the blank decides it.</summary>
    public RectangleSize? Opening { get; init; }

    /// <summary>What the buck stands on; null when not given.</summary>
    public RectangleSize? Platen { get; init; }

    /// <summary>How far the buck can be lifted into the sheet; null when not given.</summary>
    public double? Travel { get; init; }

    /// <summary>
    /// From the buck to the inside of the frame; null for as much as the buck is high, 25 at least. Measured: nearer to the frame
    /// than its own height the wall beside it thins further (Takahashi and Bando, Dental Traumatology 2018).
    /// </summary>
    public double? Gap { get; init; }

    /// <summary>
    /// Room between the base and the inside of the frame, on every side, 0 to 100: the base goes through the frame with the sheet
    /// over its edge. 3 is common practice (no source).
    /// </summary>
    public double BaseGap { get; init; } = FormerSettings.BaseGap.Value;

    /// <summary>Temperature of the heater, °C, 100 to 1000; 400 is common practice (no source).</summary>
    public double Heater { get; init; } = FormerSettings.Heater.Value;

    /// <summary>True for a second heater under the sheet.</summary>
    public bool HeaterBelow { get; init; }

    /// <summary>
    /// How much smaller than the cavity's floor, on every side, the plug is that pushes the sheet in, mm; null for no plug. Only
    /// a cavity takes one.
    /// </summary>
    public double? PlugGap { get; init; }

    /// <summary>
    /// How deep the plug goes below the rim of the cavity, mm; null for as far above the floor as <see cref="PlugGap"/>.
    /// </summary>
    public double? PlugDepth { get; init; }

    /// <summary>What the frame holds on each edge. 12 to 25 mm is common practice (no source).</summary>
    public double Grip { get; init; } = FormerSettings.Grip.Value;

    /// <summary>What the seal needs beside the grip. 10 to 15 mm is common practice (no source).</summary>
    public double Lip { get; init; } = FormerSettings.Lip.Value;

    internal void Validate()
    {
        if (Opening is { } opening) FormerSettings.Frame.Require(opening.Width, opening.Height);
        if (Platen is { } platen) FormerSettings.Platen.Require(platen.Width, platen.Height);
        FormerSettings.Travel.Require(Travel);
        FormerSettings.Gap.Require(Gap);
        FormerSettings.BaseGap.Require(BaseGap);
        FormerSettings.PlugGap.Require(PlugGap);
        FormerSettings.PlugDepth.Require(PlugDepth);
        FormerSettings.Heater.Require(Heater);
        FormerSettings.Grip.Require(Grip);
        FormerSettings.Lip.Require(Lip);
    }
}
