using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Cutting.Seams;

/// <summary>An upright seam through a plate, in the coordinates in which it is upright.</summary>
/// <param name="At">Where it stands, x.</param>
/// <param name="Stretches">The stretches of wood it crosses, from below to above, with their keys or dowels.</param>
internal sealed record Seam(double At, ImmutableArray<SeamStretch> Stretches)
{
    private const double Precision = 1e-9;

    /// <summary>The edge of the left piece along a stretch, upward.</summary>
    /// <param name="from">Lower end of the stretch, y.</param>
    /// <param name="spec">Kind and size of the joints.</param>
    public IEnumerable<Segment> LeftEdge(double from, SeamSpec spec) =>
        Edge(Stretches.MinBy(s => Math.Abs(s.From - from))!, spec, 0);

    /// <summary>The edge of the right piece along a stretch, downward.</summary>
    /// <param name="from">Upper end of the stretch, y.</param>
    /// <param name="spec">Kind and size of the joints.</param>
    public IEnumerable<Segment> RightEdge(double from, SeamSpec spec) =>
        Edge(Stretches.MinBy(s => Math.Abs(s.To - from))!, spec, spec.Clearance).Reverse().Select(s => s.Reversed());

    private IEnumerable<Segment> Edge(SeamStretch stretch, SeamSpec spec, double play)
    {
        var from = new Vec2(At, stretch.From);
        foreach (var segment in spec.Kind == SeamKind.Dowelled ? []
            : stretch.Joints.SelectMany(j => KeyOutline.Line(At, j, spec, play)))
        {
            if (from.DistanceTo(segment.Start) > Precision) yield return new(from, segment.Start);
            yield return segment;
            from = segment.End;
        }

        yield return new(from, new(At, stretch.To));
    }
}

/// <summary>Wood that a seam crosses.</summary>
/// <param name="From">Its lower end, y.</param>
/// <param name="To">Its upper end, y.</param>
/// <param name="Joints">Middles of the keys or dowels, y, rising.</param>
internal sealed record SeamStretch(double From, double To, ImmutableArray<double> Joints);
