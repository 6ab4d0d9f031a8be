using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Dxf;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Settings;
using BuckGen.Tests.Design.Forming;
using BuckGen.Tests.Design.Venting;
using BuckGen.Tests.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Design.Trimming;

/// <summary>The panel's opening leaves the stated room round the part, and what can go wrong with it is reported.</summary>
[Trait("Tier", "slow")]
public class PanelTests
{
    private const double FitTolerance = 0.02;

    public static TheoryData<string, BuckKind, double, double> Fits => new()
    {
        { "svg/h_mm_viewbox.svg", BuckKind.Male, 0.5, 0 }, { "dxf/ez_keyplate_r2000.dxf", BuckKind.Male, 0.3, 0.2 },
        { "dxf/ez_puzzle_bulge_gt1.dxf", BuckKind.Male, 0.5, 0.15 }, { "svg/h_nested_svg.svg", BuckKind.Female, 0.5, 0.2 },
        { "dxf/ez_ellipses_r2000.dxf", BuckKind.Female, -0.2, 0 },
    };

    /// <summary>
    /// The panel cut by the machine, read back from its DXF, against the part's outline made by the geometry library alone: the
    /// room between them is the fit everywhere, kerf included.
    /// </summary>
    [Theory]
    [MemberData(nameof(Fits))]
    public void The_room_round_the_part_is_the_fit_everywhere(string file, BuckKind kind, double fit, double kerf)
    {
        var read = Corpus.File(file);
        var outline = OutlineReader.Read(read.Content, file, OutlineOptions.Default with { Units = read.Unit });
        var spec = Formed.Spec(kind, 12, 3) with { Stock = [Formed.Mdf6], Panel = new(Formed.Mdf6) { Fit = fit } };
        var design = BuckDesign.Create(outline, spec, cancellation: TestContext.Current.CancellationToken);

        var cut = Opening(design, kerf);

        var wall = kind == BuckKind.Male ? design.Blank!.MeanThickness / Math.Cos(3 * Math.PI / 180) : 0;
        // To size at the face: the flange is at the foot of a male buck, 12 mm lower, and at the rim of a cavity.
        var part = new PolygonOffsetter(0.002)
            .Offset(outline.Region, (kind == BuckKind.Male ? 12 * Math.Tan(3 * Math.PI / 180) : 0) + wall, CornerJoin.Round);
        var largest = part.Islands.MaxBy(i => i.Area)!.Outer;
        var opening = cut.MaxBy(l => Math.Abs(l.SignedArea))!;
        // The kerf takes half its width on the panel's side of the cut.
        var edge = new PolygonOffsetter(0.002).Offset(Region.FromLoops([opening]), kerf / 2, CornerJoin.Round);
        Assert.All(edge.Segments.SelectMany(s => new[] { s.PointAt(0.25), s.PointAt(0.5), s.PointAt(0.75) }), p =>
        {
            var room = largest.DistanceTo(p) * (largest.Contains(p) ? -1 : 1);
            Assert.InRange(room, fit - FitTolerance, fit + FitTolerance);
        });
    }

    [Fact]
    public void Without_a_fit_size_and_warmth_decide()
    {
        // A part of this length is formed within 1.2 mm to 300 mm, 0.025 mm more every 25 mm, and grows 90e-6 per degree over 30
        // degrees: half on either side.
        Assert.Equal((1.2 + (100 + 2 * PartReach) * 90e-6 * 30) / 2, Design(Formed.Rectangle(100, 60)).Panel!.Fit, 2e-3);
        var long700 = 700 + 2 * PartReach;
        Assert.Equal((1.2 + (long700 - 300) / 25 * 0.025 + long700 * 90e-6 * 30) / 2,
            Design(Formed.Rectangle(700, 100)).Panel!.Fit, 2e-3);
    }

    /// <summary>Between 0.5 and 1 mm a side below 300 mm (common practice, no source).</summary>
    [Theory]
    [InlineData(60)]
    [InlineData(150)]
    [InlineData(280)]
    public void The_computed_fit_is_what_the_trade_leaves(double width) =>
        Assert.InRange(Design(Formed.Rectangle(width, 50)).Panel!.Fit, 0.5, 1);

