using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Bucks;

/// <summary>The designed solid with smooth sloping walls, as its outline at every height.</summary>
/// <remarks>
/// At a distance h from the reference plane the wall stands at the outline offset by h·tan(draft). That is outward below the
/// plane and inward above it on a male buck, the other way round for a cavity.
/// </remarks>
internal sealed class DraftedShape
{
    /// <summary>Farthest the wall moves between two heights that are compared or joined, mm.</summary>
    public const double SampleStep = 0.25;

    private readonly Region outline;
    private readonly CornerJoin corners;
    private readonly IOffsetter offsetter;
    private readonly double slope;
    private readonly double chord;
    private readonly ConcurrentDictionary<double, Region> known = new();

    /// <param name="outline">The outline in the reference plane.</param>
    /// <param name="spec">Kind, draft, corners.</param>
    /// <param name="foot">Height of the lower end of the walls, mm.</param>
    /// <param name="face">Height of the upper end of the walls, mm.</param>
    /// <param name="offsetter">Makes the offsets.</param>
    /// <param name="inset">From the plane that the spec names to the reference plane, into the wall, mm, 0 or more.</param>
    public DraftedShape(
        Region outline, StackSpec spec, double foot, double face, IOffsetter offsetter, double inset = 0)
    {
        (this.outline, corners, this.offsetter, chord) = (outline, spec.Corners, offsetter, spec.Tolerance.Chord);
        (Foot, Face) = (foot, face);
        ReferenceHeight = spec.OutlineAt == OutlineAt.Face ? face - inset : foot + inset;
        slope = Math.Tan(spec.Draft * Math.PI / 180) * (spec.Kind == BuckKind.Male ? -1 : 1);
    }

    /// <summary>Height of the lower end of the walls, mm.</summary>
    public double Foot { get; }

    /// <summary>Height of the upper end of the walls, mm.</summary>
    public double Face { get; }

    /// <summary>Height at which the outline is to size, mm.</summary>
    public double ReferenceHeight { get; }

    /// <summary>How far the wall stands outside the drawn outline at a height, mm; negative inside.</summary>
    public double OffsetAt(double height) => (height - ReferenceHeight) * slope;

    /// <summary>
    /// The heights and others between them, so that the wall moves little from one to the next and no part comes and goes unseen.
    /// </summary>
    public IEnumerable<double> CloseHeights(IReadOnlyList<double> heights)
    {
        for (var i = 0; i < heights.Count; i++)
        {
            yield return heights[i];
            if (i + 1 == heights.Count) yield break;
            var steps = (int)Math.Ceiling(Math.Abs(OffsetAt(heights[i + 1]) - OffsetAt(heights[i])) / SampleStep);
            for (var k = 1; k < steps; k++) yield return heights[i] + (heights[i + 1] - heights[i]) * k / steps;
        }
    }

    /// <summary>Computes the outlines at several heights in parallel.</summary>
    public void Prepare(IEnumerable<double> heights, CancellationToken cancellation)
    {
        try
        {
            Parallel.ForEach(heights, new ParallelOptions { CancellationToken = cancellation }, h => At(h, cancellation));
        }
        catch (AggregateException failures)
        {
            // One outline that can't be offset is enough; report it as if nothing had run in parallel.
            ExceptionDispatchInfo.Throw(failures.InnerExceptions[0]);
        }
    }

    /// <summary>The outline at a height.</summary>
    public Region At(double height, CancellationToken cancellation = default) =>
        known.GetOrAdd(OffsetAt(height), d => NegligibleLoops.Remove(offsetter.Offset(outline, d, corners, cancellation), chord));
}
