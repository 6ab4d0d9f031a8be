using BuckGen.Design.Bucks;

namespace BuckGen.Design.Trimming;

/// <summary>The template by which a flange is routed to width, and the nest the part hangs in meanwhile. Lengths in mm.</summary>
/// <param name="Stock">Stock both are cut from.</param>
public sealed record FlangeSpec(Stock Stock)
{
    /// <summary>Width of the finished flange, from the part's wall.</summary>
    public double Width { get; init; } = FlangeSettings.Width.Value;

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
        FlangeSettings.Bit.Require(Bit);
        RequireBushing();
        FlangeSettings.Land.Require(Land);
        FlangeSettings.Screw.Require(Screw);
    }

    /// <summary>Refuses a bushing that is too large, or smaller than the bit.</summary>
    internal void RequireBushing() => (FlangeSettings.Bushing with { Min = Bit }).Require(Bushing);
}
