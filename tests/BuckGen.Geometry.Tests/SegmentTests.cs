using CsCheck;
using Xunit;

namespace BuckGen.Geometry.Tests;

public class SegmentTests
{
    private static readonly Gen<Vec2> Points = Gen.Select(Gen.Double[-200, 200], Gen.Double[-200, 200], (x, y) => new Vec2(x, y));

    // Arcs up to three quarters of a turn; bulge = tan(sweep/4), so tan(67.5°) = 2.41.
    private static readonly Gen<Segment> Segments =
        Gen.Select(Points, Points, Gen.Frequency((1, Gen.Const(0.0)), (3, Gen.Double[-2.4, 2.4])),
            (a, b, bulge) => new Segment(a, b, bulge))
            .Where(s => s.Chord.Length > 1 && (s.Bulge == 0 || Math.Abs(s.Bulge) > 1e-6));

    [Fact]
    public void A_quarter_circle_has_the_values_of_trigonometry()
    {
        var arc = new Segment(new(10, 0), new(0, 10), Shapes.QuarterTurn);

        Assert.Equal(Math.PI / 2, arc.Sweep, 1e-12);
        Assert.Equal(10, arc.Radius, 1e-12);
        Assert.Equal(0, arc.Centre.Length, 1e-12);
        Assert.Equal(5 * Math.PI, arc.Length, 1e-12);
        // Sagitta r(1 - cos 45°), trigonometry.
        Assert.Equal(10 * (1 - Math.Sqrt(0.5)), arc.Sagitta, 1e-12);
        Assert.Equal(0, arc.PointAt(0.5).DistanceTo(new(Math.Sqrt(50), Math.Sqrt(50))), 1e-12);
        Assert.Equal(0, arc.DirectionAt(0).DistanceTo(new(0, 1)), 1e-12);
        Assert.Equal(0, arc.DirectionAt(1).DistanceTo(new(-1, 0)), 1e-12);
    }

    [Fact]
    public void A_three_quarter_circle_reaches_all_that_it_passes()
    {
        // From east over north and west to south, round the origin.
        var arc = Segment.Arc(new(10, 0), new(0, -10), 1.5 * Math.PI);

        Assert.Equal(new Bounds(-10, -10, 10, 10), Rounded(arc.Bounds));
        Assert.Equal(15 * Math.PI, arc.Length, 1e-9);
        Assert.Equal(0, arc.DistanceTo(new(-10, 0)), 1e-9);
        // The nearest place to a point in the open quarter is an end, not the missing arc.
        Assert.Equal(new Vec2(7, -7).DistanceTo(new(10, 0)), arc.DistanceTo(new(7, -7)), 1e-9);
    }

    [Fact]
    public void The_distance_to_a_line_is_measured_to_its_ends_when_no_foot_lies_on_it()
    {
        var line = new Segment(new(0, 0), new(10, 0));

        Assert.Equal(3, line.DistanceTo(new(4, 3)), 1e-12);
        Assert.Equal(5, line.DistanceTo(new(13, 4)), 1e-12);
        Assert.Equal(5, line.DistanceTo(new(-3, -4)), 1e-12);
    }

    [Fact]
    public void A_parameter_gives_back_the_point_it_came_from() =>
        Gen.Select(Segments, Gen.Double[0, 1]).Sample((s, t) => Math.Abs(s.ParameterOf(s.PointAt(t)) - t) < 1e-6);

    [Fact]
    public void Every_point_of_a_segment_lies_in_its_bounds_and_at_no_distance() =>
        Gen.Select(Segments, Gen.Double[0, 1]).Sample((s, t) =>
            s.Bounds.Grown(1e-9).Contains(s.PointAt(t)) && s.DistanceTo(s.PointAt(t)) < 1e-6);

    [Fact]
    public void Bounds_are_no_larger_than_the_points_need() =>
        Segments.Sample(s =>
        {
            var reached = Enumerable.Range(0, 2001).Aggregate(Bounds.Nothing, (b, i) => b.With(s.PointAt(i / 2000.0)));
            // Between two of 2000 points an arc rises by less than r·(sweep/4000)²/2.
            var slack = s.IsArc ? s.Radius * Math.Pow(s.Sweep / 4000, 2) + 1e-9 : 1e-9;
            return reached.Grown(slack).Contains(s.Bounds);
        });

    [Fact]
    public void Distance_is_that_of_the_nearest_of_many_points() =>
        Gen.Select(Segments, Points).Sample((s, p) =>
        {
            var nearest = Enumerable.Range(0, 4001).Min(i => s.PointAt(i / 4000.0).DistanceTo(p));
            return nearest >= s.DistanceTo(p) - 1e-9 && nearest - s.DistanceTo(p) <= s.Length / 4000;
        }, iter: 300);

    [Fact]
    public void The_nearest_parameter_is_where_the_distance_is_measured() =>
        Gen.Select(Segments, Points)
            .Sample((s, p) => Math.Abs(s.PointAt(s.NearestParameter(p)).DistanceTo(p) - s.DistanceTo(p)) < 1e-6);

    [Fact]
    public void Two_parts_make_the_whole() =>
        Gen.Select(Segments, Gen.Double[0.05, 0.95]).Sample((s, t) =>
        {
            var (a, b) = (s.Part(0, t), s.Part(t, 1));
            return Math.Abs(a.Length + b.Length - s.Length) < 1e-6 && a.End == b.Start
                && Math.Abs(a.AreaShare + b.AreaShare - s.AreaShare) < 1e-4;
        });

    [Fact]
    public void Walking_the_other_way_changes_only_the_sign() =>
        Segments.Sample(s =>
        {
            var back = s.Reversed();
            return back.Reversed() == s && back.Length == s.Length && Math.Abs(back.AreaShare + s.AreaShare) < 1e-6
                && back.PointAt(0.25).DistanceTo(s.PointAt(0.75)) < 1e-6;
        });

    [Fact]
    public void A_very_flat_arc_is_as_good_as_its_chord()
    {
        var arc = new Segment(new(0, 0), new(100, 0), 1e-9);

        Assert.Equal(100, arc.Length, 1e-9);
        Assert.Equal(0, arc.PointAt(0.5).DistanceTo(new(50, -5e-8)), 1e-9);
        Assert.Equal(3, arc.DistanceTo(new(50, 3)), 1e-3);
    }

    private static Bounds Rounded(Bounds b) =>
        new(Math.Round(b.MinX, 9), Math.Round(b.MinY, 9), Math.Round(b.MaxX, 9), Math.Round(b.MaxY, 9));
}
