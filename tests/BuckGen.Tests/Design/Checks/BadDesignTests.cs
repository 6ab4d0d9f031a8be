using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Design.Specs;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Checks;

/// <summary>
/// Designs that a tradesperson would send back, and what they would say (common practice, no source); beside each one that is
/// right.
/// </summary>
[Trait("Tier", "slow")]
public class BadDesignTests
{
    [Fact]
    public void A_bowl_upside_down_locks()
    {
        var spec = Male(20, draft: -10);

        Assert.Equal(["undercut"], Grave(Disc(80), spec));
        Assert.Empty(Grave(Disc(80), spec with { Draft = 10 }));
        // Even when nothing is left of it at its foot.
        Assert.Contains("undercut", Grave(Disc(60), Male(40, draft: -45)));
    }

    [Fact]
    public void A_tub_with_upright_walls_90_mm_deep_in_half_a_millimetre()
    {
        var spec = Female(90, draft: 0, gauge: 0.5);

        Assert.Equal(["draft-low", "may-tear", "too-deep"], Grave(Rectangle(100, 80), spec));
        Assert.Empty(Grave(Rectangle(100, 80), Female(30, draft: 3, gauge: 2)));
    }

    [Fact]
    public void The_same_tub_over_a_male_buck_never_comes_off() =>
        Assert.Contains(Formed.Design(Rectangle(100, 80), Male(90, draft: 0)).Findings,
            f => f is { Id: "draft-locks", Severity: Severity.Error });

    [Fact]
    public void Letters_2_mm_apart_and_36_mm_high_fold_the_sheet_between_them()
    {
        var letters = Region.FromLoops([Loop.Rectangle(new(0, 0, 60, 60)), Loop.Rectangle(new(70, 0, 130, 60))]);
        // To size at the foot, where they stand 2 mm apart; 5 degrees open the gap toward the face.
        var close = Region.FromLoops([Loop.Rectangle(new(0, 0, 60, 60)), Loop.Rectangle(new(62, 0, 122, 60))]);
        var spec = Male(36) with { OutlineAt = OutlineAt.Base };

        Assert.Equal(["web-between"], Grave(close, spec));
        var web = Formed.Design(close, spec).Findings.Single(f => f.Id == "web-between");
        Assert.Equal((2.0, 36.0), (Math.Round(web.Value!.Value, 6), web.Limit));
        Assert.InRange(web.Place!.Value.X, 60, 62);
        Assert.Empty(Grave(letters, spec with { Depth = 10 }));
    }

    [Fact]
    public void A_neck_of_1_and_a_half_mm_breaks()
    {
        var spec = Male(6) with { Draft = 5, OutlineAt = OutlineAt.Face };

        Assert.Equal(["neck-fragile"], Grave(Dumbbell(1.5), spec));
        var neck = Formed.Design(Dumbbell(1.5), spec).Findings.Single(f => f.Id == "neck-fragile");
        Assert.Equal(1.5, neck.Value!.Value, 1e-6);
        Assert.InRange(neck.Place!.Value.X, 39.9, 60.1);
        Assert.Empty(Grave(Dumbbell(6), spec));
    }

    [Fact]
    public void A_counter_deeper_than_wide_is_bridged()
    {
        Region Ring(double hole) => Region.FromLoops([Loop.Circle(new(0, 0), 60), Loop.Circle(new(0, 0), hole)]);

        Assert.Equal(["counter-deep"], Grave(Ring(8), Male(18)));
        Assert.Empty(Grave(Ring(20), Male(18)));
    }

    [Theory]
    [InlineData(40, "taller-than-travel")]
    [InlineData(60, null)]
    public void A_buck_taller_than_the_former_lifts(double travel, string? told) =>
        Assert.Equal(told is null ? [] : [told], Grave(Disc(120), Male(45) with { Former = new() { Travel = travel } }));

    [Theory]
    [InlineData(100, "frame-too-small")]
    [InlineData(170, "frame-tight")]
    [InlineData(260, null)]
    public void A_buck_that_does_not_fit_its_frame(double frame, string? told) =>
        Assert.Equal(told is null ? []
            : [told], Grave(Disc(120), Male(20) with { Former = new() { Opening = new(frame, frame) } }));

