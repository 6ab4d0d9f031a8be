using BuckGen.Geometry.Polygonal;
using Xunit;

namespace BuckGen.Geometry.Tests.Polygonal;

/// <summary>Chords of a circle stand off it in their middle by r·(1 - cos(half their angle)).</summary>
public class ArcRecoveryTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_polygon_round_a_circle_becomes_arcs_of_half_a_turn_at_most(bool clockwise)
    {
        var points = Round(10, [.. Enumerable.Range(0, 64).Select(i => i * 360 / 64.0)]);

        var loop = ArcRecovery.Recover(clockwise ? [.. points.Reverse()] : points, 0.02);

        // Two sides are too few for a third arc.
        Assert.InRange(loop.Segments.Length, 2, 4);
        Assert.All(loop.Segments.Where(s => s.IsArc), s => Assert.Equal(10, s.Radius, 1e-9));
        Assert.Equal(clockwise ? -Math.PI * 100 : Math.PI * 100, loop.SignedArea, 0.01);
    }

    [Fact]
    public void A_side_farther_from_the_circle_than_the_tolerance_stays_a_side()
    {
        // 64 sides stand off by 0.012 mm.
        var loop = ArcRecovery.Recover(Round(10, [.. Enumerable.Range(0, 64).Select(i => i * 360 / 64.0)]), 0.01);

        Assert.Equal(64, loop.Segments.Count(s => !s.IsArc));
    }

    [Fact]
    public void Three_chords_become_an_arc()
    {
        var loop = ArcRecovery.Recover([.. Round(10, 0, 20, 40, 60), new(0, 0)], 0.2);

        Assert.Equal([true, false, false], loop.Segments.Select(s => s.IsArc));
        Assert.Equal(Math.PI / 3, loop.Segments[0].Sweep, 1e-9);
        Assert.Equal(10, loop.Segments[0].Radius, 1e-9);
    }

    [Fact]
    public void Two_chords_are_too_few_to_tell() =>
        Assert.All(ArcRecovery.Recover([.. Round(10, 0, 20, 40), new(0, 0)], 0.2).Segments, s => Assert.False(s.IsArc));

    [Fact]
    public void An_arc_may_end_at_the_first_corner()
    {
        var loop = ArcRecovery.Recover([.. Round(10, 60), new(0, 0), .. Round(10, 0, 20, 40)], 0.2);

        Assert.Equal([false, false, true], loop.Segments.Select(s => s.IsArc));
        Assert.Equal(Math.PI / 3, loop.Segments[2].Sweep, 1e-9);
    }

    [Fact]
    public void A_corner_off_the_circle_leaves_the_sides()
    {
        var points = Round(10, 0, 20, 40, 60);

        Assert.All(ArcRecovery.Recover([points[0], points[1] * 1.05, points[2], points[3], new(0, 0)], 0.2).Segments,
            s => Assert.False(s.IsArc));
        Assert.All(ArcRecovery.Recover([points[0], points[1], points[2] * 1.05, points[3], new(0, 0)], 0.2).Segments,
            s => Assert.False(s.IsArc));
    }

    [Theory]
    [InlineData(8, false)]
    [InlineData(12, false)]
    [InlineData(13, true)]
    public void Sides_that_turn_by_half_a_radian_are_meant_as_corners(int sides, bool round)
    {
        // The turn is 360°/sides: 30° for 12 and 27.7° for 13; half a radian is 28.6°.
        var loop = ArcRecovery.Recover(Round(10, [.. Enumerable.Range(0, sides).Select(i => i * 360.0 / sides)]), 5);

        Assert.Equal(round, loop.Segments.Any(s => s.IsArc));
    }

    [Fact]
    public void Corners_on_a_straight_line_stay_as_they_are()
    {
        Vec2[] corners = [new(0, 0), new(10, 0), new(20, 0), new(30, 0), new(40, 0), new(20, 30)];

        Assert.Equal(corners, ArcRecovery.Recover(corners, 0.01).Segments.Select(s => s.Start));
    }

    [Theory]
    [InlineData(9, true)]
    [InlineData(10, false)]
    public void Up_to_eight_sides_in_a_row_may_say_nothing_of_an_arc(int corners, bool round)
    {
        // Corners on a line, 1 mm apart; only the one after them bends it.
        Vec2[] points =
            [.. Enumerable.Range(0, corners).Select(i => new Vec2(i, 0)), new(corners, 0.001), new(corners, 20), new(0, 20)];

        Assert.Equal(round, ArcRecovery.Recover(points, 0.01).Segments[0].IsArc);
    }

    [Fact]
    public void A_slot_gets_its_half_circles_back()
    {
        var chords = PolygonConversion.Flattened(Shapes.Slot(40, 10).OnlyLoop(), 0.01);

        var loop = ArcRecovery.Recover(chords, 0.011);

        Assert.Equal(40 * 20 + Math.PI * 100, loop.SignedArea, 1e-6);
        Assert.Equal(2, loop.Segments.Count(s => s.IsArc));
        Assert.Equal(4, loop.Segments.Length);
    }

    /// <summary>Points on a circle round the origin.</summary>
    private static Vec2[] Round(double radius, params double[] degrees) =>
        [.. degrees.Select(d => new Vec2(radius, 0).Turned(d * Math.PI / 180))];
}
