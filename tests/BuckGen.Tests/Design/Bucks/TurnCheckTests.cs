using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>Two dowels let a piece go on turned or flipped; its outline shows it, or not.</summary>
public class TurnCheckTests
{
    [Fact]
    public void A_rectangle_on_its_middle_line_fits_every_way() =>
        Assert.True(FitsWrongWay(Shapes.Rectangle(100, 60), new(20, 30), new(80, 30)));

    [Fact]
    public void Three_dowels_leave_no_wrong_way() =>
        Assert.False(TurnCheck.FitsWrongWay(Shapes.Rectangle(100, 60).Islands[0], [new(20, 30), new(80, 30), new(50, 50)]));

    [Fact]
    public void Off_the_middle_the_outline_shows_it() =>
        Assert.False(FitsWrongWay(Shapes.Rectangle(100, 60), new(20, 20), new(70, 25)));

    [Fact]
    public void A_piece_that_only_turns_onto_itself_fits_turned()
    {
        var skew = Shapes.Polygon((0, 0), (80, 0), (100, 40), (20, 40));

        Assert.True(FitsWrongWay(skew, new(30, 20), new(70, 20)));
        Assert.False(FitsWrongWay(skew, new(30, 20), new(60, 20)));
    }

    [Fact]
    public void A_piece_alike_on_both_sides_of_a_line_fits_flipped()
    {
        // An arrow that points to the right: flipped about its own axis, or about the line half-way between dowels beside it.
        var arrow = Shapes.Polygon((0, 0), (50, 0), (90, 30), (50, 60), (0, 60));

        Assert.True(FitsWrongWay(arrow, new(20, 30), new(60, 30)));
        Assert.True(FitsWrongWay(arrow, new(30, 10), new(30, 50)));
        Assert.False(FitsWrongWay(arrow, new(20, 10), new(40, 50)));
    }

    [Theory]
    [InlineData(0.9, true)]
    [InlineData(1.1, false)]
    public void A_millimetre_is_noticed(double notch, bool fits)
    {
        // One corner is cut off a little.
        var cut = Shapes.Polygon((0, 0), (100, 0), (100, 60 - notch), (50, 60 - notch), (50, 60), (0, 60));

        Assert.Equal(fits, FitsWrongWay(cut, new(20, 30), new(80, 30)));
    }

    [Fact]
    public void Holes_show_it_too()
    {
        var holed = Region.FromLoops([Loop.Rectangle(new(0, 0, 100, 60)), Loop.Circle(new(30, 45), 5)]);

        Assert.False(FitsWrongWay(holed, new(20, 30), new(80, 30)));
    }

    private static bool FitsWrongWay(Region piece, Vec2 a, Vec2 b) => TurnCheck.FitsWrongWay(piece.Islands[0], [a, b]);
}
