using BuckGen.Geometry;
using BuckGen.Intake.Reading;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Intake.Outlines;

public class LoopCleaningTests
{
    [Fact]
    public void A_small_hole_is_kept()
    {
        var outline = Reading.Dxf(Rectangle(0, 0, 80, 50), Circle(40, 25, 0.05));

        Assert.Equal(1, outline.Region.HoleCount);
        Assert.Empty(outline.Repairs);
    }

    [Fact]
    public void Paths_around_nothing_are_left_out_and_counted()
    {
        var outline = Reading.Dxf(
            Rectangle(0, 0, 80, 50),
            Polyline(true, new(10, 10), new(20, 10)),
            Polyline(true, new(30, 10), new(40, 10), new(30, 10), new(35, 10)));

        var repair = Assert.Single(outline.Repairs);
        Assert.Equal(("empty-loop-dropped", 2), (repair.Kind, repair.Count));
        Assert.Equal(1, outline.LoopCount);
    }

    [Fact]
    public void Pieces_without_length_are_left_out_and_counted()
    {
        var outline = Reading.Dxf(Rectangle(0, 0, 80, 50), Line(7, 7, 7, 7), Circle(9, 9, 0), Polyline(true, new Vec2(5, 5)));

        var repair = Assert.Single(outline.Repairs);
        Assert.Equal(("zero-length-dropped", 3), (repair.Kind, repair.Count));
    }

    [Fact]
    public void A_spike_is_cut_off_and_reported()
    {
        var outline =
            Reading.Dxf(Polyline(true, new(0, 0), new(80, 0), new(80, 50), new(40, 50), new(40, 70), new(40, 50), new(0, 50)));

        Assert.Equal(4000, outline.Region.Area, 1e-9);
        Assert.Equal(260, outline.Region.Perimeter, 1e-9);
        var repair = Assert.Single(outline.Repairs);
        Assert.Equal("spike-trimmed", repair.Kind);
        Assert.Equal(20, repair.MaxDistance, 1e-9);
    }

    [Fact]
    public void A_spike_at_the_first_corner_is_cut_off_too()
    {
        var outline = Reading.Dxf(Polyline(true, new(-20, 0), new(80, 0), new(80, 50), new(0, 50), new(0, 0)));

        Assert.Equal(new(0, 0, 80, 50), outline.Region.Bounds);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void A_corner_that_crosses_itself_by_a_hair_is_cut_off_and_reported(int first)
    {
        // The last side stops 0.004 mm below the first one and 0.003 mm beyond its start, then closes.
        Vec2[] corners = [new(0, 0), new(80, 0), new(80, 50), new(0.003, 50), new(0.003, -0.004)];
        var outline = Reading.Dxf(Polyline(true, [.. corners[first..], .. corners[..first]]));

        var repair = Assert.Single(outline.Repairs);
        Assert.Equal(("crossed-corner-cut", 1), (repair.Kind, repair.Count));
        Assert.Equal(0.006, repair.MaxDistance, 1e-9);
        Assert.Equal(new(0.003, 0, 80, 50), outline.Region.Bounds);
        Assert.Equal(4, outline.Region.Segments.Count());
    }

    [Fact]
    public void A_path_that_stops_short_on_the_far_side_of_its_own_edge_is_cut_at_the_crossing()
    {
        var outline = OutlineReader.Read(Corpus.File("svg/h_petals_stop_short.svg").Content, "h_petals_stop_short.svg");

        Assert.Equal(("crossed-corner-cut", 6), (outline.Repairs.Single().Kind, outline.Repairs.Single().Count));
        Assert.Equal(12, outline.Region.Segments.Count());
        Assert.All(outline.Region.Loops, loop => Assert.True(loop.IsCounterClockwise));
    }

    [Fact]
    public void A_polyline_that_repeats_its_first_corner_is_closed_without_a_word()
    {
        var outline = Reading.Dxf(Polyline(false, new(0, 0), new(80, 0), new(80, 50), new(0, 0)));

        Assert.Equal(2000, outline.Region.Area, 1e-9);
        Assert.Empty(outline.Repairs);
    }

    [Fact]
    public void A_path_whose_areas_cancel_is_no_outline() =>
        Assert.Contains("no outline that encloses an area",
            Reading.Refusal(Polyline(true, new(5, 5), new(55, 5), new(55, 5.01), new(105, 5.01))));
}
