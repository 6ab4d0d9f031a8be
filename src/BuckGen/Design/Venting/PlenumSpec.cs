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
    public double Width { get; init; } = PlenumSettings.Width.Value;

    /// <summary>Where the channels come together, over the platen's port; null for the middle of the base.</summary>
    public Vec2? Port { get; init; }

    /// <summary>Diameter of the opening over the port.</summary>
    public double PortDiameter { get; init; } = PlenumSettings.PortDiameter.Value;

    /// <summary>Most the base may bow between its supports under one atmosphere.</summary>
    public double MaxBow { get; init; } = PlenumSettings.MaxBow.Value;

    internal void Validate(BasePlate? plate)
    {
        if (plate is null) throw new SpecException("A plenum needs a base plate above it; add a base.");
        PlenumSettings.Width.Require(Width);
        PlenumSettings.PortDiameter.Require(PortDiameter);
        PlenumSettings.MaxBow.Require(MaxBow);
        PlenumSettings.BaseThickness.Require((plate.Under ?? plate.Stock).Thickness);
        if (Port is { IsFinite: false }) throw new SpecException("The place of the port must be two numbers.");
        Stock.Validate();
    }
}
