using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Design.Forming;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Output.Files;
using BuckGen.Output.Reports;
using BuckGen.Settings;
using BuckGen.Tests.Design.Bucks;
using BuckGen.Tests.Design.Venting;
using Xunit;

namespace BuckGen.Tests.Design;

/// <summary>
/// Everything a job may cause has a limit that follows from its input; a refusal names the limit, the value and a way out.
/// </summary>
[Trait("Tier", "slow")]
public sealed class BudgetTests
{
    private static readonly Stock Thin = new("MDF 1", 1, 3000, 3000);

    [Fact]
    public void An_outline_of_very_many_lines_in_very_many_layers_is_refused_before_any_is_made()
    {
        var wheel = Outline
            .FromRegion("wheel.svg",
                Region.FromLoops(
                    [Loop.Polygon(Enumerable.Range(0, 20_000).Select(i => new Vec2(200, 0).Turned(2 * Math.PI * i / 20_000)))]));
        var message =
            Assert.Throws<SpecException>(() =>
                BuckDesign.Create(wheel, PlainBuck.Spec with { Depth = 300, Stock = [Thin] })).Message;
        // 300 layers with two heights each; 300·tan 5° = 26.25 mm in steps of 0.25 mm are 104 more (trigonometry).
        Assert.Equal(
            "wheel.svg has 20000 lines and arcs; with 300 layers and 5 degrees of draft it is computed at 704 heights, "
            + "14080000 lines and arcs in all; the limit is 1000000. Simplify the drawing, or use thicker stock, less "
            + "depth or less draft.", message);
    }

    /// <summary>
    /// Found by an attack: a circle of 1,800 km ended with a fault of the program where the sheet was known, and a rounded
    /// plate of 900 km did not end. Those are too far from the origin by now.
    /// </summary>
    [Theory]
    [InlineData("<circle r='90000000'/>", "180000000 x 180000000")]
    [InlineData("<rect width='90000000' height='80000000' rx='3000000'/>", "90000000 x 80000000")]
    [InlineData("<rect width='100001' height='9'/>", "100001 x 9")]
    public void An_outline_beyond_every_machine_is_refused_by_the_reader_and_the_designer_alike(string shape, string size)
    {
        var content =
            System.Text.Encoding.UTF8
                .GetBytes($"<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' viewBox='0 0 100 "
                    + $"100'>{shape}</svg>");
        var message = Assert.Throws<OutlineException>(() => OutlineReader.Read(content, "huge.svg")).Message;
        Assert.Equal(
            $"huge.svg: the outline is {size} mm, the limit is 100000 mm; say which unit it is drawn in, or make the "
            + "drawing smaller", message);

        var same = Region.FromLoops([Loop.Rectangle(new(0, 0, 900_000_000, 800_000_000))]);
        Assert.Contains("the limit is 100000 mm",
            Assert.Throws<OutlineException>(() => BuckDesign.Create(Outline.FromRegion("huge", same), PlainBuck.Spec)).Message);
    }

    [Fact]
    public void A_paper_template_of_very_many_pages_is_left_out_and_reported()
    {
        var spec = PlainBuck.Spec with { Depth = 12, Sheet = new SheetSpec { Gauge = 1 }, Flange = new(PlainBuck.Mdf12) };
        var plan = CutPlan.Create(PlainBuck.Create(Region.FromLoops([Loop.Rectangle(new(0, 0, 6000, 5000))]), spec), new());

        var files = OutputFiles.Jigs(plan, new(), force: true);

        Assert.DoesNotContain(files, f => f.Path.EndsWith("trim.pdf", StringComparison.Ordinal));
        var finding =
            Assert.Single(SummaryJson.Read(files.Single(f => f.Path == "summary.json").Content).Findings,
                f => f.Id == "template-too-large");
        Assert.Matches(
            "^The paper template templates/trim.pdf would be spread over [67][0-9]{2} pages of A4, the limit is 500; it is "
            + "left out.$", finding.Message);
    }

    [Fact]
    public void A_base_on_very_many_feet_is_refused()
    {
        var spec = Vented.Spec(plenum: PlenumKind.Feet) with { Base = new(new("MDF 3", 3), 20), Vents = null };
        var message = Assert.Throws<SpecException>(() => Vented.Design(Vented.Rectangle(6000, 6000), spec)).Message;
        Assert.Matches(
            "^The base of .* would stand on [0-9]{5,} feet, at most .* mm apart; the limit is 10000. Use a thicker base, "
            + "larger feet, or a plenum of channels.$", message);
    }

    [Fact]
    public void A_grid_of_very_many_vents_is_refused()
    {
        // A plate of 1030 mm with a pitch of 5 mm has 42,000 places; of 2,030 mm 164,000.
        var spec = Vented.Spec(depth: 6) with { Vents = new() { Pattern = VentPatterns.Grid, GridPitch = 5 } };
        var message =
            Assert.Throws<SpecException>(() =>
                Vented.Design(Vented.Rectangle(1030, 1030),
                    spec with { Kind = BuckKind.Male, Base = new(Vented.Mdf6, 500, Vented.Mdf6) })).Message;
        Assert.Equal(
            "The outline and the spacing need more than 50000 places for vents, which is the limit; use a larger "
            + "spacing, a larger pitch of the grid or fewer points.", message);
    }

    /// <summary>
    /// Found by an attack: 1,024 findings "counter-splits" and 9 s for what is 6 mm deep, because the hole of the inner ring
    /// passed for a part of the outer one's.
    /// </summary>
    [Theory]
    [InlineData(BuckKind.Male, OutlineAt.Face)]
    [InlineData(BuckKind.Male, OutlineAt.Base)]
    [InlineData(BuckKind.Female, OutlineAt.Face)]
    [InlineData(BuckKind.Female, OutlineAt.Base)]
    public void Four_circles_in_one_another_change_nothing(BuckKind kind, OutlineAt at)
    {
        var rings = Region.FromLoops([.. ((double[])[40, 30, 20, 10]).Select(r => Loop.Circle(new(0, 0), r))]);
        var design =
            PlainBuck.Create(rings, PlainBuck.Spec with { Depth = 6, Kind = kind, OutlineAt = at, Stock = [new("MDF 3", 3)] });
        Assert.All(design.Findings, f => Assert.DoesNotMatch("splits|merge|closes|vanish", f.Id));
    }

    [Fact]
    public void Changes_without_end_are_reported_roughly_and_so_is_the_roughness()
    {
        var wheel = Region
            .FromLoops([Loop.Polygon(Enumerable.Range(0, 4000).Select(i => new Vec2(10, 0).Turned(2 * Math.PI * i / 4000)))]);
        var asked = 0;
        // Never in the same place twice: whatever interval is halved, both halves differ too. 1,000,000 corners are 250 wheels.
        var changes = RegionChanges.Find(_ => wheel.Moved(30 * asked++, 0), [0, 1000], grows: true, 1e-6, CancellationToken.None);
        Assert.InRange(asked, 240, 260);
        Assert.Contains(changes, c => c.Within > 1e-6);
        var rough = Assert.Single(ShapeChangeFindings.Find(changes, 1e-6, 0, BuckKind.Male), f => f.Id == "changes-rough");
        Assert.Equal(changes.Max(c => c.Within), rough.Value);
    }
}
