using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Output.Reports;
using BuckGen.Settings;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Trimming;

/// <summary>The rim of a flange follows the part, or is a rectangle or a drawing; its narrowest place is known.</summary>
public class FlangeRimTests
{
    private const double Near = 2e-3;

    /// <summary>Two compartments with a gap of 80 mm between them: a rim that follows them has a dent on either side.</summary>
    private static readonly Region Pair = Shapes.Union(Shapes.RectangleAt(0, 0, 40, 60), Shapes.RectangleAt(120, 0, 40, 60));

    [Fact]
    public void A_rectangle_is_straight_where_the_compartments_have_dents()
    {
        var (offset, rectangle) = (Make(Pair, f => f), Make(Pair, f => f with { Rim = FlangeRim.Rectangle }));

        Assert.Equal(2, offset.TrimLine.Islands.Length);
        var line = Assert.Single(rectangle.TrimLine.Islands).Outer;
        Assert.Equal(4, line.Segments.Length);
        Assert.All(line.Segments, s => Assert.Equal(0, s.Bulge));
        Assert.Equal(offset.TrimLine.Bounds.MinX, rectangle.TrimLine.Bounds.MinX, Near);
        Assert.Equal(offset.TrimLine.Bounds.MaxY, rectangle.TrimLine.Bounds.MaxY, Near);
        // The template stays inside it, the land of the nest lies outside it.
        Assert.Equal(rectangle.TrimLine.Bounds.Width - 2 * rectangle.Offset, rectangle.Template.Region.Bounds.Width, Near);
        Assert.Equal(rectangle.TrimLine.Bounds.Width + 2 * 40, rectangle.Nest.Region.Bounds.Width, Near);
        Assert.Equal(2, rectangle.Nest.Region.HoleCount);
    }

    [Fact]
    public void A_rectangle_has_its_own_margin_and_corner_radius()
    {
        var flange = Make(Formed.Rectangle(100, 60), f => f with { Rim = FlangeRim.Rectangle, Margin = 30, CornerRadius = 12 });

        var arcs = Assert.Single(flange.TrimLine.Islands).Outer.Segments.Where(s => s.Bulge != 0).ToArray();
        Assert.Equal(4, arcs.Length);
        Assert.All(arcs, a => Assert.Equal(12 * Math.PI / 2, a.Length, Near));
        Assert.Equal(30, flange.Narrowest.Width, Near);
    }

    [Fact]
    public void Rounded_corners_that_come_near_the_part_are_reported()
    {
        // The margin is 15 mm on every side; a corner of 40 mm radius cuts 40 (sqrt 2 - 1) = 16.6 mm off the diagonal.
        var design = Design(Formed.Rectangle(100, 60), f => f with { Rim = FlangeRim.Rectangle, CornerRadius = 40 });

        var finding = design.Findings.Single(f => f.Id == "flange-narrow");
        Assert.Equal((Severity.Warning, 15.0), (finding.Severity, finding.Limit));
        Assert.Equal(design.Flange!.Narrowest.Width, finding.Value);
        Assert.InRange(finding.Value!.Value, 0.1, 14.9);
        Assert.DoesNotContain(Design(Formed.Rectangle(100, 60), f => f with { Rim = FlangeRim.Rectangle }).Findings,
            f => f.Id.StartsWith("flange-", StringComparison.Ordinal));
    }

    /// <summary>By brute force: no point of the part lies nearer to the rim, and one lies as near.</summary>
    [Theory]
    [InlineData(FlangeRim.Offset)]
    [InlineData(FlangeRim.Rectangle)]
    [InlineData(FlangeRim.Drawn)]
    public void The_narrowest_place_is_the_narrowest(FlangeRim rim)
    {
        var drawn = Shapes.Polygon((-40, -30), (200, -45), (190, 100), (-30, 90));
        var design = Design(Pair, f => f with { Rim = rim, Outline = rim == FlangeRim.Drawn ? drawn : null });
        var (flange, wall) = (design.Flange!, design.Blank!.MeanThickness / Math.Cos(5 * Math.PI / 180));

        var reach = 24 * Math.Tan(5 * Math.PI / 180) + wall;
        var (found, tried) = (double.PositiveInfinity, 0);
        foreach (var segment in flange.TrimLine.Segments)
            for (var i = 0; i <= 2000; i++, tried++)
                found = Math.Min(found, Pair.DistanceToEdge(segment.PointAt(i / 2000.0)) - reach);
        Assert.InRange(tried, 8000, int.MaxValue);
        Assert.Equal(found, flange.Narrowest.Width, 0.02);
        if (rim == FlangeRim.Offset) Assert.Equal(15, flange.Narrowest.Width, 0.02);
        Assert.Equal(flange.Narrowest.Width, FlangeReport.Create(flange).Narrowest, 1e-4);
    }

    [Fact]
    public void A_drawn_rim_is_the_trim_line_with_its_holes()
    {
        var drawn = Region.FromLoops([Loop.Rectangle(new(-50, -40, 220, 110)), Loop.Circle(new(80, 30), 8)]);

        var flange = Make(Pair, f => f with { Rim = FlangeRim.Drawn, Outline = drawn });

        Assert.Equal(drawn.Area, flange.TrimLine.Area, 1e-6);
        // The bushing runs round inside the hole of the template, which is larger than the hole by the offset.
        var hole = Assert.Single(flange.Template.Region.Islands[0].Holes);
        Assert.Equal(8 + flange.Offset, hole.AsCircle(1e-4)!.Value.Radius, Near);
    }

    [Fact]
    public void A_drawn_rim_over_the_part_is_an_error()
    {
        var design = Design(Pair, f => f with
        {
            Rim = FlangeRim.Drawn,
            Outline = Formed.Rectangle(200, 100),
        });

        Assert.Equal(Severity.Error, design.Findings.Single(f => f.Id == "flange-rim-cuts").Severity);
        Assert.DoesNotContain(design.Findings, f => f.Id == "flange-narrow");
    }

    [Fact]
    public void Rim_and_drawing_go_together()
    {
        Assert.Contains("rim is set to drawn", Refusal(f => f with { Rim = FlangeRim.Drawn }));
        Assert.Contains("rim is not set to drawn", Refusal(f => f with { Outline = Formed.Rectangle(200, 100) }));
        Assert.Contains("corner radius", Refusal(f => f with { Rim = FlangeRim.Rectangle, CornerRadius = 200 }));
    }

    private static string Refusal(Func<FlangeSpec, FlangeSpec> change) =>
        Assert.Throws<SpecException>(() => Design(Formed.Rectangle(100, 60), change)).Message;

    private static FlangeTemplate Make(Region outline, Func<FlangeSpec, FlangeSpec> change) => Design(outline, change).Flange!;

    private static BuckDesign Design(Region outline, Func<FlangeSpec, FlangeSpec> change)
    {
        BuckSpec spec = Formed.Spec(BuckKind.Male, 24, 5) with
        {
            Stock = [Formed.Mdf6],
            Flange = change(new(Formed.Mdf6)),
        };
        return Formed.Design(outline, spec);
    }
}
