using BuckGen.Geometry;
using BuckGen.Tests.Intake.Outlines;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>How ends meet, what is drawn twice, and what lies in what.</summary>
public class JoiningRules
{
    [Fact]
    public void The_joining_distance_is_reported_with_the_largest_gap()
    {
        var repair =
            Assert.Single(
                Reading.Dxf(Line(0, 0, 80, 0), Line(80, 0.02, 80, 50), Line(80, 50, 0, 50), Line(0, 49.95, 0, 0)).Repairs);

        Assert.Equal(("gap-joined", 2), (repair.Kind, repair.Count));
        Assert.Contains("the largest 0.05 mm; up to 0.1 mm is closed", repair.Message);
    }

    [Fact]
    public void Ends_that_stay_open_are_named_by_their_places() =>
        Assert.Contains("nearest ends at (80.000, 0.000) and (80.000, 2.000), 2.000 mm apart", Reading.Refusal(
            Line(0, 0, 80, 0), Line(80, 2, 80, 50), Line(80, 50, 0, 50), Line(0, 50, 0, 0)));

    [Fact]
    public void Where_two_outlines_share_a_corner_the_order_of_drawing_tells_which_way_is_meant()
    {
        // Both squares are drawn from far corners, so each comes through the shared one in the middle of its own lines.
        var outline = Reading.Dxf(
            Line(0, 10, 0, 0), Line(0, 0, 10, 0), Line(10, 0, 10, 10), Line(10, 10, 0, 10),
            Line(20, 10, 20, 20), Line(20, 20, 10, 20), Line(10, 20, 10, 10), Line(10, 10, 20, 10));

        Assert.Equal([100, 100], outline.Region.Islands.Select(i => Math.Round(i.Area, 6)));
    }

    [Theory]
    [InlineData(0, 0, 80, 0)]
    [InlineData(80, 0, 0, 0)]
    [InlineData(10, 0, 40, 0)]
    [InlineData(40, 0, 80, 0)]
    public void A_line_drawn_again_the_same_way_reversed_or_in_part_is_taken_out_before_areas_are_counted(double x1, double y1,
        double x2, double y2)
    {
        var outline = Reading.Dxf([.. RectangleLines(0, 0, 80, 50), Line(x1, y1, x2, y2)]);

        Assert.Equal(4000, outline.Region.Area, 1e-9);
        Assert.Equal("duplicate-removed", Assert.Single(outline.Repairs).Kind);
    }

    [Fact]
    public void An_outline_drawn_again_as_another_entity_does_not_empty_itself()
    {
        var outline = Reading.Dxf([Rectangle(0, 0, 80, 50), .. RectangleLines(0, 0, 80, 50)]);

        Assert.Equal(4000, outline.Region.Area, 1e-9);
        Assert.Equal("duplicate-removed", Assert.Single(outline.Repairs).Kind);
    }

    [Fact]
    public void Arcs_drawn_again_are_taken_out()
    {
        var half = Files.Tags("0 ARC|10 0|20 0|40 5|50 0|51 180");

        Assert.Equal(12.5 * Math.PI, Reading.Dxf(half, half, Line(-5, 0, 5, 0)).Region.Area, 1e-9);
    }

    [Fact]
    public void Depth_decides_what_is_a_hole_and_neither_layer_nor_direction_does()
    {
        string[] rings =
            [Circle(0, 0, 40, "INNER"), Circle(0, 0, 30, "OUTER"), Circle(0, 0, 20, "OUTER"), Square(10, false), Square(5, true)];

        var region = Reading.Dxf(rings).Region;

        Assert.Equal((3, 2), (region.Islands.Length, region.HoleCount));
        Assert.Equal(Math.PI * (1600 - 900 + 400) - 400 + 100, region.Area, 1e-6);
    }

    [Fact]
    public void Among_very_many_loops_each_hole_finds_its_outline()
    {
        // Frames of a 40 x 40 chessboard, each with a hole and an island in it, drawn inside out.
        var frames = Enumerable.Range(0, 1600)
            .SelectMany(i => new[] { 2.0, 3, 4 }.Select(r => Circle(i % 40 * 10, i / 40 * 10, r)));

        var region = Reading.Dxf(frames).Region;

        Assert.Equal((3200, 1600), (region.Islands.Length, region.HoleCount));
        Assert.Equal(1600 * Math.PI * (16 - 9 + 4), region.Area, 1e-3);
    }

    [Fact]
    public void A_small_hole_in_an_outline_of_very_many_pieces_is_found()
    {
        var outline = Enumerable.Range(0, 3000).Select(i => new Vec2(100 + 5 * Math.Sin(i * 0.2), 0).Turned(i * Math.PI / 1500));

        var region =
            Reading.Dxf([Polyline(true, outline), .. Enumerable.Range(0, 40).Select(i => Circle(2 * i - 40, i, 0.8))]).Region;

        Assert.Equal((1, 40), (region.Islands.Length, region.HoleCount));
    }

    [Fact]
    public void Crossings_of_one_outline_and_of_two_are_named_by_their_places()
    {
        Assert.Contains("crosses itself at (30.000, 20.000)",
            Reading.Refusal(Polyline(true, new(0, 0), new(60, 40), new(60, 0), new(0, 40))));
        Assert.Contains("outlines cross at (30.000, 10.000), (10.000, 30.000)",
            Reading.Refusal(Rectangle(0, 0, 30, 30), Rectangle(10, 10, 30, 30)));
    }

    private static string Square(double half, bool leftward)
    {
        Vec2[] corners = [new(-half, -half), new(half, -half), new(half, half), new(-half, half)];
        return Polyline(true, leftward ? corners : corners.Reverse());
    }
}