    [Theory]
    [InlineData(1, "gauge-too-thin")]
    [InlineData(3, null)]
    public void A_gauge_too_thin_for_the_wall_asked_for(double gauge, string? told) =>
        Assert.Equal(told is null ? []
            : [told], Grave(Disc(120), Male(20, gauge: gauge) with { Sheet = new() { Gauge = gauge, MinWall = 0.95 } }));

    [Theory]
    [InlineData(0.5, "corner-sharp", true)]
    [InlineData(4, "corner-sharp", false)]
    public void Corners_sharper_than_the_sheet_are_noted(double radius, string id, bool told)
    {
        var plate = new BuckGen.Geometry.Offsetting.PolygonOffsetter(0.001)
            .Offset(Rectangle(60, 40), radius, BuckGen.Geometry.Offsetting.CornerJoin.Round);

        Assert.Equal(told, Formed.Design(plate, Male(6)).Findings.Any(f => f.Id == id));
    }

    [Theory]
    [InlineData(12, true)]
    [InlineData(1, false)]
    public void Steps_wider_than_half_the_sheet_are_noted(double thickness, bool told) =>
        Assert.Equal(told,
            Formed.Design(Disc(120), Male(24) with { Stock = [new("MDF", thickness, 2000, 2000)] }).Findings
                .Any(f => f.Id == "steps-telegraph"));

    [Theory]
    [InlineData("birch plywood", 0.5, true)]
    [InlineData("birch plywood", 2, false)]
    [InlineData("MDF", 0.5, false)]
    public void Grain_under_a_thin_sheet_is_noted(string stock, double gauge, bool told) =>
        Assert.Equal(told, Formed.Design(Disc(120), Male(24, gauge: gauge) with { Stock = [new(stock, 6, 2000, 2000)] }).Findings
            .Any(f => f.Id == "grain-telegraphs"));

    [Theory]
    [InlineData("PVC foam board 5", Machine.Laser, "laser-never")]
    [InlineData("white vinyl", Machine.Laser, "laser-never")]
    [InlineData("PC 3", Machine.Laser, "laser-never")]
    [InlineData("mystery panel", Machine.Laser, "laser-unknown")]
    [InlineData("PVC foam board 5", Machine.Router, null)]
    [InlineData("MDF 12", Machine.Laser, null)]
    [InlineData("6 mm", Machine.Laser, null)]
    public void What_a_laser_must_not_cut_is_an_error(string stock, Machine machine, string? told)
    {
        var design = Formed.Design(Disc(120), Male(24) with { Stock = [new(stock, 6, 2000, 2000)] });

        var laser = CutPlan.Create(design, new(machine)).Findings.Where(f => f.Id.StartsWith("laser", StringComparison.Ordinal))
            .ToList();

        Assert.Equal(told is null ? [] : [told], laser.Select(f => f.Id));
        Assert.All(laser, f => Assert.Equal(Severity.Error, f.Severity));
    }

    [Fact]
    public void A_finding_can_be_silenced_with_a_reason_that_shows()
    {
        var spec = Male(90,
            draft: 0) with
        {
            Checks = new()
            {
                Silenced = [new("draft-locks", "a flexible rubber buck"),
                new("web-between", "none here")]
            }
        };

        var findings = Formed.Design(Rectangle(100, 80), spec).Findings;

        Assert.Contains(findings, f => f is { Id: "draft-locks", Severity: Severity.Note, Silenced: "a flexible rubber buck" });
        Assert.Contains(findings, f => f.Id == "silence-idle" && f.Message.Contains("web-between", StringComparison.Ordinal));
    }

    /// <summary>
    /// The catalog's own figures for each plastic, with their sources, come before those for plastics in general.
    /// </summary>
    [Theory]
    [InlineData("petg", 4, "draft-low", 5, "Eastman")]
    [InlineData("petg", 5, null, 0, "")]
    [InlineData("hips", 2.5, null, 0, "")]
    [InlineData("hips", 1.5, "draft-low", 2, "SPE")]
    [InlineData("hdpe", 3.5, "draft-low", 4, "ThermoPro")]
    public void The_plastic_sets_the_draft(string plastic, double draft, string? told, double limit, string source)
    {
        var spec = Male(20, draft) with { Sheet = new() { Plastic = Catalog.BuiltIn.FindPlastic(plastic) } };

        Assert.Equal(told is null ? [] : [told], Grave(Disc(120), spec));
        if (told is null) return;
        var finding = Formed.Design(Disc(120), spec).Findings.Single(f => f.Id == told);
        Assert.Equal(limit, finding.Limit);
        Assert.Contains(source, finding.Source);
        Assert.Contains("published figures range from 1.5 to 6", finding.Message);
    }

