using CsCheck;
using Xunit;

namespace BuckGen.Geometry.Tests;

public class LoopTests
{
    [Fact]
    public void A_rectangle_has_the_area_length_and_bounds_of_arithmetic()
    {
        var loop = Loop.Rectangle(new(10, 20, 110, 80));

        Assert.Equal(6000, loop.SignedArea, 1e-9);
        Assert.Equal(320, loop.Length, 1e-9);
        Assert.Equal(new Bounds(10, 20, 110, 80), loop.Bounds);
        Assert.True(loop.IsCounterClockwise);
    }

    [Fact]
    public void A_circle_has_the_area_and_length_of_a_circle_not_of_a_polygon()
    {
        var loop = Loop.Circle(new(5, -5), 20);

        Assert.Equal(Math.PI * 400, loop.SignedArea, 1e-9);
        Assert.Equal(Math.PI * 40, loop.Length, 1e-9);
        Assert.Equal((new Vec2(5, -5), 20), loop.AsCircle(1e-9));
    }

    [Fact]
    public void A_slot_is_a_rectangle_and_a_circle()
    {
        var loop = Shapes.Slot(40, 10).OnlyLoop();

        Assert.Equal(800 + Math.PI * 100, loop.SignedArea, 1e-9);
        Assert.Equal(80 + Math.PI * 20, loop.Length, 1e-9);
        Assert.Equal(0, loop.Bounds.LowerLeft.DistanceTo(new(-10, -10)), 1e-9);
        Assert.Null(loop.AsCircle(0.1));
    }

    [Fact]
    public void A_part_of_a_circle_closed_by_its_chord_is_no_circle()
    {
        var half = Loop.FromCorners([(new(-10, 0), 1), (new(10, 0), 0)]);

        Assert.Null(half.AsCircle(0.1));
        Assert.Equal(Math.PI * 50, half.SignedArea, 1e-9);
    }

    [Fact]
    public void Area_keeps_its_digits_far_from_the_origin() =>
        Assert.Equal(0.01, Loop.Rectangle(new(1e6, 1e6, 1e6 + 0.1, 1e6 + 0.1)).SignedArea, 1e-10);

    [Theory]
    [InlineData(0, 0, true)]
    [InlineData(0, -9.9, true)]
    [InlineData(0, -10.1, false)]
    [InlineData(49.9, 0, true)]
    [InlineData(50.1, 0, false)]
    [InlineData(47.5, 7.5, false)]
    [InlineData(46.5, 7.5, true)]
    [InlineData(-9.9, 0, true)]
    [InlineData(-10.1, 0, false)]
    public void Points_between_an_arc_and_its_chord_count_as_inside_a_slot(double x, double y, bool inside) =>
        // The right end is the half circle of radius 10 round (40, 0): at y = 7.5 it reaches 40 + √(100 - 56.25) = 46.61.
        Assert.Equal(inside, Shapes.Slot(40, 10).OnlyLoop().Contains(new(x, y)));

    [Fact]
    public void A_point_level_with_corners_and_chord_ends_is_judged_right()
    {
        // The classic traps of counting crossings: rays through corners, along edges and along chords.
        var diamond = Loop.Polygon(new(0, -10), new(10, 0), new(0, 10), new(-10, 0));
        var disc = Loop.Circle(new(0, 0), 10);

        Assert.True(diamond.Contains(new(0, 0)));
        Assert.False(diamond.Contains(new(-20, 0)));
        Assert.False(diamond.Contains(new(20, 0)));
        Assert.True(disc.Contains(new(5, 0)));
        Assert.True(disc.Contains(new(-5, 0)));
        Assert.False(disc.Contains(new(-10.001, 0)));
        Assert.False(disc.Contains(new(10.001, 0)));
    }

    [Fact]
    public void Inside_is_where_the_angles_to_the_edge_add_up_to_a_whole_turn() =>
        Gen.Select(RandomRegion.Star, Gen.Double[-60, 60], Gen.Double[-60, 60]).Sample((region, x, y) =>
        {
            var (loop, p) = (region.OnlyLoop(), new Vec2(x, y));
            if (loop.DistanceTo(p) < 0.1) return true;
            var turned = loop.Segments.Sum(s => Enumerable.Range(0, 200)
                .Sum(i => (s.PointAt(i / 200.0) - p).AngleTo(s.PointAt((i + 1) / 200.0) - p)));
            return loop.WindingAround(p) == (int)Math.Round(turned / (2 * Math.PI));
        }, iter: 500);

    [Fact]
    public void Reversing_flips_the_sign_of_the_area_and_of_nothing_else() =>
        RandomRegion.Star.Sample(region =>
        {
            var (loop, back) = (region.OnlyLoop(), region.OnlyLoop().Reversed());
            return Math.Abs(loop.SignedArea + back.SignedArea) < 1e-6 && Math.Abs(loop.Length - back.Length) < 1e-9
                && back.Bounds == loop.Bounds
                && back.WindingAround(new(0, 0)) == -loop.WindingAround(new(0, 0));
        });

    [Fact]
    public void A_map_scales_area_by_its_determinant() =>
        Gen.Select(RandomRegion.Star, Gen.Double[-3, 3], Gen.Double[0.2, 4], Gen.Bool).Sample((region, angle, factor, mirrored) =>
        {
            var map = Affine.Rotation(angle, new(7, -3)).Then(Affine.Scaling(factor, new(1, 2)));
            if (mirrored) map = map.Then(Affine.Reflection(new(4, 4), new(2, 1)));
            var loop = region.OnlyLoop();
            var image = loop.Transformed(map);
            return Math.Abs(image.SignedArea - loop.SignedArea * map.Determinant) < 1e-6 * Math.Abs(image.SignedArea)
                && Math.Abs(image.Length - loop.Length * factor) < 1e-6 * image.Length;
        });

    [Fact]
    public void A_loop_of_one_corner_or_of_no_numbers_is_refused()
    {
        Assert.Contains("at least 2 corners", Assert.Throws<ArgumentException>(() => Loop.FromCorners([(new(0, 0), 1)])).Message);
        Assert.Contains("Corner 1",
            Assert.Throws<ArgumentException>(() => Loop.Polygon(new(0, 0), new(double.NaN, 0), new(1, 1))).Message);
        Assert.Throws<ArgumentException>(() => Loop.FromCorners([(new(0, 0), double.PositiveInfinity), (new(1, 0), 1)]));
    }
}
