using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Output.Models;
using BuckGen.Output.Models.Meshing;
using Xunit;

namespace BuckGen.Tests.Output.Models;

/// <summary>A model leaves out no outline that it would miss by more than it promises.</summary>
public class LevelReductionTests
{
    private const double Reach = 5;

    [Theory]
    [InlineData(0, false)]
    [InlineData(0.4, false)]
    [InlineData(0.6, true)]
    [InlineData(1.5, true)]
    [InlineData(30, true)]
    public void A_level_is_kept_as_soon_as_a_straight_wall_would_miss_it_by_half_the_error(double errors, bool kept)
    {
        var aside = errors * BuckModel.ChordError;

        // The wall leans by 1 mm at every level; its corner in the middle lies aside of that.
        Assert.Equal(kept ? 3 : 2, Reduced(Shapes.RectangleAt(0, 0, 20, 20), Shapes.RectangleAt(1 + aside, 0, 18 - aside, 20),
            Shapes.RectangleAt(2, 0, 16, 20)));
        // The same of an arc, whose ends stay.
        Assert.Equal(kept ? 3 : 2, Reduced(Bulged(2), Bulged(3 + aside), Bulged(4)));
    }

    [Fact]
    public void A_corner_that_jumps_or_turns_into_an_arc_is_no_longer_the_same()
    {
        var square = Shapes.RectangleAt(0, 0, 20, 20);
        var longer = Shapes.RectangleAt(0, 0, 20 + 2 * Reach, 20);

        Assert.Equal(2, Reduced(square, Shapes.RectangleAt(0, 0, 20 + Reach, 20), longer));
        // All three lie on straight lines; but too far apart to be known as one wall.
        Assert.Equal(3, Reduced(square, longer, Shapes.RectangleAt(0, 0, 20 + 4 * Reach, 20)));
        Assert.Equal(3, Reduced(square, Bulged(1), square));
        Assert.Equal(2, Reduced(square, square, square));
    }

    private static int Reduced(params Region[] plans) =>
        LevelReduction.Apply([.. plans.Select((p, i) => new Level(i, p))], Reach).Count();

    /// <summary>A square of 20 mm whose right side is an arc of the given height.</summary>
    private static Region Bulged(double height) => Region.FromLoops([Loop.FromSegments([
        new(new Vec2(0, 0), new Vec2(20, 0)), new(new Vec2(20, 0), new Vec2(20, 20), height / 10),
        new(new Vec2(20, 20), new Vec2(0, 20)), new(new Vec2(0, 20), new Vec2(0, 0))])]);
}
