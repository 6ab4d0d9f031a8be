using Xunit;
using static BuckGen.Tests.Outlines.DxfText;

namespace BuckGen.Tests.Outlines;

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
        var outline = Reading.Dxf(Rectangle(0, 0, 80, 50), Line(7, 7, 7, 7), Circle(9, 9, 0), Polyline(true, new BuckGen.Geometry.Vec2(5, 5)));

        var repair = Assert.Single(outline.Repairs);
        Assert.Equal(("zero-length-dropped", 3), (repair.Kind, repair.Count));
    }

    [Fact]
    public void A_spike_is_cut_off_and_told()
    {
        var outline = Reading.Dxf(Polyline(true, new(0, 0), new(80, 0), new(80, 50), new(40, 50), new(40, 70), new(40, 50), new(0, 50)));

        Assert.Equal(4000, outline.Region.Area, 1e-9);
        Assert.Equal(260, outline.Region.Perimeter, 1e-9);
        var repair = Assert.Single(outline.Repairs);
        Assert.Equal("spike-trimmed", repair.Kind);
        Assert.Equal(20, repair.Largest, 1e-9);
    }

    [Fact]
    public void A_spike_at_the_first_corner_is_cut_off_too()
    {
        var outline = Reading.Dxf(Polyline(true, new(-20, 0), new(80, 0), new(80, 50), new(0, 50), new(0, 0)));

        Assert.Equal(new(0, 0, 80, 50), outline.Region.Bounds);
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
        Assert.Contains("no outline that encloses an area", Reading.Refusal(Polyline(true, new(5, 5), new(55, 5), new(55, 5.01), new(105, 5.01))));
}
