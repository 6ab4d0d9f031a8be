using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>Where vents stand on a line beside the wall, computed by hand.</summary>
public sealed class VentRowTests
{
    private static readonly Loop Block = Loop.Rectangle(new(0, 0, 100, 60));

    [Theory]
    [InlineData(25, 4, 3)] // 100 mm in 4, 60 mm in 3
    [InlineData(24.9, 5, 3)]
    [InlineData(20, 5, 3)]
    [InlineData(200, 1, 1)]
    public void Corners_come_first_and_the_sides_are_divided_evenly(double spacing, int across, int up)
    {
        var wishes = Wishes(Block, spacing);
        Assert.Equal([new(0, 0), new(100, 0), new(100, 60), new(0, 60)], wishes.Take(4).Select(w => w.Centre));
        Assert.All(wishes.Take(4),
            w => Assert.Equal((VentReason.Corner, Math.Round(Math.PI / 2, 9)), (w.Reason, Math.Round(w.Turn, 9))));
        Assert.All(wishes.Skip(4), w => Assert.Equal((VentReason.Wall, 0), (w.Reason, w.Turn)));
        Assert.Equal(Enumerable.Range(1, across - 1).Select(k => 100.0 * k / across), At(wishes, p => p.Y == 0, p => p.X), Near);
        Assert.Equal(Enumerable.Range(1, up - 1).Select(k => 60.0 * k / up), At(wishes, p => p.X == 0, p => p.Y), Near);
        Assert.Equal(4 + 2 * (across - 1 + up - 1), wishes.Length);
        Assert.All(wishes, w => Assert.Equal(w.Centre, w.Way!(w.Along)));
    }

    [Fact]
    public void Only_turns_toward_the_air_of_thirty_degrees_and_more_are_corners()
    {
        // The air lies to the left, so the inner corner of an L sticks out into it: no air gathers there.
        var bend = Loop.Polygon(new(0, 0), new(100, 0), new(100, 40), new(40, 40), new(40, 100), new(0, 100));
        Assert.Equal(5, Corners(Wishes(bend, 25)));
        Assert.Equal(0, Corners(Wishes(Regular(13, 60), 25))); // 27.7 degrees
        Assert.Equal(11, Corners(Wishes(Regular(11, 60), 25))); // 32.7 degrees
    }

    [Theory]
    [InlineData(5, 4)] // a quarter of 7.9 mm
    [InlineData(7.9, 4)] // 12.41 mm, and half a spacing is 12.5
    [InlineData(8, 0)] // 12.57 mm
    public void A_tight_arc_is_one_corner_at_its_middle(double radius, int corners)
    {
        var q = Shapes.QuarterTurn;
        var round = Loop.FromCorners([
            (new(radius, 0), 0), (new(100 - radius, 0), q), (new(100, radius), 0), (new(100, 60 - radius), q),
            (new(100 - radius, 60), 0), (new(radius, 60), q), (new(0, 60 - radius), 0), (new(0, radius), q)]);
        var wishes = Wishes(round, 25);
        Assert.Equal(corners, Corners(wishes));
        var apex = radius - radius / Math.Sqrt(2);
        if (corners > 0)
            Assert.Contains(wishes, w => w.Reason == VentReason.Corner && w.Centre.DistanceTo(new(apex, apex)) < 1e-6);
    }

    [Theory]
    [InlineData(4.2, 5)]
    [InlineData(4.3, 4)] // the chamfer of 3 x 3 mm is 4.24 mm long
    public void Of_corners_too_near_to_each_other_one_gets_the_vent(double apart, int corners)
    {
        var chamfered = Loop.Polygon(new(0, 0), new(100, 0), new(100, 57), new(97, 60), new(0, 60));
        Assert.Equal(corners, Corners([.. new VentRow(chamfered, apart, new(50, 30)).Candidates(25)]));
        // Of two alike the one farther from the middle, then the first counter-clockwise from the x direction.
        if (corners == 4)
            foreach (var middle in (Vec2[])[new(50, 30), new(48.5, 8.5)])
                Assert.Contains(new VentRow(chamfered, apart, middle).Candidates(25), w => w.Reason == VentReason.Corner
                    && w.Centre == new Vec2(100, 57));
        // The sharper of two: one side is cut back farther.
        var skew = Loop.Polygon(new(0, 0), new(100, 0), new(100, 57.5), new(97, 60), new(0, 60));
        var sharper = new VentRow(skew, 7, new(50, 30)).Candidates(25)
            .Single(w => w.Reason == VentReason.Corner && w.Centre.X > 90 && w.Centre.Y > 30);
        Assert.Equal(new(100, 57.5), sharper.Centre);
    }

    [Fact]
    public void A_circle_is_divided_evenly_from_the_place_farthest_out()
    {
        var wishes = Wishes(Loop.Circle(new(70, 0), 20), 25);
        Assert.Equal(6, wishes.Length); // 125.7 mm in pieces of at most 25
        Assert.All(wishes, w => Assert.Equal(VentReason.Wall, w.Reason));
        Assert.Equal(0, wishes[0].Centre.DistanceTo(new(90, 0)), 1e-6);
        for (var i = 0; i < 6; i++) Assert.Equal(20, wishes[i].Centre.DistanceTo(wishes[(i + 1) % 6].Centre), 1e-6);
    }

    [Fact]
    public void A_loop_is_measured_round_and_round()
    {
        var measure = new LoopMeasure(Block);
        Assert.Equal([0, 100, 160, 260], Enumerable.Range(0, 4).Select(measure.StartOf));
        foreach (var (along, place) in ((double, Vec2)[])[(0, new(0, 0)), (30, new(30, 0)), (100, new(100, 0)),
            (130, new(100, 30)), (170, new(90, 60)), (300, new(0, 20))])
            foreach (var round in (double[])[-640, -320, 0, 320, 640])
                Assert.Equal(0, measure.PointAt(along + round).DistanceTo(place), 1e-9);
        Assert.Equal((Block.Segments[1], 0.5), measure.At(130));
        Assert.Equal((Block.Segments[1], 0.0), measure.At(100));
        Assert.Equal((Block.Segments[0], 0.0), measure.At(0));
    }

    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(0, 1, 90)]
    [InlineData(-1, 0, 180)]
    [InlineData(0, -1, 270)]
    [InlineData(1, -1e-12, 0)] // rounding below the x direction is not a whole turn
    public void Directions_run_counter_clockwise_from_x(double x, double y, double degrees) =>
        Assert.Equal(degrees * Math.PI / 180, RowStart.Direction(new(5 + x, 7 + y), new(5, 7)), 1e-6);

    private static VentCandidate[] Wishes(Loop line, double spacing) => [.. new VentRow(line, 7, new(50, 0)).Candidates(spacing)];

    private static int Corners(VentCandidate[] wishes) => wishes.Count(w => w.Reason == VentReason.Corner);

    private static Loop Regular(int corners, double radius) =>
        Loop.Polygon(Enumerable.Range(0, corners).Select(i => new Vec2(radius, 0).Turned(2 * Math.PI * i / corners)));

    private static double[] At(VentCandidate[] wishes, Func<Vec2, bool> where, Func<Vec2, double> along) =>
        [.. wishes.Where(w => w.Reason == VentReason.Wall && where(w.Centre)).Select(w => along(w.Centre)).Order()];

    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-9;
}
