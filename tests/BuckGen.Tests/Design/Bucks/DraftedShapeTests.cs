using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>
/// Walls between 12 and 48 mm; at 45 degrees they stand a millimetre farther out, or in, for every millimetre of height.
/// </summary>
public class DraftedShapeTests
{
    [Theory]
    [InlineData(BuckKind.Male, OutlineAt.Face, 12, 36)]
    [InlineData(BuckKind.Male, OutlineAt.Face, 48, 0)]
    [InlineData(BuckKind.Male, OutlineAt.Base, 48, -36)]
    [InlineData(BuckKind.Female, OutlineAt.Face, 12, -36)]
    [InlineData(BuckKind.Female, OutlineAt.Base, 48, 36)]
    public void A_male_buck_widens_downward_and_a_cavity_upward(BuckKind kind, OutlineAt at, double height, double offset) =>
        Assert.Equal(offset, Shape(Shapes.Rectangle(100, 100), kind, at).OffsetAt(height), 1e-9);

    [Fact]
    public void Heights_are_divided_so_that_the_wall_moves_a_quarter_of_a_millimetre()
    {
        var shape = Shape(Shapes.Rectangle(100, 100));

        Assert.Equal([12, 12.25, 12.5, 12.75, 13, 13.2], Rounded(shape.CloseHeights([12, 13, 13.2])));
        Assert.Equal([12], Rounded(shape.CloseHeights([12])));
        Assert.Empty(shape.CloseHeights([]));
    }

    [Theory]
    [InlineData(1.9974, 1)]
    [InlineData(1.9976, 0)]
    public void A_hole_of_which_a_quarter_of_the_chord_error_is_left_is_gone(double offset, int holes) =>
        // What is left of a hole of 2 mm is as wide on average as its radius: 0.0026 or 0.0024 mm.
        Assert.Equal(holes, Shape(Shapes.Ring(30, 2)).At(48 - offset).HoleCount);

    [Fact]
    public void An_island_of_which_as_little_is_left_is_gone_too()
    {
        var shape = Shape(Shapes.Union(Shapes.Disc(30), Shapes.DiscAt(50, 0, 2)), at: OutlineAt.Base);

        Assert.Equal(2, shape.At(12 + 1.9974).Islands.Length);
        Assert.Single(shape.At(12 + 1.9976).Islands);
    }

    [Fact]
    public void An_outline_that_cannot_be_offset_is_reported_as_if_nothing_ran_side_by_side() =>
        Assert.Equal("torn", Assert.Throws<OffsetFailedException>(() =>
            new DraftedShape(Shapes.Disc(5), Spec(BuckKind.Male, OutlineAt.Face), 12, 48, new Failing())
                .Prepare([12, 24], default)).Message);

    [Fact]
    public void A_male_buck_stands_on_a_plate_that_reaches_beyond_its_foot()
    {
        var solid = new StackedSolid(Shape(Shapes.Rectangle(100, 60)), Spec(BuckKind.Male, OutlineAt.Face));

        Assert.Null(solid.Block);
        // 36 mm of draft all round and 20 mm of margin.
        Assert.Equal(new Bounds(-56, -56, 156, 116), solid.BasePlate(new(PlainBuck.Mdf12)).Bounds);
        Assert.Equal(100 * 60, solid.At(48).Area, 1e-6);
    }

    [Fact]
    public void A_cavity_lies_in_a_block_with_a_margin()
    {
        var spec = Spec(BuckKind.Female, OutlineAt.Face) with { BlockMargin = 15 };
        var solid = new StackedSolid(Shape(Shapes.Rectangle(100, 80), BuckKind.Female), spec);

        Assert.Equal(new Bounds(-15, -15, 115, 95), solid.Block!.Bounds);
        Assert.Equal(130 * 110 - 100 * 80, solid.At(48).Area, 1e-6);
        Assert.Equal(130 * 110 - 98 * 78, solid.At(47).Area, 1e-6);
        Assert.Equal(new Bounds(-20, -20, 120, 100), solid.BasePlate(new(PlainBuck.Mdf12, 5)).Bounds);
    }

    [Fact]
    public void A_buck_without_a_foot_stands_on_a_plate_as_large_as_its_face()
    {
        // A draft that locks: 36 mm inward all round leave nothing of 60 mm.
        var spec = Spec(BuckKind.Male, OutlineAt.Face) with { Draft = -45 };
        var solid = new StackedSolid(new(Shapes.Rectangle(100, 60), spec, 12, 48, new ArcOffsetter()), spec);

        Assert.Equal(new Bounds(-20, -20, 120, 80), solid.BasePlate(new(PlainBuck.Mdf12)).Bounds);
    }

    private static BuckSpec Spec(BuckKind kind, OutlineAt at) => PlainBuck.Spec with { Draft = 45, Kind = kind, OutlineAt = at };

    private static DraftedShape Shape(Region outline, BuckKind kind = BuckKind.Male, OutlineAt at = OutlineAt.Face) =>
        new(outline, Spec(kind, at), 12, 48, new ArcOffsetter());

    private static IEnumerable<double> Rounded(IEnumerable<double> heights) => heights.Select(h => Math.Round(h, 6));

    private sealed class Failing : IOffsetter
    {
        public Region Offset(Region region, double distance, CornerJoin join, CancellationToken cancellation = default) =>
            throw new OffsetFailedException("torn");
    }
}
