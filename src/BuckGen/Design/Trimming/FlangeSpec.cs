using BuckGen.Design.Bucks;

namespace BuckGen.Design.Trimming;

/// <summary>The template by which a flange is routed to width, and the nest the part hangs in meanwhile. Lengths in mm.</summary>
/// <param name="Stock">Stock both are cut from.</param>
public sealed record FlangeSpec(Stock Stock)
{
    /// <summary>Width of the finished flange, from the part's wall.</summary>
    public double Width { get; init; } = 15;

    /// <summary>Outer diameter of the guide bushing, or diameter of the bearing.</summary>
    public double Bushing { get; init; } = 16;

    /// <summary>Diameter of the bit.</summary>
    public double Bit { get; init; } = 6;

    /// <summary>Wood of the nest beyond the trim line, for clamps and screws.</summary>
    public double Land { get; init; } = 40;

    /// <summary>Diameter of the screw holes in the nest.</summary>
    public double Screw { get; init; } = 4.5;

    /// <summary>
    /// How far the template stays inside the trim line: half the difference of bushing and bit. Source: a cutter maker's tips
    /// (guide bush 30 mm, cutter 10 mm: 10 mm).
    /// </summary>
    public double Offset => (Bushing - Bit) / 2;

    internal void Validate()
    {
        Stock.Validate();
        SpecRange.Require(Width is >= 2 and <= 200, "width of the flange", Width, " mm", "from 2 to 200 mm");
        SpecRange.Require(Bit is >= 1 and <= 50, "diameter of the bit", Bit, " mm", "from 1 to 50 mm");
        SpecRange.Require(Bushing >= Bit && Bushing <= 100, "diameter of the bushing", Bushing, " mm", FormattableString.Invariant($"from the bit's {Bit} to 100 mm"));
        SpecRange.Require(Land is >= 10 and <= 300, "land of the nest", Land, " mm", "from 10 to 300 mm");
        SpecRange.Require(Screw is >= 1 and <= 20, "diameter of the screw holes", Screw, " mm", "from 1 to 20 mm");
    }
}
