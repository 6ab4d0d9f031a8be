using System.Collections.Immutable;
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
    private readonly ImmutableArray<PartShell> pieces = [];

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

    private PartShell(ImmutableArray<PartShell> pieces)
        : this(pieces[0].shape, pieces[0].spec, pieces[0].wall, pieces[0].cooling, pieces[0].offsetter, pieces[0].cancellation) =>
        this.pieces = pieces;

    /// <summary>Parts formed one by one over bucks of the same depth, seen as one; none of them touches another.</summary>
    internal static PartShell Joined(ImmutableArray<PartShell> pieces) => new(pieces);

    /// <summary>From the flange to the face of the cooled part, on the side that touched the wood, mm.</summary>
    public double Depth => (shape.Face - shape.Foot) * cooling.Scale;

    /// <summary>From the flange to the inside of the face, mm.</summary>
    internal double InsideFace => IsMale ? Depth : Depth - wall.Face;

    /// <summary>The side of the wood, as the sheet met it.</summary>
    internal SideProfile Side => shape.Side;

    /// <summary>The side of the wood at a distance from the flange of the cooled part.</summary>
    /// <param name="fromFlange">mm.</param>
    internal SidePiece PieceAt(double fromFlange) => shape.Side.PieceAt(fromFlange / cooling.Scale);

    /// <summary>Thickness of the wall.</summary>
    public PartWall Wall => wall;

    /// <summary>The part's outside at a distance from the flange.</summary>
    /// <param name="fromFlange">The distance, mm, from 0 to <see cref="Depth"/>.</param>
    public Region Outside(double fromFlange) => !pieces.IsEmpty ? Together(p => p.Outside(fromFlange))
        : IsMale ? Moved(Wide(fromFlange), LevelWall(fromFlange, Beside(fromFlange, wide: true))) : Wide(fromFlange);

    /// <summary>The part's inside at a distance from the flange.</summary>
    /// <param name="fromFlange">The distance, mm, from 0 to <see cref="Depth"/>.</param>
    public Region Inside(double fromFlange) => !pieces.IsEmpty ? Together(p => p.Inside(fromFlange))
        : IsMale ? Narrow(fromFlange) : Moved(Narrow(fromFlange), -LevelWall(fromFlange, Beside(fromFlange, wide: false)));

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
    internal Region Touching(double fromFlange) => !pieces.IsEmpty ? Together(p => p.Touching(fromFlange))
        : cooling.Apply(shape.At(HeightOf(fromFlange), cancellation));

    /// <summary>True when it was formed over a raised buck.</summary>
    internal bool IsMale => spec.Kind == BuckKind.Male;

    private Region Together(Func<PartShell, Region> of) => new([.. pieces.SelectMany(p => of(p).Islands)]);

    /// <summary>How far the other side of the wall lies from the side that touched the wood, measured level, mm.</summary>
    /// <param name="fromFlange">The distance from the flange, mm.</param>
    internal double LevelWall(double fromFlange) => LevelWall(fromFlange, HeightOf(fromFlange));

    /// <summary>How much the part narrows on every side from one distance from the flange to another, mm.</summary>
    internal double Narrowing(double from, double to) =>
        (shape.Side.InsetAt(to / cooling.Scale) - shape.Side.InsetAt(from / cooling.Scale)) * cooling.Scale;

    /// <summary>Rising distances from the flange, and those at which the slope of the wall changes.</summary>
    internal IEnumerable<double> WithBends(IEnumerable<double> rising) => shape.Side.StraightDraft is not null ? rising
        : rising.Concat(shape.Side.Bends.Select(b => b.FromFlange * cooling.Scale)).Distinct().Order();

    private double LevelWall(double fromFlange, double height) =>
        shape.Side.LevelWall(shape.FromFlange(height), wall.At(fromFlange), IsMale);

    private double HeightOf(double fromFlange)
    {
        var onWood = fromFlange / cooling.Scale;
        return IsMale ? shape.Foot + onWood : shape.Face - onWood;
    }

    /// <summary>On a ledge the outside is that next to the flange, the inside that next to the face.</summary>
    private double Beside(double fromFlange, bool wide) =>
        IsMale == wide ? shape.Below(HeightOf(fromFlange)) : shape.Above(HeightOf(fromFlange));

    private Region Wide(double fromFlange) => cooling.Apply(shape.At(Beside(fromFlange, wide: true), cancellation));

    private Region Narrow(double fromFlange) => cooling.Apply(shape.At(Beside(fromFlange, wide: false), cancellation));
}
