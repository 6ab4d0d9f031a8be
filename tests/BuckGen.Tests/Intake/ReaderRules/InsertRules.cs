using BuckGen.Geometry;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;
using static BuckGen.Tests.Intake.ReaderRules.Files;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>Where the parts of a block come to lie, and what stops blocks that never end.</summary>
public class InsertRules
{
    private const string Flag = "0\nBLOCK\n2\nA\n10\n1\n20\n2\n";

    // A flag of 4 x 2 whose lower left corner is the block's base point.
    private static readonly string Based = $"0\nSECTION\n2\nBLOCKS\n{Flag}{Rectangle(1, 2, 4, 2)}0\nENDBLK\n0\nENDSEC\n";

    [Theory]
    [InlineData("", 10, 20, 14, 22)]
    [InlineData("|41 2|42 3", 10, 20, 18, 26)]
    [InlineData("|41 -1", 6, 20, 10, 22)]
    [InlineData("|42 -1", 10, 18, 14, 20)]
    [InlineData("|50 90", 8, 20, 10, 24)]
    [InlineData("|41 -2|50 90", 8, 12, 10, 20)]
    [InlineData("|43 0", 10, 20, 14, 22)]
    [InlineData("|70 0|71 0", 10, 20, 14, 22)]
    [InlineData("|70 2|44 5", 10, 20, 19, 22)]
    [InlineData("|70 2|71 2|44 5|45 3", 10, 20, 19, 25)]
    [InlineData("|71 2|45 3|50 90", 5, 20, 10, 24)]
    public void A_block_is_placed_by_base_point_scale_rotation_and_grid(string more, double left, double bottom,
        double right, double top)
    {
        var b = Read(Based, Tags("0 INSERT|2 A|10 10|20 20" + more)).Region.Bounds;

        Assert.Equal(new Bounds(left, bottom, right, top),
            new(Math.Round(b.MinX, 9), Math.Round(b.MinY, 9), Math.Round(b.MaxX, 9), Math.Round(b.MaxY, 9)));
    }

    [Fact]
    public void Blocks_in_blocks_are_placed_one_after_the_other()
    {
        var inner = Block("INNER", Circle(0, 0, 1));
        var outer = Block("OUTER", Tags("0 INSERT|2 INNER|10 5|20 0|41 2|42 2"));

        var b = Read(Blocks(outer, inner), Tags("0 INSERT|2 OUTER|10 100|20 0|41 3|42 3|50 90")).Region.Bounds;

        Assert.Equal(new Vec2(100, 15), new(Math.Round(b.Centre.X, 9), Math.Round(b.Centre.Y, 9)));
        Assert.Equal(12, b.Width, 1e-9);
    }

    [Theory]
    [InlineData("41 0", "with a scale of 0 (line")]
    [InlineData("42 0", "with a scale of 0 (line")]
    public void A_block_flattened_to_nothing_is_left_out_and_reported(string scale, string words) =>
        Assert.Contains(words,
            Assert.Single(Read(Based, Circle(0, 0, 9), Tags("0 INSERT|2 A|10 0|20 0|" + scale)).Notes).Message);

    [Fact]
    public void A_block_that_the_file_does_not_hold_is_reported() =>
        Assert.Contains("1 INSERT of the block NONE, which the file does not define",
            Assert.Single(Read("", Circle(0, 0, 9), Tags("0 INSERT|2 NONE|10 0|20 0")).Notes).Message);

    [Fact]
    public void Blocks_nested_deeper_than_the_limit_are_refused()
    {
        var chain = Enumerable.Range(1, 150).Select(i => Block($"B{i}", Tags($"0 INSERT|2 B{i - 1}|10 0|20 0")))
            .Prepend(Block("B0", Circle(0, 0, 5)));

        Assert.Contains("nested more than 100 deep",
            RefusalOf(FileWith(Millimetres, Blocks(chain), Tags("0 INSERT|2 B150|10 0|20 0"))));
    }

    [Fact]
    public void A_block_that_contains_itself_is_refused() =>
        Assert.Contains("the block A contains itself",
            RefusalOf(FileWith(Millimetres, Blocks(Block("A", Tags("0 INSERT|2 a|10 0|20 0"))), Tags("0 INSERT|2 A|10 0|20 0"))));

    [Fact]
    public void Doubling_blocks_are_refused_before_they_are_placed()
    {
        var doubling = Enumerable.Range(1, 60)
            .Select(i => Block($"B{i}", Tags($"0 INSERT|2 B{i - 1}|10 0|20 0|0 INSERT|2 B{i - 1}|10 1|20 0")))
            .Prepend(Block("B0", Circle(0, 0, 5)));

        Assert.Contains("the limit for a file that spells out 122 is 50488",
            RefusalOf(FileWith(Millimetres, Blocks(doubling), Tags("0 INSERT|2 B60|10 0|20 0"))));
    }

    [Fact]
    public void Copies_of_a_polyline_count_by_its_corners()
    {
        var long1 = Block("A", Polyline(true, Enumerable.Range(0, 1000).Select(i => new Vec2(i, i * i))));

        Assert.Contains("has 900900 lines and curves",
            RefusalOf(FileWith(Millimetres, Blocks(long1), Tags("0 INSERT|2 A|10 0|20 0|70 30|71 30|44 9|45 9"))));
    }

    [Fact]
    public void A_grid_of_inserts_that_scale_each_other_out_of_reach_is_refused_where_it_reaches()
    {
        var block = Blocks(Block("A", Circle(0, 0, 5)), Block("B", Tags("0 INSERT|2 A|10 0|20 0|41 1000000000|42 1000000000")));

        Assert.Contains("the limit is 1E+08 mm",
            RefusalOf(FileWith(Millimetres, block, Tags("0 INSERT|2 B|10 0|20 0|41 1000000000|42 1000000000"))));
    }
}
