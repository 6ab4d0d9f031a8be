using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Intake.Healing;

/// <summary>Splits loops wherever they meet each other or themselves.</summary>
internal static class LoopSplitting
{
    /// <summary>The pieces, none of which meets another but at its ends.</summary>
    public static IEnumerable<Segment> Split(ImmutableArray<Loop> loops, Tolerance tolerance)
    {
        ImmutableArray<Segment> segments = [.. loops.SelectMany(l => l.Segments)];
        var index = new SegmentIndex(segments);
        var joints = new Joints(tolerance.Coincident);
        return segments.SelectMany((s, i) => Parts(s, Cuts(i)));

        List<(double At, Vec2 Place)> Cuts(int i)
        {
            var s = segments[i];
            var cuts = new List<(double At, Vec2 Place)> { (0, joints.At(s.Start)), (1, joints.At(s.End)) };
            Span<Vec2> meeting = stackalloc Vec2[2];
            foreach (var j in index.IndicesIntersecting(s.Bounds.Grown(tolerance.Coincident)).Where(j => j != i).Order())
            {
                // In drawing order, so that both pieces get the same point.
                var count = i < j
                    ? SegmentIntersection.Find(s, segments[j], tolerance.Coincident, meeting)
                    : SegmentIntersection.Find(segments[j], s, tolerance.Coincident, meeting);
                for (var k = 0; k < count; k++) Cut(meeting[k]);
                foreach (var end in (ReadOnlySpan<Vec2>)[segments[j].Start, segments[j].End])
                    if (s.DistanceTo(end) <= tolerance.Coincident) Cut(end);
            }

            return cuts;

            void Cut(Vec2 place)
            {
                if (s.ParameterOf(place) is > 0 and < 1 and var at) cuts.Add((at, joints.At(place)));
            }
        }
    }

    private static IEnumerable<Segment> Parts(Segment segment, List<(double At, Vec2 Place)> cuts)
    {
        cuts.Sort((a, b) => a.At.CompareTo(b.At));
        for (var i = 1; i < cuts.Count; i++)
        {
            var (from, to) = (cuts[i - 1], cuts[i]);
            if (from.Place != to.Place) yield return segment.Part(from.At, to.At) with { Start = from.Place, End = to.Place };
        }
    }

    /// <summary>One place for all meetings that coincide.</summary>
    private sealed class Joints(double reach)
    {
        private readonly PointGrid grid = new(reach);
        private readonly List<Vec2> places = [];

        public Vec2 At(Vec2 place)
        {
            var known = grid.Near(place).DefaultIfEmpty(-1).Min();
            if (known >= 0) return places[known];
            grid.Add(place, places.Count);
            places.Add(place);
            return place;
        }
    }
}
