using BuckGen.Bucks;
using BuckGen.CutFiles;
using BuckGen.CutPaths;
using BuckGen.Designs;
using BuckGen.Dxf;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Outlines;
using BuckGen.Sheets;
using BuckGen.Tests.Forming;
using BuckGen.Tests.Outlines;
using BuckGen.Tests.Venting;
using Xunit;

namespace BuckGen.Tests.Trimming;

/// <summary>The panel's opening leaves the stated room round the part, and what can go wrong with it is told.</summary>
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
    /// The panel cut by the machine, read back from its DXF, against the part's outline made by the geometry library alone: the room
    /// between them is the fit everywhere, kerf included.
    /// </summary>
    [Theory]
    [MemberData(nameof(Fits))]
    public void The_room_round_the_part_is_the_fit_everywhere(string file, BuckKind kind, double fit, double kerf)
    {
        var read = Corpus.File(file);
        var outline = OutlineReader.Read(read.Content, file, OutlineOptions.Default with { Units = read.Unit });
        var spec = Formed.Spec(kind, 12, 3) with { Stock = [Formed.Mdf6], Panel = new(Formed.Mdf6) { Fit = fit } };
        var design = BuckDesign.Create(outline, spec, TestContext.Current.CancellationToken);

        var cut = Opening(design, kerf);

        var wall = kind == BuckKind.Male ? design.Blank!.MeanThickness / Math.Cos(3 * Math.PI / 180) : 0;
        // To size at the face: the flange is at the foot of a male buck, 12 mm lower, and at the rim of a cavity.
        var part = new PolygonOffsetter(0.002).Offset(outline.Region, (kind == BuckKind.Male ? 12 * Math.Tan(3 * Math.PI / 180) : 0) + wall, CornerJoin.Round);
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
        Assert.Equal(0.5, Design(Formed.Rectangle(100, 60)).Panel!.Fit);
        // 700 mm growing 90e-6 per degree over 30 degrees: half on either side.
        Assert.Equal((700 + 2 * PartReach) * 90e-6 * 30 / 2, Design(Formed.Rectangle(700, 100)).Panel!.Fit, 1e-3);
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

    [Fact]
    public void Several_islands_stay_where_they_are_drawn()
    {
        var design = Formed.Design(Vented.Sign(), Spec(p => p));

        Assert.Equal(design.Panel!.Panel.Region.HoleCount, design.Panel.Opening.Islands.Length);
        Assert.Equal(design.Footprint.Bounds.Centre.X, design.Panel.Opening.Bounds.Centre.X, 1e-3);
    }

    [Fact]
    public void Pieces_inside_counters_are_cut_apart_and_told()
    {
        var ring = Region.FromLoops([Loop.Circle(new(0, 0), 50), Loop.Circle(new(0, 0), 30), Loop.Circle(new(0, 0), 8)]);

        var design = Formed.Design(ring, Spec(p => p));

        Assert.Equal(1, design.Panel!.Panel.Region.HoleCount);
        // The piece in the counter has an opening of its own for the island that stands in it.
        var inlay = Assert.Single(design.Panel.Inlays!.Parts).Shape;
        Assert.Equal(30 - 12 * Math.Tan(3 * Math.PI / 180) - WallOf(design) - 0.5, inlay.Outer.Bounds.Width / 2, 1e-3);
        Assert.Single(inlay.Holes);
        Assert.Contains(design.Findings, f => f.Id == "panel-inlays");
    }

    [Fact]
    public void A_piece_too_small_for_its_lettering_is_told_of()
    {
        var ring = Region.FromLoops([Loop.Circle(new(0, 0), 30), Loop.Circle(new(0, 0), 6)]);

        var design = Formed.Design(ring, Spec(p => p));

        Assert.Null(design.Panel!.Inlays!.Parts.Single().Label);
        Assert.Contains(design.Findings, f => f.Id == "label-no-room" && f.Message.Contains("INLAY1", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(3, "panel-flange-narrow", BuckGen.Findings.Severity.Warning)]
    [InlineData(0.4, "panel-flange-narrow", BuckGen.Findings.Severity.Error)]
    public void A_flange_too_narrow_to_hold_is_told(double flange, string id, BuckGen.Findings.Severity severity) =>
        Assert.Contains(Design(Formed.Rectangle(100, 60), p => p with { Flange = flange, Fit = 0.5 }).Findings, f => f.Id == id && f.Severity == severity);

    [Fact]
    public void Corners_that_the_bit_can_not_cut_are_told_with_their_place()
    {
        // Round the part the corners have the radius of draft, wall and fit together: about 2 mm.
        var tight = Design(Formed.Rectangle(100, 60), p => p with { Bit = 6 }).Findings.Where(f => f.Id == "panel-corner-tight").ToList();

        Assert.Equal(4, tight.Count);
        Assert.All(tight, f => Assert.True(f is { Place: not null, Limit: 3, Value: > 1 and < 3 }));
        Assert.DoesNotContain(Design(Formed.Rectangle(100, 60), p => p with { Bit = 2 }).Findings, f => f.Id == "panel-corner-tight");
    }

    [Theory]
    [InlineData(8, true)]
    [InlineData(20, false)]
    public void A_thin_bridge_between_openings_is_told(double gap, bool told)
    {
        var pair = Region.FromLoops([Loop.Rectangle(new(0, 0, 40, 40)), Loop.Rectangle(new(40 + gap, 0, 80 + gap, 40))]);

        Assert.Equal(told, Formed.Design(pair, Spec(p => p)).Findings.Any(f => f.Id == "panel-bridge-thin"));
    }

    private const double PartReach = 1.55;

    private static BuckSpec Spec(Func<PanelSpec, PanelSpec> change) =>
        Formed.Spec(BuckKind.Male, 12, 3) with { Stock = [Formed.Mdf6], Panel = change(new(Formed.Mdf6)) };

    private static BuckDesign Design(Region outline, Func<PanelSpec, PanelSpec>? change = null) => Formed.Design(outline, Spec(change ?? (p => p)));

    private static double WallOf(BuckDesign design) => design.Blank!.MeanThickness / Math.Cos(design.Spec.Draft * Math.PI / 180);

    /// <summary>The holes of the panel in the cut file, with the kerf allowed for, read back from DXF.</summary>
    private static Loop[] Opening(BuckDesign design, double kerf)
    {
        var plan = CutPlan.Create(design with { Layers = [] }, new(Kerf: kerf), CutScope.Accessories);
        var part = plan.Sheets.SelectMany(s => s.Placements).Single(p => p.Part.Name == "PANEL1").Part;
        var bytes = DxfCutFile.Write(new("panel", part.Paths, part.Bounds), DxfVersion.R12);
        var drawing = OutlineReader.Read([.. bytes], "panel.dxf", OutlineOptions.Default with { Layers = [CutLayer.CutInner.Name()] });
        return [.. drawing.Region.Loops];
    }
}
