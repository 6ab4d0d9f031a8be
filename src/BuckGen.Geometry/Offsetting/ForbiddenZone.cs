namespace BuckGen.Geometry.Offsetting;

/// <summary>
/// A part of the plane where no point of the offset can lie, because it is nearer to the outline than the distance.
/// </summary>
internal abstract class ForbiddenZone
{
    public abstract Bounds Bounds { get; }

    /// <summary>True when the point lies inside by more than <see cref="Precision.Depth"/>.</summary>
    public abstract bool Contains(Vec2 p);

    /// <summary>True when the straight way between two points of the zone never leaves it.</summary>
    public abstract bool IsConvex { get; }

    /// <summary>Adds the parameters at which a piece crosses the zone's edge.</summary>
    public abstract void AddCrossings(Carrier piece, ref ParameterList found);
}