    [Theory]
    [InlineData(null, 60, null)]       // 0.6 of the width: under 0.75 for plastics in general
    [InlineData("abs", 60, "too-deep")] // 0.5 for ABS
    [InlineData("abs", 45, null)]
    public void The_plastic_sets_the_depth_of_a_cavity(string? plastic, double depth, string? told) =>
        Assert.Equal(told is not null,
            Formed.Design(Disc(100),
                Female(depth, 3,
                    4) with
                {
                    Sheet = new()
                    {
                        Gauge = 4,
                        Plastic = plastic is null ? null
                        : Catalog.BuiltIn.FindPlastic(plastic)
                    }
                })
            .Findings.Any(f => f.Id == "too-deep"));

    [Theory]
    [InlineData(null, true)]
    [InlineData(8.0, false)]
    public void A_plug_reaches_deeper(double? plugGap, bool told) =>
        Assert.Equal(told,
            Formed.Design(Disc(100), Female(110, 3, 6) with { Former = new() { PlugGap = plugGap } }).Findings
                .Any(f => f.Id == "too-deep"));

    [Theory]
    [InlineData(2, true)]
    [InlineData(25, false)]
    public void A_plug_that_takes_all_the_sheet_is_reported(double plugGap, bool told) =>
        Assert.Equal(told,
            Formed.Design(Rectangle(150, 100), Female(60, 0, 1) with { Former = new() { PlugGap = plugGap } }).Findings
                .Any(f => f.Id == "plug-starves-walls"));

    [Theory]
    [InlineData("birch-ply-6.5", "laser-ask", Severity.Warning)]
    [InlineData("tooling-board-25", "laser-never", Severity.Error)]
    [InlineData("mdf-6", null, Severity.Note)]
    public void The_catalog_says_what_a_laser_may_cut(string stock, string? told, Severity severity)
    {
        var design = Formed.Design(Disc(120), Male(24) with { Stock = [Stock.FromCatalog(Catalog.BuiltIn.FindStock(stock)!)] });

        var laser = CutPlan.Create(design, new()).Findings.Where(f => f.Id.StartsWith("laser", StringComparison.Ordinal))
            .ToList();

        Assert.Equal(told is null ? [] : [(told, severity)], laser.Select(f => (f.Id, f.Severity)));
    }

    [Fact]
    public void Thickness_that_was_not_measured_is_reported()
    {
        var assumed = Stock.FromCatalog(Catalog.BuiltIn.FindStock("birch-ply-4")!);

        Assert.Contains(Formed.Design(Disc(120), Male(38) with { Stock = [assumed] }).Findings,
            f => f is { Id: "stock-not-measured", Severity: Severity.Warning });
        Assert.DoesNotContain(
            Formed.Design(Disc(120), Male(38) with { Stock = [assumed with { ThicknessIsAssumed = false }] }).Findings,
            f => f.Id == "stock-not-measured");
    }

