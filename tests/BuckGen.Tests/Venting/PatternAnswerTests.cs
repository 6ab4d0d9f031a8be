using BuckGen.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Tests.Geometry;
using BuckGen.Venting;
using Xunit;

namespace BuckGen.Tests.Venting;

/// <summary>What a pattern gives is taken as it is from our own, and looked at when it comes from others.</summary>
public class PatternAnswerTests
{
    private static readonly VentFloor Floor = new(Shapes.Rectangle(100, 60).Islands[0], Shapes.Rectangle(98, 58));

    [Fact]
    public void Sound_places_are_taken() =>
        Assert.Equal([new(1, 2), new(-3, 4)], PatternAnswer.Of(new Foreign([new(1, 2), new(-3, 4)]), Floor, new()));

    [Theory]
    [InlineData(double.NaN, 0)]
    [InlineData(0, double.NaN)]
    [InlineData(0, 2e6)]
    [InlineData(-2e6, 0)]
    public void A_place_that_is_none_is_refused(double x, double y)
    {
        var message = Assert.Throws<AnswerException>(() => PatternAnswer.Of(new Foreign([new(0, 0), new(x, y)]), Floor, new())).Message;

        Assert.Contains("place", message);
        Assert.Contains("is no place within 1 km", message);
    }

    [Fact]
    public void More_than_ten_thousand_places_are_refused()
    {
        Assert.Equal(10_000, PatternAnswer.Of(new Foreign(Enumerable.Repeat(new Vec2(1, 2), 10_000)), Floor, new()).Length);
        Assert.Throws<AnswerException>(() => PatternAnswer.Of(new Foreign(Enumerable.Repeat(new Vec2(1, 2), 10_001)), Floor, new()));
    }

    [Fact]
    public void Our_own_grid_may_have_more()
    {
        // 1 m of floor at a pitch of 5 mm has 201 places either way.
        var large = Shapes.Rectangle(1000, 1000);

        Assert.Equal(201 * 201, PatternAnswer.Of(VentPatterns.Grid, new(large.Islands[0], Shapes.RectangleAt(-1, -1, 1002, 1002)), new() { GridPitch = 5 }).Length);
    }

    private sealed class Foreign(IEnumerable<Vec2> places) : IVentPattern
    {
        public string Name => "foreign";

        public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec) => places;
    }
}
