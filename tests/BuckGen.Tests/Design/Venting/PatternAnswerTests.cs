using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>What a pattern gives is taken as it is from our own, and checked when it comes from others.</summary>
public class PatternAnswerTests
{
    private static readonly VentFloor Floor = new(Shapes.Rectangle(100, 60).Islands[0], Shapes.Rectangle(98, 58));

    [Fact]
    public void Sound_places_are_taken() =>
        Assert.Equal([new(1, 2), new(-3, 4)], PatternResult.FindPlaces(new Foreign([new(1, 2), new(-3, 4)]), Floor, new()));

    [Theory]
    [InlineData(double.NaN, 0)]
    [InlineData(0, double.NaN)]
    [InlineData(0, 2e6)]
    [InlineData(-2e6, 0)]
    public void What_is_not_a_place_is_refused(double x, double y)
    {
        var message =
            Assert.Throws<ForeignResultException>(() =>
                PatternResult.FindPlaces(new Foreign([new(0, 0), new(x, y)]), Floor, new())).Message;

        Assert.Contains("place", message);
        Assert.Contains("is not a place within 1 km", message);
    }

    [Fact]
    public void More_than_ten_thousand_places_are_refused()
    {
        Assert.Equal(10_000,
            PatternResult.FindPlaces(new Foreign(Enumerable.Repeat(new Vec2(1, 2), 10_000)), Floor, new()).Length);
        Assert.Throws<ForeignResultException>(() =>
            PatternResult.FindPlaces(new Foreign(Enumerable.Repeat(new Vec2(1, 2), 10_001)), Floor, new()));
    }

    [Theory]
    // A pitch of 5 mm: 201 places on a metre, 261 on 1.3 m.
    [InlineData(1000, 201 * 201)]
    // One more than the limit of 50,000 is enough to tell that there are too many.
    [InlineData(1300, 50_001)]
    public void Our_own_grid_may_have_more(double length, int places)
    {
        var (floor, room) = (Shapes.Rectangle(1000, length), Shapes.RectangleAt(-1, -1, 1002, length + 2));

        Assert.Equal(places,
            PatternResult.FindPlaces(VentPatterns.Grid, new(floor.Islands[0], room), new() { GridPitch = 5 }).Length);
    }

    private sealed class Foreign(IEnumerable<Vec2> places) : IVentPattern
    {
        public string Name => "foreign";

        public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec) => places;
    }
}
