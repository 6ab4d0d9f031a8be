using System.Collections.Immutable;
using System.Text;
using BuckGen.Cutting.Drilling;
using BuckGen.Design.Specs;
using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Intake.Catalogs;
using BuckGen.Physics.Air;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>Vents are holes that a drill one can buy makes, and that a shop would drill.</summary>
public sealed class DrillTests
{
    [Theory]
    [InlineData(Drills.Metric, 0.6826, "0.65 mm", 0.65)]
    [InlineData(Drills.Metric, 1.0, "1.0 mm", 1.0)]
    [InlineData(Drills.Number, 0.6826, "#71", 0.6604)]
    [InlineData(Drills.Number, 1.016, "#60", 1.016)]
    [InlineData(Drills.Number, 1.0159, "#61", 0.9906)]
    public void The_widest_drill_within_a_limit(Drills kind, double limit, string name, double diameter)
    {
        var drill = DrillSeries.Of(kind).WidestWithin(limit, 0.4);

        Assert.Equal((name, diameter), (drill.Name, Math.Round(drill.Diameter, 6)));
        Assert.Equal(name, DrillSeries.Of(kind).NameOf(drill.Diameter));
    }

    [Theory]
    [InlineData(Drills.Metric, 57, 0.2, 3.0)]
    [InlineData(Drills.Number, 80, 0.3429, 5.7912)]
    public void A_series_rises_and_names_its_source(Drills kind, int count, double first, double last)
    {
        var series = DrillSeries.Of(kind);

        Assert.Equal(count, series.Sizes.Length);
        Assert.Equal((first, last), (Math.Round(series.Sizes[0].Diameter, 6), Math.Round(series.Sizes[^1].Diameter, 6)));
        Assert.All(series.Sizes.Zip(series.Sizes.Skip(1)), p => Assert.InRange(p.Second.Diameter - p.First.Diameter, 0.02, 0.26));
        Assert.Equal(count, series.Sizes.Select(s => s.Name).Distinct().Count());
        Assert.Contains("from memory", series.Source);
    }

    [Fact]
    public void Below_the_narrowest_the_narrowest_is_taken_and_reported() =>
        Assert.Equal("0.4 mm", DrillSeries.Metric.WidestWithin(0.1, 0.4).Name);

    [Theory]
    [InlineData(Drills.Metric)]
    [InlineData(Drills.Number)]
    public void Vents_are_drills_that_hold_the_limit_and_the_air_is_computed_with_them(Drills kind)
    {
        var spec = Vented.Spec() with { Draft = 0 };
        var vents = Vented.Design(Vented.Rectangle(100, 60), spec with { Vents = spec.Vents! with { Drills = kind } }).Vents!;

        Assert.Contains(DrillSeries.Of(kind).Sizes, d => d.Diameter == vents.Diameter);
        Assert.InRange(vents.Diameter, vents.Sizing.MaxDiameter - 0.05, vents.Sizing.MaxDiameter);
        Assert.All(vents.Vents, v => Assert.Equal(vents.Diameter, v.Diameter));
        Assert.Equal(DrawDown.MinHoleCount(vents.Air.Volume, vents.Diameter, 3, spec.Vents!.Air), vents.Air.Needed);
    }

    [Fact]
    public void Sixty_holes_of_0_4_mm_come_with_another_way_in_figures()
    {
        var spec = Vented.Spec() with { Sheet = new() { Gauge = 0.6 }, Draft = 0 };
        var design = Vented.Design(Vented.Rectangle(400, 300), spec with { Base = new(new("board 12", 12, 2000, 2000)) });

        var (vents, finding) = (design.Vents!, design.Findings.Single(f => f.Id == "vents-too-fine"));

        Assert.InRange(vents.Diameter, 0.4, 0.6);
        Assert.Equal((Severity.Warning, vents.Diameter, 0.8), (finding.Severity, finding.Value, finding.Limit));
        Assert.StartsWith($"{vents.Vents.Length} vents of ", finding.Message);
        Assert.Contains("bore 5 mm", finding.Remedy);
        Assert.Contains("grooves 0.3 mm deep", finding.Remedy);
        // A sheet so thick that its mean thickness is the drill: gauge x 0.8 / mean, upward to a tenth.
        var gauge = Math.Ceiling(0.6 * 0.8 / vents.Sizing.FormedThickness * 10) / 10;
        Assert.Contains(FormattableString.Invariant($"a sheet of {gauge:0.#} mm"), finding.Remedy);
        var thicker = spec with { Sheet = new() { Gauge = gauge } };
        Assert.DoesNotContain(Vented.Design(Vented.Rectangle(400, 300), thicker).Findings, f => f.Id == "vents-too-fine");
    }

    [Fact]
    public void Who_drills_finer_says_so() =>
        Assert.DoesNotContain(Fine(v => v with { MinDrill = 0.5 }), f => f.Id == "vents-too-fine");

    [Fact]
    public void A_hole_deeper_than_its_flutes_is_bored_from_below() =>
        Assert.Contains(Fine(v => v with { FaceThickness = 50 }),
            f => f.Id == "vents-too-fine" && f.Remedy.Contains("at most 6 mm of wood", StringComparison.Ordinal));

    [Fact]
    public void List_and_program_name_the_drill()
    {
        var spec = Vented.Spec() with { Draft = 0 };
        var design = Vented.Design(
            Vented.Rectangle(100, 60), spec with { Vents = spec.Vents! with { Drills = Drills.Number } });
        DrillHole[] holes = [.. DrillMap.FromAbove(design)];

        Assert.Contains("0.610,6.000,2,#73,wall\r\n", Encoding.UTF8.GetString(DrillCsv.Write(holes).AsSpan()));
        Assert.Contains(DrillRun.Split(holes), r => Encoding.ASCII.GetString(DrillProgram.Write(r, new()).AsSpan())
            .Contains("drill #73)", StringComparison.Ordinal));
        Assert.Equal("#73 (0.61 mm)", design.Vents!.DrillText);
    }

    private static ImmutableArray<Finding> Fine(Func<VentSpec, VentSpec> change)
    {
        BuckSpec spec = Vented.Spec() with { Draft = 0, Base = new(new("board 12", 12, 2000, 2000)) };
        return Vented.Design(Vented.Rectangle(100, 60), spec with { Vents = change(spec.Vents!) }).Findings;
    }
}
