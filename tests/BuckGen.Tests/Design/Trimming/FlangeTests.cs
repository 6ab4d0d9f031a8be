using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Geometry;
using BuckGen.Output.Files;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Trimming;

/// <summary>The flange template stays inside the trim line by half of bushing less bit.</summary>
public class FlangeTests
{
    private const double Near = 1e-3;

    /// <summary>
    /// Sources: a cutter maker's tips (30 and 10 mm); a figure in a woodworking magazine (3/4 and 1/2 in); a woodworkers'
    /// forum (15 and 9 mm).
    /// </summary>
    [Theory]
    [InlineData(30, 10, 10)]
    [InlineData(19.05, 12.7, 3.175)]
    [InlineData(15, 9, 3)]
    [InlineData(12, 12, 0)]
    public void The_offset_is_half_of_bushing_less_bit(double bushing, double bit, double offset) =>
        Assert.Equal(offset, (new FlangeSpec(Formed.Mdf6) { Bushing = bushing, Bit = bit }).Offset, 1e-12);

    /// <summary>
    /// The same rule seen from the cut: a bushing of 15 mm and a cutter of 9 mm in a template hole of 50 mm cut a hole of 50 -
    /// 15 + 9 = 44 mm.
    /// </summary>
    [Fact]
    public void Outside_the_cut_is_larger_than_the_template_by_the_same_rule()
    {
        var design = Design(new FlangeSpec(Formed.Mdf6) { Width = 20, Bushing = 15, Bit = 9 });

        var (template, line) = (design.Flange!.Template.Region.Bounds, design.Flange.TrimLine.Bounds);
        Assert.Equal(template.Width + 15 - 9, line.Width, Near);
    }

    [Fact]
    public void The_flange_has_its_width_all_round()
    {
        var design = Design(new FlangeSpec(Formed.Mdf6) { Width = 20 });
        var wall = design.Blank!.MeanThickness / Math.Cos(5 * Math.PI / 180);
        // Round corners all the way: the trim line lies at one distance from the drawn rectangle.
        var reach = 24 * Math.Tan(5 * Math.PI / 180) + wall + 20;

        Assert.All(design.Flange!.TrimLine.Segments,
            s => Assert.Equal(reach, Loop.Rectangle(new(0, 0, 100, 60)).DistanceTo(s.PointAt(0.5)), Near));
    }

    [Fact]
    public void The_nest_lets_the_part_in_and_has_screws_in_its_land()
    {
        var nest = Design(new FlangeSpec(Formed.Mdf6) { Land = 30 }).Flange!.Nest;

        Assert.Equal(1, nest.Region.HoleCount);
        var screws = nest.Parts.SelectMany(p => p.Dowels).ToList();
        Assert.Equal(4, screws.Count);
        Assert.All(screws, s => Assert.Equal(15, nest.Region.DistanceToEdge(s.Centre), Near));
    }

    [Fact]
    public void A_template_that_vanishes_is_an_error_and_no_empty_file()
    {
        var design =
            Formed.Design(Formed.Rectangle(20, 10), Spec(new FlangeSpec(Formed.Mdf6) { Width = 2, Bushing = 40, Bit = 3 }));

        Assert.Contains(design.Findings, f => f is { Id: "template-vanishes", Severity: BuckGen.Findings.Severity.Error });
        var files = OutputFiles.Create(CutPlan.Create(design, new()), new OutputOptions(), force: true)
            .Select(f => f.Path).ToArray();
        Assert.DoesNotContain("jig/template-01.dxf", files);
        Assert.Contains("jig/nest-01.dxf", files);
    }

    private static BuckSpec Spec(FlangeSpec flange) =>
        Formed.Spec(BuckKind.Male, 24, 5) with { Stock = [Formed.Mdf6], Flange = flange };

    private static BuckDesign Design(FlangeSpec flange) => Formed.Design(Formed.Rectangle(100, 60), Spec(flange));
}