    [Fact]
    public void A_panel_that_grows_along_needs_less_room()
    {
        var acrylic = Catalog.BuiltIn.FindPlastic("pmma");
        double Fit(Stock stock) =>
            Formed.Design(Formed.Rectangle(280, 100),
                Spec(p => p with { Fit = null, Stock = stock }) with { Sheet = new() { Plastic = acrylic } }).Panel!.Fit;

        var (wood, same) = (Fit(Formed.Mdf6), Fit(Stock.FromCatalog(Catalog.BuiltIn.FindStock("acrylic-5")!)));
        // At most 90 millionths against none, and against at least 50.
        Assert.Equal((280 + 2 * PartReach) * 50e-6 * 30 / 2, wood - same, 2e-3);
    }

    [Fact]
    public void A_drawn_edge_is_cut_as_drawn_with_its_holes()
    {
        var drawn = Region
            .FromLoops([Loop.FromCorners([(new(-40, -50), 0), (new(150, -50), 0.3), (new(150, 100), 0), (new(-60, 100), 0)]),
                Loop.Circle(new(-20, -30), 3)]);

        var panel = Design(Formed.Rectangle(100, 60), p => p with { Edge = PanelEdge.Drawn, Outline = drawn }).Panel!;

        var wood = panel.Panel.Region;
        Assert.Equal(2, wood.HoleCount);
        Assert.Equal(drawn.Area - panel.Opening.Area, wood.Area, 1e-6);
        Assert.Equal(drawn.Bounds, wood.Bounds);
        Assert.DoesNotContain(panel.Findings, f => f.Severity == Severity.Error);
    }

    [Theory]
    [InlineData(80, 0, 0)]     // the edge runs through the opening
    [InlineData(200, 50, 30)]  // a hole lies in the opening
    [InlineData(200, 102, 30)] // a hole lies across its edge
    public void A_drawn_edge_that_the_opening_reaches_over_is_an_error(double right, double x, double y)
    {
        var drawn = Region.FromLoops([Loop.Rectangle(new(-60, -60, right, 120)), Loop.Circle(new(x, y), 3)]);

        var design = Design(Formed.Rectangle(100, 60), p => p with { Edge = PanelEdge.Drawn, Outline = drawn });

        var finding = design.Findings.Single(f => f.Id == "panel-edge-cut");
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.True(design.Panel!.Opening.Contains(finding.Place!.Value));
        Assert.True(!drawn.Contains(finding.Place.Value));
    }

    [Fact]
    public void A_drawn_edge_needs_its_drawing_and_a_drawing_its_edge()
    {
        Assert.Contains("no outline is given",
            Assert.Throws<SpecException>(() =>
                Design(Formed.Rectangle(100, 60), p => p with { Edge = PanelEdge.Drawn })).Message);
        Assert.Contains("not set to drawn",
            Assert.Throws<SpecException>(() =>
                Design(Formed.Rectangle(100, 60), p => p with { Outline = Formed.Disc(300) })).Message);
    }

    [Theory]
    [InlineData(PanelEdge.Rectangle, 0)]
    [InlineData(PanelEdge.Rectangle, 8)]
    [InlineData(PanelEdge.Offset, 0)]
    public void The_margin_is_there_all_round(PanelEdge edge, double radius)
    {
        var design = Design(Formed.Rectangle(100, 60), p => p with { Edge = edge, Margin = 25, CornerRadius = radius });

        var (panel, opening) = (design.Panel!.Panel.Parts[0].Shape, design.Panel.Opening.Bounds);
        Assert.Equal(opening.Width + 50, panel.Outer.Bounds.Width, 1e-4);
        Assert.True(panel.Holes.Single().Segments.All(s => panel.Outer.DistanceTo(s.Start) > 24));
        Assert.Equal(edge == PanelEdge.Rectangle && radius == 0 ? 0 : 4, panel.Outer.Segments.Count(s => s.IsArc));
    }

    // The panel is about 152 x 112 mm. Such corners were left sharp, without a word.
    [Fact]
    public void Corners_that_the_panel_is_too_small_for_are_refused()
    {
        var refusal = Assert.Throws<SpecException>(() =>
            Design(Formed.Rectangle(100, 60), p => p with { Edge = PanelEdge.Rectangle, Margin = 25, CornerRadius = 60 }));

        Assert.Contains("The corner radius of the panel is 60 mm", refusal.Message);
    }

    [Fact]
    public void Several_islands_stay_where_they_are_drawn()
    {
        var design = Formed.Design(Vented.Sign(), Spec(p => p));

        Assert.Equal(design.Panel!.Panel.Region.HoleCount, design.Panel.Opening.Islands.Length);
        Assert.Equal(design.Footprint.Bounds.Centre.X, design.Panel.Opening.Bounds.Centre.X, 1e-3);
    }

