using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Tests.Geometry.Offsetting;

public class OffsetCheckTests
{
    private static readonly Region Source = Shapes.Rectangle(100, 60);

    [Fact]
    public void A_true_offset_passes() =>
        Assert.Null(OffsetCheck.Fault(Source, new ArcOffsetter().Offset(Source, 3, CornerJoin.Round), 3, CornerJoin.Round, 0.01));

    [Fact]
    public void A_mitred_corner_is_too_far_away_for_round_corners()
    {
        var mitred = new ArcOffsetter().Offset(Source, 3, CornerJoin.Mitre);

        Assert.Null(OffsetCheck.Fault(Source, mitred, 3, CornerJoin.Mitre, 0.01));
        Assert.Contains("from the outline", OffsetCheck.Fault(Source, mitred, 3, CornerJoin.Round, 0.01));
    }

    [Fact]
    public void A_wrong_distance_is_told_with_its_place() =>
        Assert.Contains("2.9800 mm from the outline",
            OffsetCheck.Fault(Source, new ArcOffsetter().Offset(Source, 2.98, CornerJoin.Round), 3, CornerJoin.Round, 0.01));

    [Fact]
    public void Growing_may_not_lose_area_nor_shrinking_gain_it()
    {
        Assert.Equal("growing lost area", OffsetCheck.Fault(Source, Shapes.Rectangle(90, 60), 3, CornerJoin.Round, 0.01));
        Assert.Equal("shrinking gained area", OffsetCheck.Fault(Source, Shapes.Rectangle(110, 60), -3, CornerJoin.Round, 0.01));
        Assert.Equal("growing lost area", OffsetCheck.Fault(Source, Region.Empty, 3, CornerJoin.Round, 0.01));
    }

    [Fact]
    public void A_whole_island_may_not_go_missing()
    {
        var two = Shapes.Union(Source, Shapes.RectangleAt(200, 0, 10, 10));
        var one = new ArcOffsetter().Offset(Source, 3, CornerJoin.Round);

        // 100 mm² of the small square are lost, but growing the large one gained more: only the places can tell.
        Assert.NotNull(OffsetCheck.Fault(two, one, 3, CornerJoin.Round, 0.01));
    }
}
