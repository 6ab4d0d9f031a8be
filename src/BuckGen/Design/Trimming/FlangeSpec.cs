using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Design.Trimming;

/// <summary>The finished edge of a flange.</summary>
public enum FlangeRim
{
    /// <summary>The part's own outline, set off by the width.</summary>
    Offset,

    /// <summary>One upright rectangle round all of the part, its corners rounded on request.</summary>
    Rectangle,

    /// <summary>An outline drawn for it.</summary>
    Drawn,
}

/// <summary>The template by which a flange is routed to width, and the nest the part hangs in meanwhile. Lengths in mm.</summary>
/// <param name="Stock">Stock both are cut from.</param>
public sealed record FlangeSpec(Stock Stock)
{
    /// <summary>
    /// Width of the finished flange, from the part's wall; for a rectangle or a drawing the minimum, below which a finding names
    /// the narrowest place.
    /// </summary>
    public double Width { get; init; } = FlangeSettings.Width.Value;

    /// <summary>The finished edge.</summary>
    public FlangeRim Rim { get; init; } = FlangeSettings.Rim.Default;

    /// <summary>From the part to the sides of a rectangle; null for the width.</summary>
    public double? Margin { get; init; }

    /// <summary>Radius of a rectangle's corners, less than half of its shorter side.</summary>
    public double CornerRadius { get; init; } = FlangeSettings.CornerRadius.Value;

    /// <summary>
    /// The drawn rim, in the coordinates of the part's drawing; holes in it are cut too. Only for <see cref="FlangeRim.Drawn"/>.
    /// </summary>
    public Region? Outline { get; init; }

    /// <summary>Outer diameter of the guide bushing, or diameter of the bearing.</summary>
    public double Bushing { get; init; } = FlangeSettings.Bushing.Value;

    /// <summary>Diameter of the bit.</summary>
    public double Bit { get; init; } = FlangeSettings.Bit.Value;

    /// <summary>Wood of the nest beyond the trim line, for clamps and screws.</summary>
    public double Land { get; init; } = FlangeSettings.Land.Value;

    /// <summary>Diameter of the screw holes in the nest.</summary>
    public double Screw { get; init; } = FlangeSettings.Screw.Value;

    /// <summary>
    /// How far the template stays inside the trim line: half the difference of bushing and bit. Source: a cutter maker's tips
    /// (guide bush 30 mm, cutter 10 mm: 10 mm).
    /// </summary>
    public double Offset => (Bushing - Bit) / 2;

    internal void Validate()
    {
        Stock.Validate();
        FlangeSettings.Width.Require(Width);
        FlangeSettings.Margin.Require(Margin);
        FlangeSettings.CornerRadius.Require(CornerRadius);
        if (Rim == FlangeRim.Drawn && Outline is not { IsEmpty: false })
            throw new SpecException("The flange's rim is set to drawn, but no outline is given for it; name its drawing.");
        if (Rim != FlangeRim.Drawn && Outline is not null)
            throw new SpecException(
                "The flange has a drawn outline, but its rim is not set to drawn; set the rim to drawn or leave the drawing "
                + "out.");
        FlangeSettings.Bit.Require(Bit);
        RequireBushing();
        FlangeSettings.Land.Require(Land);
        FlangeSettings.Screw.Require(Screw);
    }

    /// <summary>Refuses a bushing that is too large, or smaller than the bit.</summary>
    internal void RequireBushing() => (FlangeSettings.Bushing with { Min = Bit }).Require(Bushing);
}