    [Fact]
    public void Pieces_inside_counters_are_cut_apart_and_reported()
    {
        var ring = Region.FromLoops([Loop.Circle(new(0, 0), 50), Loop.Circle(new(0, 0), 30), Loop.Circle(new(0, 0), 8)]);

        var design = Formed.Design(ring, Spec(p => p));

        Assert.Equal(1, design.Panel!.Panel.Region.HoleCount);
        // The piece in the counter has an opening of its own for the island that stands in it.
        var inlay = Assert.Single(design.Panel.Inlays!.Parts).Shape;
        Assert.Equal(30 - 12 * Math.Tan(3 * Math.PI / 180) - WallOf(design) - design.Panel.Fit,
            inlay.Outer.Bounds.Width / 2, 1e-3);
        Assert.Single(inlay.Holes);
        Assert.Contains(design.Findings, f => f.Id == "panel-inlays");
    }

    [Fact]
    public void A_piece_too_small_for_its_lettering_is_reported()
    {
        var ring = Region.FromLoops([Loop.Circle(new(0, 0), 30), Loop.Circle(new(0, 0), 6)]);

        var design = Formed.Design(ring, Spec(p => p));

        Assert.Null(design.Panel!.Inlays!.Parts.Single().Label);
        Assert.Contains(design.Findings, f => f.Id == "label-no-room" && f.Message.Contains("INLAY1", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(3, "panel-flange-narrow", BuckGen.Findings.Severity.Warning)]
    [InlineData(0.4, "panel-flange-narrow", BuckGen.Findings.Severity.Error)]
    public void A_flange_too_narrow_to_hold_is_reported(double flange, string id, BuckGen.Findings.Severity severity) =>
        Assert.Contains(Design(Formed.Rectangle(100, 60), p => p with { Flange = flange, Fit = 0.5 }).Findings, f => f.Id == id
            && f.Severity == severity);

    [Fact]
    public void Corners_that_the_bit_can_not_cut_are_reported_with_their_place()
    {
        // Round the part the corners have the radius of draft, wall and fit together: about 2 mm.
        var tight = Design(Formed.Rectangle(100, 60), p => p with { Bit = 6 }).Findings.Where(f => f.Id == "panel-corner-tight")
            .ToList();

        Assert.Equal(4, tight.Count);
        Assert.All(tight, f => Assert.True(f is { Place: not null, Limit: 3, Value: > 1 and < 3 }));
        Assert.DoesNotContain(Design(Formed.Rectangle(100, 60), p => p with { Bit = 2 }).Findings,
            f => f.Id == "panel-corner-tight");
    }

    [Theory]
    [InlineData(8, true)]
    [InlineData(20, false)]
    public void A_thin_bridge_between_openings_is_reported(double gap, bool told)
    {
        var pair = Region.FromLoops([Loop.Rectangle(new(0, 0, 40, 40)), Loop.Rectangle(new(40 + gap, 0, 80 + gap, 40))]);

        Assert.Equal(told, Formed.Design(pair, Spec(p => p)).Findings.Any(f => f.Id == "panel-bridge-thin"));
    }

    private const double PartReach = 1.55;

    private static BuckSpec Spec(Func<PanelSpec, PanelSpec> change) =>
        Formed.Spec(BuckKind.Male, 12, 3) with { Stock = [Formed.Mdf6], Panel = change(new(Formed.Mdf6)) };

    private static BuckDesign Design(Region outline, Func<PanelSpec, PanelSpec>? change = null) =>
        Formed.Design(outline, Spec(change ?? (p => p)));

    private static double WallOf(BuckDesign design) => design.Blank!.MeanThickness / Math.Cos(design.Spec.Draft * Math.PI / 180);

    /// <summary>The holes of the panel in the cut file, with the kerf allowed for, read back from DXF.</summary>
    private static Loop[] Opening(BuckDesign design, double kerf)
    {
        var plan = CutPlan.Create(design with { Layers = [] }, new(Kerf: kerf), CutScope.Accessories);
        var part = plan.Boards.SelectMany(s => s.Placements).Single(p => p.Part.Name == "PANEL1").Part;
        var bytes = DxfCutFile.Write(new("panel", part.Paths, part.Bounds), DxfVersion.R12);
        var drawing =
            OutlineReader.Read([.. bytes], "panel.dxf", OutlineOptions.Default with { Layers = [CutLayer.CutInner.Name()] });
        return [.. drawing.Region.Loops];
    }
}
