using System.Collections.Concurrent;
using BuckGen.Cancellation;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Bucks;

/// <summary>The designed solid with smooth sloping walls, as its outline at every height.</summary>
/// <remarks>
/// At a distance h from the reference plane the wall stands at the outline offset by h·tan(draft), or by what the profile of its
/// side says. That is outward below the plane and inward above it on a male buck, the other way round for a cavity.
/// </remarks>
internal sealed class DraftedShape
{
    /// <summary>Farthest the wall moves between two heights that are compared or joined, mm.</summary>
    public const double SampleStep = 0.25;

    private readonly Region outline;
    private readonly StackSpec spec;
    private readonly IOffsetter offsetter;
    private readonly double? slope;
    private readonly double insetAtReference;
    private readonly Lazy<DraftedShape> finished;
    private readonly ConcurrentDictionary<double, Region> known = new();

    /// <param name="outline">The outline in the reference plane.</param>
    /// <param name="spec">Kind, draft, corners.</param>
    /// <param name="foot">Height of the lower end of the walls, mm.</param>
    /// <param name="face">Height of the upper end of the walls, mm.</param>
    /// <param name="offsetter">Makes the offsets.</param>
    /// <param name="inset">From the plane that the spec names to the reference plane, into the wall, mm, 0 or more.</param>
    /// <param name="side">The profile of the side; null for that of the spec, unscaled.</param>
    public DraftedShape(
        Region outline, StackSpec spec, double foot, double face, IOffsetter offsetter, double inset = 0,
        SideProfile? side = null)
        : this(outline, spec, foot, face, offsetter, spec.OutlineAt == OutlineAt.Face ? face - inset : foot + inset,
            side ?? SideProfile.Create(spec, face - foot), null)
    {
    }

    private DraftedShape(Region outline, StackSpec spec, double foot, double face, IOffsetter offsetter, double reference,
        SideProfile side, double? insetAtReference)
    {
        (this.outline, this.spec, this.offsetter) = (outline, spec, offsetter);
        (Foot, Face, ReferenceHeight, Side) = (foot, face, reference, side);
        slope = side.StraightDraft is { } draft ? Math.Tan(draft * Math.PI / 180) * (IsMale ? -1 : 1) : null;
        this.insetAtReference = insetAtReference ?? side.InsetAt(FromFlange(reference));
        finished = new(() => spec.EdgeRadius == 0 ? this
            : new(outline, spec, foot, face, offsetter, reference,
                RoundedEdge.Apply(side, spec.Kind, spec.EdgeRadius, spec.Tolerance.Chord), this.insetAtReference));
    }

    /// <summary>Height of the lower end of the walls, mm.</summary>
    public double Foot { get; }

    /// <summary>Height of the upper end of the walls, mm.</summary>
    public double Face { get; }

    /// <summary>Height at which the outline is to size, mm.</summary>
    public double ReferenceHeight { get; }

    /// <summary>The profile of its side.</summary>
    public SideProfile Side { get; }

    /// <summary>
    /// What the sheet meets: the same solid with its upper edge rounded. The layers are cut to the one with the sharp edge.
    /// </summary>
    public DraftedShape Finished => finished.Value;

    private bool IsMale => spec.Kind == BuckKind.Male;

    /// <summary>Distance of a height from the plane of the flange, mm.</summary>
    public double FromFlange(double height) => IsMale ? height - Foot : Face - height;

    /// <summary>How far the wall stands outside the drawn outline at a height, mm; negative inside.</summary>
    public double OffsetAt(double height) => slope is { } straight ? (height - ReferenceHeight) * straight
        : insetAtReference - Side.InsetAt(FromFlange(height));

    /// <summary>Where the wall stands at an offset, between the reference plane and another height.</summary>
    /// <param name="offset">From 0 to the offset at <paramref name="end"/>.</param>
    /// <param name="end">The other height.</param>
    public double HeightOf(double offset, double end)
    {
        if (slope is not null) return ReferenceHeight + (end - ReferenceHeight) * Math.Abs(offset / OffsetAt(end));
        double[] heights = [.. WithBends([Math.Min(ReferenceHeight, end), Math.Max(ReferenceHeight, end)])];
        if (end < ReferenceHeight) Array.Reverse(heights);
        foreach (var (from, to) in heights.Zip(heights.Skip(1)))
            if ((OffsetAt(from), OffsetAt(to)) is var (start, stop) && start != stop
                && (offset - start) / (stop - start) is <= 1 and var t)
                return from + (to - from) * Math.Max(0, t);
        return end;
    }

    /// <summary>Height at which the round of the upper edge begins on the wall, mm; the face when the edge is sharp.</summary>
    public double RoundFrom => spec.EdgeRadius == 0 ? Face
        : Face - spec.EdgeRadius * (1 - Math.Sin((IsMale ? Side.Pieces.Last() : Side.Pieces.First()).Draft * Math.PI / 180));

    /// <summary>A height just over a ledge, when one lies there; else the height itself.</summary>
    public double Above(double height) => Beside(height, up: true);

    /// <summary>A height just under a ledge, when one lies there; else the height itself.</summary>
    public double Below(double height) => Beside(height, up: false);

    /// <summary>Heights of the ledges, rising, mm.</summary>
    public IEnumerable<double> Ledges => Side.StraightDraft is not null ? []
        : Side.Pieces.Where(p => p.IsLedge).Select(p => HeightAt((p.Start.FromFlange + p.End.FromFlange) / 2)).Order();

    /// <summary>Rising heights, and those between the first and the last at which the slope of the wall changes.</summary>
    public IEnumerable<double> WithBends(IReadOnlyList<double> heights) => slope is not null ? heights
        : [.. heights.Concat(Side.Bends.Select(b => HeightAt(b.FromFlange)).Where(h => h > heights[0] && h < heights[^1]))
            .Distinct().Order()];

    /// <summary>
    /// The heights and others between them, so that the wall moves little from one to the next and no part comes and goes unseen.
    /// </summary>
    public IEnumerable<double> CloseHeights(IReadOnlyList<double> heights)
    {
        if (heights.Count > 0) heights = [.. WithBends(heights)];
        for (var i = 0; i < heights.Count; i++)
        {
            yield return heights[i];
            if (i + 1 == heights.Count) yield break;
            var steps = (int)Math.Ceiling(Math.Abs(OffsetAt(heights[i + 1]) - OffsetAt(heights[i])) / SampleStep);
            for (var k = 1; k < steps; k++) yield return heights[i] + (heights[i + 1] - heights[i]) * k / steps;
        }
    }

    /// <summary>Computes the outlines at several heights in parallel.</summary>
    public void Prepare(IEnumerable<double> heights, CancellationToken cancellation) =>
        ParallelWork.Select([.. heights], h => At(h, cancellation), cancellation);

    /// <summary>The outline at a height.</summary>
    public Region At(double height, CancellationToken cancellation = default) => known.GetOrAdd(OffsetAt(height), d =>
        NegligibleLoops.Remove(offsetter.Offset(outline, d, spec.Corners, cancellation), spec.Tolerance.Chord));

    private double HeightAt(double fromFlange) => IsMale ? Foot + fromFlange : Face - fromFlange;

    private double Beside(double height, bool up)
    {
        // A board ends on a ledge although sums of thicknesses are rounded.
        const double Near = 2 * SideProfile.HalfLedge;
        foreach (var ledge in Ledges)
            if (Math.Abs(ledge - height) <= Near) return ledge + (up ? SideProfile.HalfLedge : -SideProfile.HalfLedge);
        return height;
    }
}
