using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Trimming;

/// <summary>The formed part, flange down: its outer and inner outline at every distance from the flange.</summary>
/// <remarks>
/// The flange lies in the plane where the wall starts: at the foot of a male buck, at the rim of a cavity. Going away from it the
/// part grows narrower in both cases. One face of the wall touched the buck; the other lies a wall thickness away.
/// </remarks>
public sealed class PartShell
{
    private readonly DraftedShape shape;
    private readonly BuckKind kind;
    private readonly double wall;
    private readonly IOffsetter offsetter;
    private readonly CancellationToken cancellation;

    /// <param name="shape">The drafted solid.</param>
    /// <param name="kind">Male or female.</param>
    /// <param name="wall">Thickness of the wall measured level, mm.</param>
    /// <param name="offsetter">Makes the offsets.</param>
    /// <param name="cancellation">Stops the work.</param>
    internal PartShell(DraftedShape shape, BuckKind kind, double wall, IOffsetter offsetter, CancellationToken cancellation) =>
        (this.shape, this.kind, this.wall, this.offsetter, this.cancellation) = (shape, kind, wall, offsetter, cancellation);

    /// <summary>From the flange to the face, mm.</summary>
    public double Depth => shape.Face - shape.Foot;

    /// <summary>The part's outside at a distance from the flange.</summary>
    /// <param name="fromFlange">The distance, mm, from 0 to <see cref="Depth"/>.</param>
    public Region Outside(double fromFlange) => kind == BuckKind.Male ? Moved(Touching(fromFlange), wall) : Touching(fromFlange);

    /// <summary>The part's inside at a distance from the flange.</summary>
    /// <param name="fromFlange">The distance, mm, from 0 to <see cref="Depth"/>.</param>
    public Region Inside(double fromFlange) => kind == BuckKind.Male ? Touching(fromFlange) : Moved(Touching(fromFlange), -wall);

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

    private Region Touching(double fromFlange) =>
        shape.At(kind == BuckKind.Male ? shape.Foot + fromFlange : shape.Face - fromFlange, cancellation);
}
