using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Design.Venting;

/// <summary>How the base is kept off the former's platen.</summary>
public enum PlenumKind
{
    /// <summary>Feet glued under the base; the air goes between them.</summary>
    Feet,

    /// <summary>A plate with channels that join every bore to the port; elsewhere the base lies on wood.</summary>
    Channels,
}

/// <summary>The layer under the base that leads the air away. Lengths in mm.</summary>
/// <param name="Stock">Stock it is cut from.</param>
/// <param name="Kind">Feet or channels.</param>
public sealed record PlenumSpec(Stock Stock, PlenumKind Kind = PlenumKind.Channels)
{
    /// <summary>Width of a channel, or diameter of a foot.</summary>
    public double Width { get; init; } = 10;

    /// <summary>Where the channels come together, over the platen's port; null for the middle of the base.</summary>
    public Vec2? Port { get; init; }

    /// <summary>Diameter of the opening over the port.</summary>
    public double PortDiameter { get; init; } = 25;

    /// <summary>Most the base may bow between its supports under one atmosphere.</summary>
    public double MaxBow { get; init; } = 0.3;

    internal void Validate(BasePlate? plate)
    {
        if (plate is null) throw new SpecException("A plenum needs a base plate above it; add a base.");
        SpecRange.Require(Width is >= 3 and <= 100, "width of plenum channels and feet", Width, " mm", "from 3 to 100 mm");
        SpecRange.Require(PortDiameter is >= 3 and <= 200, "diameter of the port", PortDiameter, " mm", "from 3 to 200 mm");
        SpecRange.Require(MaxBow is >= 0.01 and <= 5, "largest bow of the base", MaxBow, " mm", "from 0.01 to 5 mm");
        SpecRange.Require(
            (plate.Under ?? plate.Stock).Thickness is >= 2.5 and <= 45, "thickness of the base over a plenum",
            (plate.Under ?? plate.Stock).Thickness, " mm", "from 2.5 to 45 mm");
        SpecRange.Require(Port is not { IsFinite: false }, "place of the port", double.NaN, " mm", "two numbers");
        Stock.Validate();
    }
}
