using Xunit;

namespace BuckGen.Geometry.Tests;

/// <summary>A square of 10 mm whose last edge runs a hair past the first one before the loop is closed.</summary>
public class CrossedCornersTests
{
    private const double Hair = 0.001, Coincident = 1e-6;

    private static readonly Vec2[] Crossed = [new(0, 0), new(10, 0), new(10, 10), new(0, 10), new(Hair / 2, -Hair)];

    [Fact]
    public void The_loop_is_cut_at_the_crossing_wherever_it_starts()
    {
        for (var start = 0; start < Crossed.Length; start++)
        {
            var cut = CutOff(Loop.Polygon([.. Crossed[start..], .. Crossed[..start]]));

            Assert.Equal(4, cut.Segments.Length);
            Assert.Equal(100, cut.SignedArea, 0.01);
            // The crossing lies on the first edge, half a hair from its start.
            Assert.Single(cut.Segments, s => s.Start.DistanceTo(new(Hair / 2, 0)) < 1e-6);
            Assert.DoesNotContain(cut.Segments, s => s.Start.Y < -1e-9);
        }
    }

    [Theory]
    // Behind the crossing lie a hair down, 1.12 hairs back and half a hair along: 2.618 hairs.
    [InlineData(2.62, 4)]
    [InlineData(2.61, 5)]
    public void A_stretch_longer_than_allowed_stays(double hairs, int pieces) =>
        Assert.Equal(pieces, CrossedCorners.CutOff(Loop.Polygon(Crossed).Segments, hairs * Hair, Coincident).Length);

    [Theory]
    [InlineData(1.3, 4)]
    [InlineData(1.32, 5)]
    public void A_stretch_of_two_points_that_are_one_stays(double hairs, int pieces) =>
        // Half of 2.618 hairs.
        Assert.Equal(pieces, CrossedCorners.CutOff(Loop.Polygon(Crossed).Segments, 5 * Hair, hairs * Hair).Length);

    [Fact]
    public void A_loop_that_crosses_nothing_stays_itself()
    {
        var square = Loop.Rectangle(new(0, 0, 10, 10)).Segments;

        Assert.Equal(square, CrossedCorners.CutOff(square, 5 * Hair, Coincident));
    }

    [Fact]
    public void Every_crossed_corner_is_cut()
    {
        // A small triangle beyond each of two corners.
        var loop = Loop.Polygon(
            new(0, 0), new(10 + Hair, 0), new(10 + Hair, -Hair), new(10, -Hair), new(10, 10),
            new(0, 10), new(0, -Hair), new(-Hair, -Hair), new(-Hair, 0));

        var cut = CutOff(loop);

        Assert.Equal(100, cut.SignedArea, 1e-9);
        Assert.Equal(40, cut.Length, 1e-9);
        Assert.Equal(4, cut.Segments.Length);
    }

    [Fact]
    public void A_line_may_cross_an_arc()
    {
        // A half disc whose straight side runs a hair past the arc.
        var loop = Loop
            .FromCorners(
                [(new(10, 0), 1), (new(-10, 0), 0), (new(10 + Hair, 0), 0), (new(10 + Hair, -Hair), 0), (new(10, -Hair), 0)]);

        var cut = CutOff(loop);

        Assert.Equal(2, cut.Segments.Length);
        Assert.Equal(50 * Math.PI, cut.SignedArea, 0.05);
    }

    [Fact]
    public void A_loop_that_is_all_hair_stays_itself()
    {
        // Its last piece meets the first where that starts, and nothing would be left of both.
        var speck = Loop.Polygon(new(0, 0), new(Hair, 0), new(Hair, Hair)).Segments;

        Assert.Equal(speck, CrossedCorners.CutOff(speck, 5 * Hair, Coincident));
    }

    private static Loop CutOff(Loop loop)
    {
        var pieces = CrossedCorners.CutOff(loop.Segments, 5 * Hair, Coincident);
        for (var i = 0; i < pieces.Length; i++) Assert.Equal(pieces[i].End, pieces[(i + 1) % pieces.Length].Start);
        return Loop.FromSegments(pieces);
    }
}
