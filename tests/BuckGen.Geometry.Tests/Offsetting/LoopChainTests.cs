using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>Pieces are chained whatever their order, and what leads nowhere is reported or left out.</summary>
public class LoopChainTests
{
    private static readonly Segment[] Square = Sides(0, 0, 10);

    [Fact]
    public void Pieces_in_any_order_become_loops()
    {
        var pieces = Square.Concat(Sides(20, 0, 5)).OrderBy(s => s.Start.X * 7 % 11).ThenBy(s => s.Start.Y).ToList();

        var loops = LoopChain.Close(pieces, 1);

        Assert.Equal([25, 100], loops.Select(l => l.SignedArea).Order());
        Assert.All(loops, l => Assert.Equal(4, l.Segments.Length));
    }

    [Fact]
    public void An_end_without_a_start_is_reported_with_its_place()
    {
        var message = Assert.Throws<OffsetFailedException>(() => LoopChain.Close([.. Square.Take(3)], -2.5)).Message;

        Assert.Equal("The offset by -2.5 mm does not close at (0.000, 10.000).", message);
    }

    [Fact]
    public void On_the_wrong_side_neither_loops_nor_loose_ends_count()
    {
        Segment[] pieces = [.. Square, .. Sides(20, 0, 5), .. Sides(40, 0, 5).Take(3)];

        var loops = LoopChain.Close([.. pieces], 1, p => p.X < 15);

        Assert.Equal(100, Assert.Single(loops).SignedArea);
        Assert.Throws<OffsetFailedException>(() => LoopChain.Close([.. pieces], 1, p => p.X < 15 || p.X > 35));
    }

    [Fact]
    public void Where_loops_touch_in_a_point_they_stay_apart()
    {
        // Two squares with a common corner at (10, 10): each keeps its material on its left.
        var loops = LoopChain.Close([.. Square, .. Sides(10, 10, 5)], 1);

        Assert.Equal([25, 100], loops.Select(l => l.SignedArea).Order());
    }

    [Fact]
    public void Of_two_starts_the_one_that_turns_to_the_left_goes_on_whatever_their_order()
    {
        // The start of the second square comes before that of the first one's upper side.
        var loops = LoopChain.Close([.. Square[..2], .. Sides(10, 10, 5), .. Square[2..]], 1);

        Assert.Equal([25, 100], loops.Select(l => l.SignedArea).Order());
    }

    [Fact]
    public void Starts_nearer_than_ends_are_joined_count_as_one_point()
    {
        // The first square's upper side starts 0.000005 mm beside the corner, the second square just there.
        Segment upper = new(new(10 - 5e-6, 10), new(0, 10));

        Assert.Equal([25, 100], LoopChain.Close([.. Square[..2], .. Sides(10, 10, 5), upper, Square[3]], 1)
            .Select(l => Math.Round(l.SignedArea, 3)).Order());
    }

    [Fact]
    public void A_piece_that_another_chain_has_used_goes_on_with_no_second_one() =>
        Assert.Throws<OffsetFailedException>(() => LoopChain.Close([.. Square, new(new(20, -5), new(10, 0))], 1));

    [Theory]
    [InlineData(1e-5, 1, true)]
    [InlineData(1.2e-4, 1, true)]
    [InlineData(1.5e-4, 1, false)]
    [InlineData(1.5e-4, 4, true)]
    public void Ends_meet_within_what_the_depth_leaves_open(double gap, double distance, bool closes)
    {
        // 3·√(2·d·1e-9): 0.000134 mm at a distance of 1 mm, 0.000268 mm at 4 mm.
        List<Segment> pieces = [Square[0], Square[1], Square[2], new(new(0, 10), new(0, gap))];

        if (closes) Assert.Equal(100, LoopChain.Close(pieces, distance)[0].SignedArea, 1e-2);
        else Assert.Throws<OffsetFailedException>(() => LoopChain.Close(pieces, distance));
    }

    [Fact]
    public void The_nearest_start_goes_on_before_one_that_turns_more_to_the_left()
    {
        // A bite of 0.00008 mm at a corner: its pieces are nearer to each other than ends may lie apart.
        var bite = new Vec2(10, 8e-5);
        List<Segment> pieces =
            [new(new(0, 0), new(10, 0)), new(new(10, 0), bite), new(bite, new(10, 10)), new(new(10, 10), new(0, 10)),
                new(new(0, 10), new(0, 0))];

        Assert.Equal(100, Assert.Single(LoopChain.Close(pieces, 1)).SignedArea, 1e-9);
    }

    [Fact]
    public void A_start_that_meets_the_end_goes_before_one_a_little_off()
    {
        // The other one turns more to the left and leads nowhere.
        Segment decoy = new(new(10, 5e-5), new(0, 5));

        Assert.Equal(100, Assert.Single(LoopChain.Close([.. Square, decoy], 1, p => p.Y is < 2 or > 8 || p.X > 9.9)).SignedArea);
        Assert.Equal(100, Assert.Single(LoopChain.Close([Square[0], decoy, .. Square[1..]], 1, p => p.Y < 2)).SignedArea);
    }

    [Fact]
    public void What_has_no_width_is_no_loop()
    {
        Segment there = new(new(0, 0), new(10, 0)), back = new(new(10, 0), new(0, 0));
        List<Segment> thin =
            [new(new(0, 0), new(10, 0)), new(new(10, 0), new(10, 1.9e-5)), new(new(10, 1.9e-5), new(0, 1.9e-5)),
                new(new(0, 1.9e-5), new(0, 0))];

        Assert.Empty(LoopChain.Close([there, back], 1));
        Assert.Empty(LoopChain.Close(thin, 0.001));
    }

    internal static Segment[] Sides(double x, double y, double size) =>
        [.. Loop.Rectangle(new(x, y, x + size, y + size)).Segments];
}
