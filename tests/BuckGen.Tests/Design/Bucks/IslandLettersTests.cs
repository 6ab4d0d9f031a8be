using BuckGen.Design.Bucks;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

public class IslandLettersTests
{
    [Theory]
    [InlineData(0, "A")]
    [InlineData(25, "Z")]
    [InlineData(26, "AA")]
    [InlineData(27, "AB")]
    [InlineData(51, "AZ")]
    [InlineData(52, "BA")]
    [InlineData(701, "ZZ")]
    [InlineData(702, "AAA")]
    public void After_Z_come_two_letters(int number, string letter) => Assert.Equal(letter, IslandLetters.Letter(number));

    [Fact]
    public void Letters_run_from_left_to_right_then_upward()
    {
        var letters = IslandLetters.Assign([Layer(1, (50, 0), (0, 40), (0, 0))]);

        Assert.Equal(["C", "B", "A"], letters[0]);
    }

    [Fact]
    public void An_island_keeps_its_letter_all_the_way_down_and_a_new_one_gets_the_next()
    {
        // Above one at the right, below it the same and one at the left.
        var letters = IslandLetters.Assign([Layer(1, (0, 0), (50, 0)), Layer(2, (50, 0))]);

        Assert.Equal(["A"], letters[1]);
        Assert.Equal(["B", "A"], letters[0]);
    }

    [Fact]
    public void Where_islands_join_the_first_letter_stays()
    {
        var joined = new LayerBlank(1, LayerRole.Wall, PlainBuck.Mdf12, 0, 12, Shapes.Rectangle(100, 20));

        Assert.Equal(["A"], IslandLetters.Assign([joined, Layer(2, (50, 0), (0, 0))])[0]);
    }

    [Fact]
    public void One_letter_comes_before_two()
    {
        // The second and the twenty-seventh island, B and AA, stand on one.
        var row = Layer(2, [.. Enumerable.Range(0, 27).Select(i => (15.0 * i, i is 1 or 26 ? 0.0 : 100.0))]);
        var joined = new LayerBlank(1, LayerRole.Wall, PlainBuck.Mdf12, 0, 12, Shapes.Rectangle(500, 20));

        Assert.Equal("B", IslandLetters.Assign([joined, row])[0][0]);
    }

    /// <summary>A layer of squares of 10 mm with their lower left corners at some places.</summary>
    private static LayerBlank Layer(int number, params (double X, double Y)[] places) => new(
        number, LayerRole.Wall, PlainBuck.Mdf12, 12 * (number - 1), 12 * number,
        new([.. places.Select(p => Shapes.RectangleAt(p.X, p.Y, 10, 10).Islands[0])]));
}
