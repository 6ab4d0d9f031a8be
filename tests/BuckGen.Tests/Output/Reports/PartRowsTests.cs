using BuckGen.Output.Reports;
using Xunit;

namespace BuckGen.Tests.Output.Reports;

/// <summary>What people read about the finished part, each line in all of its forms.</summary>
public class PartRowsTests
{
    private static readonly PartReport Plain = new(
        "none", 0, "underside", 35.5, 36.25, 0.31, new(100, 60, 102, 62.04, 1, 0.8, 1.25),
        new(90.5, 50, 91.2, 51, 1, 0.9, 1.1), 0.4, new(0.18, 0.194), null, "mean", 1.2, null, null);

    private static readonly OrderReport Order = new("inside", "face", 90.25, 50, 36, 0, 0, 0, 0);

    [Fact]
    public void A_part_without_an_order_has_its_sizes_its_edge_what_it_holds_and_its_wall() =>
        Assert.Equal(
            [
                ("Inside", "100 x 60 mm at the mouth, 90.5 x 50 at the face, 35.5 deep"),
                ("Outside", "102 x 62 mm at the mouth, 91.2 x 51 at the face, 36.3 high"),
                ("Give or take", "0.4 mm across, 0.3 mm in depth"),
                ("Ends", "at its flange, which is not counted in its size"),
                ("Holds", "0.18 to 0.19 L to the edge"),
                ("Wall", "1 mm, the mean of the whole sheet"),
            ],
            PartRows.Create(Plain));

    [Theory]
    [InlineData("ring", "at the cut by the ring, 2.5 mm over the underside of the flange")]
    [InlineData("saw", "at the cut, 2.5 mm over the underside of the flange")]
    [InlineData("none", "at its flange, which is not counted in its size")]
    public void It_ends_where_it_is_cut(string by, string expected) =>
        Assert.Equal(expected, Row("Ends", Plain with { CutBy = by, CutHeight = 2.5 }));

    [Theory]
    [InlineData("over", 0.5, 0.5, "over the part, with 0.5 mm of play on every side along 8 mm of skirt")]
    [InlineData("into", 0.5, 1.25, "into the part, with 0.5 to 1.25 mm of play along 8 mm of skirt")]
    public void A_lid_has_its_play(string fit, double min, double max, string expected) =>
        Assert.Equal(expected, Row("Fits", Plain with { Mating = new(fit, 8, 0.5, min, max) }));

    [Theory]
    [InlineData(0.04, -0.04, 0.04, "size as ordered, depth as ordered")]
    [InlineData(0.05, 0, 0, "+0.05 x 0 mm in size, from the wall or the proportions drawn, depth as ordered")]
    [InlineData(0, -1.5, 0, "0 x -1.5 mm in size, from the wall or the proportions drawn, depth as ordered")]
    public void A_size_that_differs_from_the_order_by_0_05_mm_is_named(
        double width, double height, double depth, string expected) =>
        Assert.Equal($"inside 90.25 x 50 mm at the face, 36 deep: {expected}", Row("Ordered",
            Plain with { Order = Order with { WidthMiss = width, HeightMiss = height, DepthMiss = depth } }));

    [Theory]
    [InlineData(1, 1.04, "+1 mm in depth, from the boards")]
    [InlineData(-1, -0.5, "-1 mm in depth, from boards and wall")]
    [InlineData(1, 0.05, "+1 mm in depth, from the wall")]
    [InlineData(0.05, 0.05, "+0.05 mm in depth, from the wall")]
    public void A_depth_that_differs_has_its_reason(double miss, double fromBoards, string expected) =>
        Assert.EndsWith($"deep: size as ordered, {expected}",
            Row("Ordered", Plain with { Order = Order with { DepthMiss = miss, FromBoards = fromBoards } }));

    [Fact]
    public void A_known_plastic_gives_the_weight_and_a_prediction_the_wall_of_both_ends()
    {
        var part = Plain with { Grams = new(31.4, 35.6), WallFrom = "predicted" };

        Assert.Equal("31 to 36 g without a flange", Row("Weighs", part));
        Assert.Equal("predicted 1 mm at the mouth (0.8 to 1.25), 1.2 mm on the face", Row("Wall", part));
    }

    [Fact]
    public void A_part_is_needed() =>
        Assert.Equal("part", Assert.Throws<ArgumentNullException>(() => PartRows.Create(null!).First()).ParamName);

    private static string Row(string what, PartReport part) => PartRows.Create(part).Single(r => r.What == what).Text;
}
