using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

public class LooseEndsTests
{
    private static readonly Segment[] Square = LoopChainTests.Sides(0, 0, 10);

    [Fact]
    public void A_closed_chain_stays_as_it_is()
    {
        var pieces = Square.ToList();

        Assert.Same(pieces, LooseEnds.Prune(pieces, 1e-5));
    }

    [Fact]
    public void A_piece_that_lies_on_another_and_leads_nowhere_goes()
    {
        Segment loose = new(new(2, 0), new(5, 1e-7));

        Assert.Equal(Square, LooseEnds.Prune([.. Square, loose], 1e-5));
        Assert.Equal(Square, LooseEnds.Prune([loose, .. Square], 1e-5));
    }

    [Fact]
    public void A_piece_with_one_loose_end_goes_too()
    {
        // From a corner of the square into the middle of its side, and from there to the next corner.
        foreach (var piece in (Segment[])[new(new(0, 0), new(5, 1e-7)), new(new(5, 1e-7), new(10, 0))])
            Assert.Equal(Square, LooseEnds.Prune([.. Square, piece], 1e-5));
    }

    [Fact]
    public void Of_two_that_lie_on_each_other_one_stays()
    {
        Segment[] open = [new(new(0, 20), new(5, 20)), new(new(0, 20), new(5, 20))];

        Assert.Single(LooseEnds.Prune([.. open], 1e-5));
    }

    [Theory]
    [InlineData(5e-6, true)]
    [InlineData(2e-5, false)]
    public void A_piece_shorter_than_the_reach_goes(double length, bool goes) =>
        Assert.Equal(goes ? 4 : 5, LooseEnds.Prune([.. Square, new(new(20, 20), new(20 + length, 20))], 1e-5).Count);

    [Fact]
    public void A_loose_piece_that_nothing_stands_for_stays()
    {
        Segment[] beside = [new(new(2, 0), new(5, 2e-6)), new(new(0, 0), new(10, 10)), new(new(8, 0), new(12, 0))];

        foreach (var piece in beside) Assert.Equal(5, LooseEnds.Prune([.. Square, piece], 1e-5).Count);
    }

    [Fact]
    public void A_loose_end_goes_piece_by_piece()
    {
        // The second leads nowhere, and without it the first.
        Segment[] chain = [new(new(2, 0), new(5, 0)), new(new(5, 0), new(7, 0))];

        Assert.Equal(Square, LooseEnds.Prune([.. Square, .. chain], 1e-5));
    }
}
