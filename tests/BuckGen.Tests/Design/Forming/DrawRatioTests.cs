using BuckGen.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Design.Forming;

/// <summary>Draw ratios and mean thickness against published worked examples and closed forms.</summary>
public class DrawRatioTests
{
    private const double Exact = 1e-9;

    /// <summary>
    /// Source: Crawford, Plastics Engineering, 3rd ed., example 4.7(a): a box of 150 x 100 x 60 mm from 2 mm sheet (the book
    /// prints 0.67 mm).
    /// </summary>
    [Fact]
    public void The_box_of_the_plastics_handbook()
    {
        var blank = Formed.Blank(Formed.Rectangle(150, 100), Formed.Spec(BuckKind.Female, 60, gauge: 2));

        Assert.Equal(45_000, blank.Surface.Formed, 1e-6);
        Assert.Equal(2.0 / 3, blank.MeanThickness, Exact);
    }

    /// <summary>
    /// Source: SPE Thermoforming Division, "The Ubiquitous Draw Ratio", Thermoforming Quarterly 24(4), 2005: depth and width
    /// alike.
    /// </summary>
    [Fact]
    public void The_cylinder_as_deep_as_wide()
    {
        var ratios = Formed.Blank(Formed.Disc(100), Formed.Spec(BuckKind.Female, 100)).Ratios;

        Assert.Equal((5.0, 3.0), (Math.Round(ratios.Areal, 9), Math.Round(ratios.Linear, 9)));
        Assert.Equal(1.0, ratios.HeightToWidth, 1e-3);
        Assert.Equal(0.2, Formed.Blank(Formed.Disc(100), Formed.Spec(BuckKind.Female, 100)).MeanThickness, Exact);
    }

    /// <summary>
    /// Source: a former's design guide, "Draw ratio", examples 1 and 2 (inches). Example 1 prints 1.7 and 0.170 in for 208/120.
    /// Example 2 prints 300 in2, 2.73 and 0.273 in, a slip in adding 100 + 110 + 110: the right area is 320 in2.
    /// </summary>
    [Theory]
    [InlineData(10, 12, 2, 208, 1.7333, 0.17333)]
    [InlineData(10, 11, 5, 320, 2.9091, 0.29091)]
    public void The_gauge_for_a_wanted_wall(double width, double length, double depth, double area, double ratio, double gauge)
    {
        const double Inch = 25.4;
        var spec = Formed.Spec(BuckKind.Female, depth * Inch) with
        {
            Stock = [new("inch board", Inch, 2000, 2000)],
            Sheet = new() { Gauge = 3, MinWall = 0.1 * Inch },
        };

        var blank = Formed.Blank(Formed.Rectangle(width * Inch, length * Inch), spec);

        Assert.Equal(area, blank.Surface.Formed / (Inch * Inch), 1e-6);
        Assert.Equal(ratio, blank.Ratios.Areal, 1e-4);
        Assert.Equal(gauge, blank.GaugeForMinWall!.Value / Inch, 1e-5);
    }

    /// <summary>
    /// Source: a plastics supplier's wall-thickness guide: 360 000 mm2 becoming 720 000 mm2 from 4 mm sheet is 2 mm thick on
    /// average.
    /// </summary>
    [Fact]
    public void Twice_the_area_is_half_as_thick()
    {
        // 600 x 600 mm with walls 150 mm high: 360 000 + 4 x 600 x 150.
        var blank = Formed.Blank(Formed.Rectangle(600, 600), Formed.Spec(BuckKind.Female, 150, gauge: 4));

        Assert.Equal((720_000.0, 2.0, 2.0),
            (Math.Round(blank.Surface.Formed, 6), Math.Round(blank.Ratios.Areal, 9), Math.Round(blank.MeanThickness, 9)));
    }

    /// <summary>Area balance of a male box of 100 x 100 x 50 mm in clear openings of three sizes, computed by hand.</summary>
    [Theory]
    [InlineData(300, 0.818)]
    [InlineData(200, 0.667)]
    [InlineData(160, 0.561)]
    public void A_male_box_in_three_frames(double opening, double share)
    {
        var spec = Formed.Spec(BuckKind.Male, 50) with { Former = new() { Opening = new(opening, opening) } };

        var blank = Formed.Blank(Formed.Rectangle(100, 100), spec);

        Assert.Equal(share, blank.MeanThickness, 5e-4);
        Assert.Equal(opening * opening / (opening * opening + 20_000), blank.MeanThickness, Exact);
    }

    /// <summary>Frustum of a cone: lateral area π (R + r) √((R - r)² + h²) (textbook geometry).</summary>
    [Theory]
    [InlineData(10)]
    [InlineData(30)]
    public void The_wall_of_a_cone_is_exact(double draft)
    {
        var spec = Formed.Spec(BuckKind.Female, 40, draft) with { OutlineAt = OutlineAt.Face };

        var surface = Formed.Blank(Formed.Disc(100), spec).Surface;

        var floor = 50 - 40 * Math.Tan(draft * Math.PI / 180);
        Assert.Equal(Math.PI * (50 + floor) * Math.Sqrt((50 - floor) * (50 - floor) + 1600), surface.Wall, 1e-6);
        Assert.Equal(Math.PI * 2500, surface.Flat, 1e-6);
        Assert.Equal(surface.Wall + Math.PI * floor * floor, surface.Formed, 1e-6);
    }

    /// <summary>A pyramid's frustum with mitred corners: four trapezoids.</summary>
    [Fact]
    public void The_wall_of_a_mitred_pyramid_is_exact()
    {
        var spec = Formed.Spec(BuckKind.Male, 30, 20) with { Corners = BuckGen.Geometry.Offsetting.CornerJoin.Mitre };

        var surface = Formed.Blank(Formed.Rectangle(80, 60), spec).Surface;

        var out1 = 30 * Math.Tan(20 * Math.PI / 180);
        var slant = 30 / Math.Cos(20 * Math.PI / 180);
        Assert.Equal(slant * (80 + 80 + 2 * out1 + 60 + 60 + 2 * out1), surface.Wall, 1e-6);
    }
}
