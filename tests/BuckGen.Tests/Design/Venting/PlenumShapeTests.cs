using BuckGen.Design.Venting;
using BuckGen.Geometry;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>Feet and channels computed by hand.</summary>
public sealed class PlenumShapeTests
{
    private static readonly Bounds Plate = new(0, 0, 200, 100);

    [Fact]
    public void Feet_stand_on_a_grid_from_edge_to_edge()
    {
        // Centres lie in 190 x 90 mm: at most 60 mm apart that is 4 steps by 2.
        var expected = from j in Enumerable.Range(0, 3)
                       from i in Enumerable
            .Range(0, 5)
                       select new Vec2(5 + 47.5 * i, 5 + 45 * j);
        Assert.Equal(expected, Feet(60));
        Assert.Equal(4 * 2, Feet(90).Count); // 190/90 is above 2; 90/90 is 1
        Assert.Equal(2 * 2, Feet(500).Count);
    }

    [Fact]
    public void A_foot_gives_way_to_a_bore()
    {
        // Half of 10 and of 5 mm and 1 mm of space are 8.5; it is moved by eighths of its width: 8.75 mm, toward x first.
        var feet = Feet(60, new Vec2(100, 50));
        Assert.Contains(new(108.75, 50), feet);
        Assert.DoesNotContain(new(100, 50), feet);
        Assert.Equal(15, feet.Count);
    }

    [Fact]
    public void A_foot_without_room_is_left_out_and_none_touches_another()
    {
        Assert.Equal(14,
            Feet(60, [.. from x in Enumerable.Range(-4, 9) from y in Enumerable
                .Range(-4, 9) select new Vec2(100 + 8 * x, 50 + 8 * y)]).Count);
        var close = Feet(11);
        Assert.All(close, a => Assert.All(close.Where(b => b != a), b => Assert.True(a.DistanceTo(b) >= 11 - 1e-9)));
    }

    [Fact]
    public void Channels_join_all_bores_by_the_shortest_way()
    {
        // From the port 80 mm along and from there 60 mm up: not straight from the port to the farther bore, which would be 140
        // mm in all, but 160.
        var wood = Cut([new(100, 20), new(100, 80)], new(20, 20));
        // Two strips of 10 mm less the square both cover, the round of the corner, the round end, and the port of 25 mm less the
        // strip in it.
        var port = Math.PI * 12.5 * 12.5 - (5 * Math.Sqrt(12.5 * 12.5 - 25) + 12.5 * 12.5 * Math.Asin(5 / 12.5));
        var open = 1400 - 25 + Math.PI * 25 / 4 + Math.PI * 25 / 2 + port;
        Assert.Equal(20000 - open, wood.Area, 0.5);
        Assert.Single(wood.Islands.Single().Holes);
        Assert.True(wood.Contains(new(60, 50)), "the straight way is wood");
    }

    [Fact]
    public void A_row_of_bores_is_one_straight_channel()
    {
        var wood = Cut([new(170, 50), new(30, 50), new(60, 50)], new(100, 50));
        var strip = 2 * (5 * Math.Sqrt(12.5 * 12.5 - 25) + 12.5 * 12.5 * Math.Asin(5 / 12.5));
        Assert.Equal(20000 - (1400 + Math.PI * 25 + Math.PI * 12.5 * 12.5 - strip), wood.Area, 0.5);
    }

    [Fact]
    public void The_port_alone_is_a_round_hole() => Assert.Equal(20000 - Math.PI * 12.5 * 12.5, Cut([], new(100, 50)).Area, 0.5);

    [Fact]
    public void A_wide_port_over_narrow_channels_is_round_as_well()
    {
        // 24 corners, enough for a channel of 1 mm, would leave 57 mm² of a port of 80 mm as wood.
        var wood = PlenumChannels
            .Cut(new([new(Loop.Rectangle(Plate), [])]), [], new(100, 50), 1, 80, 0.01, CancellationToken.None);

        Assert.Equal(20000 - Math.PI * 1600, wood.Area, 2.0);
    }

    [Fact]
    public void The_joining_of_bores_can_be_stopped() => Assert.Throws<OperationCanceledException>(() =>
        PlenumChannels.Cut(new([new(Loop.Rectangle(Plate), [])]), [new(30, 50)], new(100, 50), 10, 25, 0.01,
            new(canceled: true)));

    private static Region Cut(Vec2[] bores, Vec2 port) =>
        PlenumChannels.Cut(new([new(Loop.Rectangle(Plate), [])]), bores, port, 10, 25, 0.001, CancellationToken.None);

    private static List<Vec2> Feet(double pitch, params Vec2[] bores) =>
        [.. PlenumFeet.Set(Plate, [.. bores], 10, 5, pitch, CancellationToken.None).Islands.Select(i => i.Outer.Bounds.Centre)
            .Select(c => new Vec2(Math.Round(c.X, 6), Math.Round(c.Y, 6)))];
}
