using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

public class CornerJoinTests
{
    [Fact]
    public void Corners_are_round_unless_asked_for()
    {
        Assert.Equal(Corners.Round, new CornerJoin().Corners);
        Assert.Equal(5, CornerJoin.Mitre.MitreLimit);
        Assert.Equal(Corners.Mitre, CornerJoin.Mitre.Corners);
    }

    [Fact]
    public void Round_corners_reach_no_farther_than_the_distance() => Assert.Equal(1, CornerJoin.Round.MaxReach);

    [Theory]
    [InlineData(1, 1.41421)]
    [InlineData(3, 3.16228)]
    public void A_cut_mitre_reaches_one_distance_aside_of_the_limit(double limit, double reach) =>
        Assert.Equal(reach, new CornerJoin(Corners.Mitre, limit).MaxReach, 1e-5);

    [Fact]
    public void A_needle_is_offset_nearly_so_far()
    {
        // Offset by 2 mm with a limit of 3: √10 · 2 = 6.32 mm from its tip.
        var needle = Shapes.Polygon((0, -0.01), (100, 0), (0, 0.01));

        var offset = new ArcOffsetter().Offset(needle, 2, new(Corners.Mitre, 3));

        Assert.Equal(6.32, offset.Segments.Max(s => s.Start.DistanceTo(new(100, 0)) * (s.Start.X > 100 ? 1 : 0)), 0.01);
    }
}
