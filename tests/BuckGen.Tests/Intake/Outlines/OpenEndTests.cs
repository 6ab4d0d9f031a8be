using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Intake.Outlines;

public class OpenEndTests
{
    [Fact]
    public void Centre_lines_are_left_out_and_reported()
    {
        var outline = Reading.Dxf(Rectangle(0, 0, 80, 50), Line(-5, 25, 85, 25, "CENTRE"), Line(40, -5, 40, 55, "CENTRE"));

        Assert.Equal(4000, outline.Region.Area, 1e-9);
        var note = Assert.Single(outline.Notes);
        Assert.Equal("open-lines-ignored", note.Kind);
        Assert.StartsWith("2 single straight lines", note.Message);
        Assert.Contains("layer CENTRE", note.Message);
    }

    [Fact]
    public void Four_sides_whose_corners_are_missing_are_no_centre_lines() =>
        Assert.StartsWith("4 outlines are open: nearest ends at (75.000, 0.000) and (80.000, 5.000), 7.071 mm apart",
            Reading.Refusal(
            Line(5, 0, 75, 0), Line(80, 5, 80, 45), Line(75, 50, 5, 50), Line(0, 45, 0, 5), Circle(40, 25, 10)));

    [Fact]
    public void A_closed_hole_does_not_take_the_place_of_an_open_outline() =>
        Assert.StartsWith(
            "the outline is open: nearest ends at (0.000, 0.000) and (0.000, 3.000), 3.000 mm apart (LWPOLYLINE at line",
            Reading.Refusal(
            Polyline(false, new(0, 0), new(60, 0), new(60, 40), new(0, 40), new(0, 3)), Circle(30, 20, 8)));

    [Fact]
    public void An_open_line_along_a_closed_outline_is_that_outline_again()
    {
        var outline = Reading.Dxf(Rectangle(0, 0, 80, 50), Polyline(false, new(10, 0), new(80, 0), new(80, 30)));

        Assert.Equal(1, outline.LoopCount);
        Assert.Equal("duplicate-removed", Assert.Single(outline.Repairs).Kind);
    }

    [Fact]
    public void A_tail_on_an_outline_is_refused() =>
        Assert.StartsWith("the outline is open", Reading.Refusal(
            [.. RectangleLines(0, 0, 80, 50), Polyline(false, new(80, 50), new(90, 60), new(80, 70))]));

    [Fact]
    public void A_line_shorter_than_the_joining_distance_does_not_close_on_itself()
    {
        var outline = Reading.Dxf(Rectangle(0, 0, 80, 50), Line(100, 0, 100.06, 0));

        Assert.Equal("open-lines-ignored", Assert.Single(outline.Notes).Kind);
        Assert.Empty(outline.Repairs);
    }

    [Fact]
    public void Only_open_lines_are_counted() =>
        Assert.StartsWith("nothing is closed, only 2 open lines", Reading.Refusal(
            Line(0, 0, 50, 0), Polyline(false, new(0, 20), new(10, 30), new(20, 20))));
}
