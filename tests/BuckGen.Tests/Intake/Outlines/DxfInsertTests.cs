using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Intake.Outlines;

public class DxfInsertTests
{
    private static readonly string Disc = Blocks(Block("DISC", Circle(0, 0, 5)));

    [Fact]
    public void A_circle_scaled_unevenly_becomes_an_ellipse()
    {
        var outline = Read(Disc, Insert("DISC", 10, 10, "41\n2\n42\n1\n"));

        Assert.Equal(50 * Math.PI, outline.Region.Area, 0.05);
        Assert.Equal(20, outline.Region.Bounds.Width, 0.02);
        Assert.Equal(10, outline.Region.Bounds.Height, 0.02);
    }

    [Fact]
    public void Rows_and_columns_are_turned_and_not_scaled()
    {
        var outline = Read(Disc, Insert("DISC", 0, 0, "41\n0.5\n42\n0.5\n50\n90\n70\n3\n71\n2\n44\n20\n45\n30\n"));

        Assert.Equal(6, outline.Region.Islands.Length);
        Assert.Equal(35, outline.Region.Bounds.Width, 1e-9);
        Assert.Equal(45, outline.Region.Bounds.Height, 1e-9);
        Assert.Equal(-32.5, outline.Region.Bounds.MinX, 1e-9);
    }

    [Fact]
    public void A_mirrored_arc_bulges_the_other_way()
    {
        var half = Blocks(Block("HALF", "0\nLWPOLYLINE\n8\n0\n70\n1\n10\n0\n20\n0\n42\n1\n10\n20\n20\n0\n"));

        Assert.Equal(-10, Read(half, Insert("HALF", 0, 0, "")).Region.Bounds.MinY, 1e-9);
        Assert.Equal(10, Read(half, Insert("HALF", 0, 0, "41\n1\n42\n-1\n")).Region.Bounds.MaxY, 1e-9);
    }

    [Fact]
    public void A_block_that_contains_itself_is_refused_by_name()
    {
        var loop = Blocks(Block("A", Insert("B", 0, 0, "")), Block("B", Insert("A", 0, 0, "")));

        Assert.Contains("the block A contains itself", Refusal(loop, Insert("A", 0, 0, "")));
    }

    [Fact]
    public void Blocks_that_grow_beyond_every_use_are_refused_at_once() =>
        Assert.Contains("lines and curves; the limit for a file that spells out ",
            Refusal(Disc, Insert("DISC", 0, 0, "70\n30000\n71\n30000\n")));

    [Fact]
    public void Layer_0_in_a_block_stands_for_the_layer_it_is_placed_on()
    {
        var placed = FileWith("", Disc, Circle(50, 0, 1, "CUT"), Insert("DISC", 0, 0, "").Replace("8\n0\n", "8\nMARKS\n"));

        Assert.Equal(1, OutlineReader.Read(placed, "test.dxf", OutlineOptions.Default with { Layers = ["CUT"] }).LoopCount);
    }

    private static string Insert(string block, double x, double y, string more) =>
        FormattableString.Invariant($"0\nINSERT\n8\n0\n2\n{block}\n10\n{x}\n20\n{y}\n{more}");

    private static Outline Read(string blocks, string insert) =>
        OutlineReader.Read(FileWith("9\n$INSUNITS\n70\n4\n", blocks, insert), "test.dxf");

    private static string Refusal(string blocks, string insert) => Reading.Refusal(FileWith("", blocks, insert));
}