    /// <summary>Each limit of the checks moves its finding.</summary>
    [Fact]
    public void Every_limit_can_be_set()
    {
        bool Told(string id, BuckSpec spec, CheckSpec checks, Region? outline = null) =>
            Formed.Design(outline ?? Rectangle(60, 40), spec with { Checks = checks }).Findings.Any(f => f.Id == id);
        void Moves(string id, BuckSpec spec, CheckSpec strict, CheckSpec slack, Region? outline = null)
        {
            Assert.True(Told(id, spec, strict, outline), id);
            Assert.False(Told(id, spec, slack, outline), id);
        }

        var framed = Male(10) with { Former = new() { Opening = new(160, 160) } };
        Moves("may-tear", Male(20), new() { MaxDraw = 1.01 }, new() { MaxDraw = 3 });
        Moves("may-tear", Male(20), new() { MinMeanWall = 0.99 }, new() { MinMeanWall = 0.1 });
        Moves("corner-sharp", Male(6), new(), new() { MinCorner = 0 });
        Moves("steps-telegraph", Male(6) with { Stock = [new("MDF", 6, 2000, 2000)] }, new() { MaxStep = 0.1 },
            new() { MaxStep = 2 });
        Moves("grain-telegraphs", Male(6) with { Stock = [new("ply", 6, 2000, 2000)] }, new() { GrainGauge = 2 },
            new() { GrainGauge = 0.5 });
        Moves("frame-tight", framed, new() { MinFrameGap = 6 }, new() { MinFrameGap = 0.5 });
        Moves("panel-flange-narrow", Male(6) with { Panel = new(Formed.Mdf6) { Flange = 8 } }, new() { MinGlueLand = 9 },
            new() { MinGlueLand = 2 });
        Moves("panel-bridge-thin", Male(6) with { Panel = new(Formed.Mdf6) }, new() { MinPanelBridge = 3 },
            new() { MinPanelBridge = 0.5 },
            Region.FromLoops([Loop.Rectangle(new(0, 0, 60, 60)), Loop.Rectangle(new(74, 0, 134, 60))]));
        Moves("too-deep", Female(60, 3, 4), new() { MaxDepthFemale = 0.5 }, new() { MaxDepthFemale = 2 }, Disc(100));
        Moves("too-deep", Female(60, 3, 4) with { Former = new() { PlugGap = 5 } }, new() { MaxDepthPlugged = 0.5 },
            new() { MaxDepthPlugged = 2 }, Disc(100));
        Moves("too-deep", Male(60), new() { MaxDepthMale = 0.4 }, new() { MaxDepthMale = 2 }, Disc(100));
    }

    [Fact]
    public void Limits_are_the_makers()
    {
        var spec = Male(20, draft: 2);

        Assert.Equal(["draft-low"], Grave(Disc(80), spec));
        Assert.Empty(Grave(Disc(80), spec with { Checks = new() { MinDraftMale = 1.5 } }));
    }

    [Fact]
    public void Every_finding_of_a_check_has_a_source_a_value_and_a_limit()
    {
        BuckDesign[] designs =
            [Formed.Design(Rectangle(100, 80), Male(90, draft: 0)), Formed.Design(Dumbbell(1.5), Male(6)),
                Formed.Design(Rectangle(100, 80), Female(90, 0, 0.5))];

        Assert.All(designs.SelectMany(d => d.Findings)
            .Where(f => f.Id is not ("dowels-no-room" or "label-no-room" or "dowels-turnable" or "cavity-open")), f =>
            Assert.True(f is { Source.Length: > 0, Remedy.Length: > 0, Value: not null, Limit: not null }, f.Id));
    }

    private static BuckSpec Male(double depth, double draft = 5, double gauge = 1) =>
        Formed.Spec(BuckKind.Male, depth, draft, gauge);

    private static BuckSpec Female(double depth, double draft, double gauge) => Formed.Spec(BuckKind.Female, depth, draft, gauge);

    private static Region Rectangle(double width, double height) => Formed.Rectangle(width, height);

    private static Region Disc(double diameter) => Formed.Disc(diameter);

    /// <summary>Two discs of 40 mm joined by a bar.</summary>
    private static Region Dumbbell(double neck) =>
        OutlineReader.Read(System.Text.Encoding.UTF8.GetBytes(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" height=\"40mm\" viewBox=\"0 0 100 40\">"
            + "<path d=\"M0 20a20 20 0 1 0 40 0a20 20 0 1 0 -40 0Z M60 20a20 20 0 1 0 40 0a20 20 0 1 0 -40 0Z M30 "
            + FormattableString.Invariant($"{20 + neck / 2}H70V{20 - neck / 2}H30Z\"/></svg>")), "dumbbell.svg").Region;

    /// <summary>Warnings and errors about the design itself, in alphabetical order.</summary>
    private static string[] Grave(Region outline, BuckSpec spec) => [.. Formed.Design(outline, spec).Findings
        .Where(f => f.Severity != Severity.Note && !f.Id.StartsWith("dowels", StringComparison.Ordinal)).Select(f => f.Id)
        .Distinct().Order(StringComparer.Ordinal)];
}
