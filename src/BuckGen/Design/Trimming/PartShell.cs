using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Trimming;

/// <summary>The formed part, flange down: its outer and inner outline at every distance from the flange.</summary>
/// <remarks>
/// The flange lies in the plane where the wall starts: at the foot of a male buck, at the rim of a cavity. Going away from it the
/// part grows narrower in both cases. One side of the wall touched the buck; the other lies a wall thickness away. All measures
/// are those of the cooled part.
/// </remarks>
public sealed class PartShell
{
    private readonly DraftedShape shape;
    private readonly StackSpec spec;
    private readonly PartWall wall;
    private readonly Cooling cooling;
    private readonly IOffsetter offsetter;
    private readonly CancellationToken cancellation;

    /// <param name="shape">The drafted solid.</param>
    /// <param name="spec">Kind and draft.</param>
    /// <param name="wall">Thickness of the wall.</param>
    /// <param name="cooling">How the part shrinks.</param>
    /// <param name="offsetter">Makes the offsets.</param>
    /// <param name="cancellation">Stops the work.</param>
    internal PartShell(DraftedShape shape, StackSpec spec, PartWall wall, Cooling cooling, IOffsetter offsetter,
        CancellationToken cancellation) =>
        (this.shape, this.spec, this.wall, this.cooling, this.offsetter, this.cancellation) =
        (shape, spec, wall, cooling, offsetter, cancellation);

    /// <summary>From the flange to the face of the cooled part, on the side that touched the wood, mm.</summary>
    public double Depth => (shape.Face - shape.Foot) * cooling.Scale;

    /// <summary>From the flange to the inside of the face, mm.</summary>
    internal double InsideFace => IsMale ? Depth : Depth - wall.Face;

    /// <summary>Slope of the wall, degrees.</summary>
    internal double Draft => spec.Draft;

    /// <summary>Thickness of the wall.</summary>
    public PartWall Wall => wall;

    /// <summary>The part's outside at a distance from the flange.</summary>
    /// <param name="fromFlange">The distance, mm, from 0 to <see cref="Depth"/>.</param>
    public Region Outside(double fromFlange) =>
        IsMale ? Moved(Touching(fromFlange), LevelWall(fromFlange)) : Touching(fromFlange);

    /// <summary>The part's inside at a distance from the flange.</summary>
    /// <param name="fromFlange">The distance, mm, from 0 to <see cref="Depth"/>.</param>
    public Region Inside(double fromFlange) =>
        IsMale ? Touching(fromFlange) : Moved(Touching(fromFlange), -LevelWall(fromFlange));

    /// <summary>A region set off with round corners.</summary>
    /// <param name="region">The region.</param>
    /// <param name="distance">How far its edge is moved outward, mm; negative inward.</param>
    public Region Moved(Region region, double distance)
    {
        ArgumentNullException.ThrowIfNull(region);
        return distance == 0 || region.IsEmpty ? region : offsetter.Offset(region, distance, CornerJoin.Round, cancellation);
    }

    /// <summary>The outer edges alone: what stands inside a counter is no part of a ring round the part.</summary>
    public static Region Filled(Region region)
    {
        ArgumentNullException.ThrowIfNull(region);
        var outers = region.Islands.Select(i => i.Outer).ToArray();
        return new([.. outers.Where(o => !outers.Any(other => other != o && Nesting.Encloses(other, o)))
            .Select(o => new Island(o, []))]);
    }

    /// <summary>The side of the wall that touched the wood, at a distance from the flange.</summary>
    internal Region Touching(double fromFlange)
    {
        var onWood = fromFlange / cooling.Scale;
        return cooling.Apply(shape.At(IsMale ? shape.Foot + onWood : shape.Face - onWood, cancellation));
    }

    /// <summary>True when it was formed over a raised buck.</summary>
    internal bool IsMale => spec.Kind == BuckKind.Male;

    private double LevelWall(double fromFlange) => wall.LevelAt(fromFlange, spec.Draft);
}
