using BuckGen.Intake.Outlines;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Intake.Outlines;

public class DuplicateTests
{
    [Fact]
    public void Lines_drawn_again_reversed_or_in_part_come_out_once()
    {
        var outline = Reading.Dxf([
            .. RectangleLines(0, 0, 80, 50),
            Line(0, 0, 80, 0), Line(80, 50, 80, 0), Line(20, 50, 60, 50)]);

        Assert.Equal(4000, outline.Region.Area, 1e-9);
        AssertRemoved(outline, 3, 80);
    }

    [Fact]
    public void Lines_that_overlap_become_one()
    {
        var outline =
            Reading.Dxf(Line(0, 0, 50, 0), Line(30, 0, 80, 0), Line(80, 0, 80, 50), Line(80, 50, 0, 50), Line(0, 50, 0, 0));

        Assert.Equal(4, outline.Region.Segments.Count());
        AssertRemoved(outline, 1, 50);
    }

    [Fact]
    public void A_whole_outline_drawn_twice_in_lines_comes_out_once()
    {
        var outline = Reading.Dxf([.. RectangleLines(0, 0, 80, 50), .. RectangleLines(0, 0, 80, 50)]);

        Assert.Equal(1, outline.LoopCount);
        AssertRemoved(outline, 4, 80);
    }

    [Fact]
    public void A_closed_outline_drawn_twice_comes_out_once()
    {
        var outline = Reading.Dxf(Rectangle(0, 0, 80, 50), Rectangle(0, 0, 80, 50), Circle(40, 25, 5), Circle(40, 25, 5));

        Assert.Equal(4000 - 25 * Math.PI, outline.Region.Area, 1e-9);
        AssertRemoved(outline, 2, 0);
    }

    [Fact]
    public void An_edge_that_two_outlines_share_stays_with_both()
    {
        var outline = Reading.Dxf([.. RectangleLines(0, 0, 30, 30), .. RectangleLines(30, 0, 30, 30)]);

        Assert.Equal(2, outline.Region.Islands.Length);
        Assert.Empty(outline.Repairs);
        var note = Assert.Single(outline.Notes);
        Assert.Equal("shared-edge", note.Kind);
        Assert.Contains("30.000 mm", note.Message);
    }

    [Fact]
    public void A_short_edge_on_a_long_one_stays_with_both()
    {
        var outline = Reading.Dxf([.. RectangleLines(0, 0, 80, 50), .. RectangleLines(80, 10, 20, 20)]);

        Assert.Equal([4000.0, 400.0], outline.Region.Islands.Select(i => Math.Round(i.Area, 6)));
    }

    [Fact]
    public void A_thin_ring_is_not_a_duplicate()
    {
        var outline = Reading.Dxf(Circle(0, 0, 10), Circle(0, 0, 9.9));

        Assert.Equal(1, outline.Region.HoleCount);
        Assert.Empty(outline.Repairs);
    }

    private static void AssertRemoved(Outline outline, int count, double longest)
    {
        var repair = Assert.Single(outline.Repairs);
        Assert.Equal(("duplicate-removed", count), (repair.Kind, repair.Count));
        Assert.Equal(longest, repair.MaxDistance, 1e-9);
    }
}
