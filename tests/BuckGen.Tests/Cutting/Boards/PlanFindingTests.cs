using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Settings;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Cutting.Boards;

/// <summary>What a plan tells names part, value, limit and remedy.</summary>
public class PlanFindingTests
{
    private static readonly BuckSpec OneLayer = PlainBuck.Spec with { Depth = 12, Draft = 0 };

    [Theory]
    [InlineData(620, 100)]
    [InlineData(100, 620)]
    public void A_part_that_is_too_large(double width, double height)
    {
        var finding = Assert.Single(Cuts.Create(Shapes.Rectangle(width, height), buck: OneLayer).Findings);
        Assert.Equal(
            FormattableString.Invariant(
                $"Part 1A needs {width + 0.2:F1} x {height + 0.2:F1} mm; a board of MDF 12 is 600 x 400 mm with 5 mm of ")
                + "margin, so the part does not fit on a board.",
            finding.Message);
        Assert.Equal("Use a larger board, or make the outline or the base margin smaller.", finding.Remedy);
        Assert.Equal(620.2, finding.Value!.Value, 1e-6);
        Assert.Equal(590, finding.Limit);
        Assert.Equal(0, finding.Place!.Value.DistanceTo(new(width / 2, height / 2)), 1e-6);
    }

    [Fact]
    public void Parts_that_are_too_large_are_all_named_in_one_finding()
    {
        var rings = Region.FromLoops(Enumerable.Range(0, 25).Select(i => Loop.Circle(new(i * 70, 0), 30)));
        var finding =
            Assert.Single(Cuts.Create(rings, buck: OneLayer with { Stock = [new("MDF 12", 12, 50, 50)] }).Findings,
                f => f.Id == "part-larger-than-stock");

        var names = finding.Message.Split("In all, 25 parts fit on no board: ")[1].TrimEnd('.').Split(", ");
        Assert.Equal(25, names.Distinct().Count());
        Assert.All(names, n => Assert.StartsWith("1", n, StringComparison.Ordinal));
    }

    [Fact]
    public void A_part_that_the_bed_does_not_hold()
    {
        var findings = Cuts.Create(Shapes.Rectangle(300, 200), new() { Bed = new(150, 120) }, OneLayer).Findings;
        var large = findings.Single(f => f.Id == "part-larger-than-stock");
        Assert.Contains("; what the machine's bed holds of MDF 12 is 150 x 120 mm with", large.Message, StringComparison.Ordinal);
        Assert.Equal("Cut it on a larger machine, or make the outline or the base margin smaller.", large.Remedy);
        Assert.Equal(140, large.Limit);

        var cutUp = findings.Single(f => f.Id == "board-larger-than-bed");
        Assert.Equal(Severity.Note, cutUp.Severity);
        Assert.Equal("A board of MDF 12 is 600 x 400 mm, the machine's bed 150 x 120 mm.", cutUp.Message);
        Assert.Equal("Cut the board into pieces of 150 x 120 mm first.", cutUp.Remedy);
        Assert.Equal((600, 150), (cutUp.Value, cutUp.Limit));
    }

    [Fact]
    public void A_hole_that_the_kerf_fills()
    {
        var region = Region.FromLoops([Loop.Rectangle(new(0, 0, 60, 60)), Loop.Circle(new(20, 40), 0.2)]);
        var finding = Cuts.Create(region, new(Kerf: 0.5), OneLayer).Findings.Single(f => f.Id == "narrower-than-kerf");
        Assert.Equal("Part 1A has a hole or a slot narrower than the kerf of 0.5 mm; it can't be cut to size.", finding.Message);
        Assert.Equal("Make it wider, or drill or file it by hand.", finding.Remedy);
        Assert.Equal((Severity.Warning, 0.5), (finding.Severity, finding.Limit));
        Assert.Equal(0, finding.Place!.Value.DistanceTo(new(20, 40)), 0.5);
    }

    /// <summary>A slot that opens to the edge is no hole: it is lost only where the cut cannot follow it.</summary>
    [Theory]
    [InlineData(0.3, true)]
    [InlineData(0.8, false)]
    public void A_slot_that_the_kerf_fills(double width, bool lost)
    {
        var comb = Shapes.Polygon((0, 0), (60, 0), (60, 40), (30 + width, 40), (30 + width, 10), (30, 10), (30, 40), (0, 40));
        var finding = Cuts.Create(comb, new(Kerf: 0.5), OneLayer).Findings.SingleOrDefault(f => f.Id == "narrower-than-kerf");
        Assert.Equal(lost, finding is not null);
        if (finding is not null) Assert.InRange(finding.Place!.Value.X, 29.9, 30 + width + 0.1);
        Assert.Empty(Cuts.Create(comb, new(Machine.Router, Kerf: 0.5), OneLayer).Findings);
    }

    [Fact]
    public void Vents_too_narrow_for_the_laser_are_marked_with_crosses()
    {
        var vents = Vented(new());
        var finding = vents.Findings.Single(f => f.Id == "vents-drill-by-hand");
        var layer = vents.Design.Layers.Single(l => l.Number == 1);
        var holes = layer.Parts[0].Vents;
        Assert.Equal(
            FormattableString.Invariant(
                $"{holes.Length} holes of {holes[0].Diameter:0.##} mm in layer 1 are narrower than the machine can cut ")
                + "through 12 mm (2 mm); they are marked with crosses.",
            finding.Message);
        Assert.Equal("Drill them by the drill map, or use a thinner stock for the surface of the base.", finding.Remedy);
        Assert.Equal((Severity.Note, layer.Top, holes[0].Diameter, 2, "common practice, no source"),
            (finding.Severity, finding.Height, finding.Value, finding.Limit, finding.Source));

        var part = vents.Boards.SelectMany(s => s.Placements).Single(p => p.Part.Name == "1A").Part;
        Assert.Empty(part.Loops(CutLayer.Vent));
        // Two arms of 2 mm through every centre, and nothing else of that length is marked.
        foreach (var hole in holes)
            Assert.Equal(
                [(0, 2), (2, 0)],
                part.Paths.Where(p => p is { Layer: CutLayer.Mark, Closed: false, Segments: [{ IsArc: false } arm] }
                    && arm.PointAt(0.5).DistanceTo(hole.Centre) < 1e-9)
                    .Select(p => p.Segments[0].Bounds).Select(b => (Math.Round(b.Width, 9), Math.Round(b.Height, 9))).Order());
    }

    [Fact]
    public void Vents_as_wide_as_the_laser_makes_are_cut_smaller_by_the_kerf()
    {
        var plan = Vented(new() { Diameter = 2 });
        Assert.DoesNotContain(plan.Findings, f => f.Id == "vents-drill-by-hand");
        var part = plan.Boards.SelectMany(s => s.Placements).Single(p => p.Part.Name == "1A").Part;
        var vents = part.Loops(CutLayer.Vent);
        Assert.Equal(plan.Design.Layers[0].Parts[0].Vents.Length, vents.Length);
        Assert.All(vents, v => Assert.Equal(0.9, v.AsCircle(1e-9)!.Value.Radius, 1e-9));
    }

    [Theory]
    [InlineData(100, 60, 600, 400, false)]
    [InlineData(590, 390, 600, 400, false)] // with the margin it just fits
    [InlineData(390, 590, 600, 400, false)] // turned
    [InlineData(592, 100, 610, 400, true)]
    [InlineData(100, 601, 620, 400, true)]
    [InlineData(400, 392, 600, 410, true)]
    public void A_board_of_unknown_size_is_taken_as_large_as_its_largest_part_needs(double width, double height,
        double takenWidth, double takenHeight, bool told)
    {
        var plan = Cuts
            .Create(Shapes.Rectangle(width, height), new(Kerf: 0),
                OneLayer with { Stock = [PlainBuck.Mdf12 with { SizeIsAssumed = true }] });
        Assert.Equal((takenWidth, takenHeight), (plan.Boards[0].Stock.BoardWidth, plan.Boards[0].Stock.BoardHeight));
        Assert.Single(plan.Boards[0].Placements);
        var finding = plan.Findings.SingleOrDefault(f => f.Id == "board-size-assumed");
        Assert.Equal(told, finding is not null);
        if (finding is null) return;
        Assert.Equal((Severity.Warning, takenWidth), (finding.Severity, finding.Value));
        Assert.Equal(
            FormattableString.Invariant(
                $"The size of the boards of MDF 12 is not given; {takenWidth} x {takenHeight} mm is assumed, so that the ")
                + "largest part fits.",
            finding.Message);
        Assert.Equal("Give the size of your boards.", finding.Remedy);
    }

    [Theory]
    [InlineData(100, 60)]
    [InlineData(595, 60)] // with the margins just as wide as the board
    [InlineData(100, 393)]
    [InlineData(595, 393)]
    public void A_board_that_is_large_enough_keeps_its_odd_size(double width, double height)
    {
        var stock = new Stock("MDF 12", 12, 605, 403) { SizeIsAssumed = true };
        var board = Cuts.Create(Shapes.Rectangle(width, height), new(Kerf: 0), OneLayer with { Stock = [stock] }).Boards[0];
        Assert.Equal((605, 403), (board.Stock.BoardWidth, board.Stock.BoardHeight));
    }

    [Fact]
    public void A_kerf_just_as_wide_as_a_dowel_hole_is_refused() =>
        // 1 mm and 0.15 mm of fit.
        Assert.Throws<SpecException>(() =>
            Cuts.Create(Shapes.Disc(50), new(Kerf: 1.15), OneLayer with { Dowels = new(1, 0.15) }));

    [Theory]
    [InlineData(6.15, true)]
    [InlineData(6.16, true)]
    [InlineData(6.14, false)]
    public void A_kerf_as_wide_as_a_dowel_hole_leaves_nothing_of_it(double kerf, bool refused)
    {
        // Twice half the kerf against a hole of 6 + 0.15 mm, but no laser burns that wide: the dowel is made thin instead.
        var spec = OneLayer with { Dowels = new(1, 0.15) };
        var scaled = kerf - 5;
        if (refused)
            Assert.Equal(
                FormattableString.Invariant(
                    $"The kerf of {scaled} mm leaves nothing of a dowel hole of 1.15 mm; use a smaller kerf or thicker dowels."),
                Assert.Throws<SpecException>(() => Cuts.Create(Shapes.Disc(50), new(Kerf: scaled), spec)).Message);
        else Assert.NotEmpty(Cuts.Create(Shapes.Disc(50), new(Kerf: scaled), spec).Boards);
    }

    [Fact]
    public void The_drawing_of_a_board_holds_every_path_of_its_parts_in_the_size_of_the_piece()
    {
        var board = Cuts.Create(Shapes.Rectangle(100, 60), new() { Bed = new(300, 200) }).Boards[0];
        var drawing = BoardDrawing.Create(board);
        Assert.Equal("Board 1, MDF 12", drawing.Title);
        Assert.Equal(new Bounds(0, 0, 300, 200), drawing.Page);
        Assert.Equal(board.Placements.Sum(p => p.Part.Paths.Length), drawing.Paths.Length);
        Assert.All(drawing.Paths, p => Assert.All(p.Segments, s => Assert.True(drawing.Page.Contains(s.Bounds))));
        Assert.Throws<ArgumentNullException>(() => BoardDrawing.Create(null!));
    }

    [Fact]
    public void The_gravest_finding_comes_first_whoever_found_it()
    {
        var plan = Cuts.Create(Shapes.Counter(620, 100, 5, 40), buck: PlainBuck.Spec);
        Assert.Equal(plan.AllFindings.Select(f => f.Severity).OrderDescending(), plan.AllFindings.Select(f => f.Severity));
        Assert.Equal("part-larger-than-stock", plan.AllFindings[0].Id);
        Assert.Contains(plan.AllFindings, f => f.Id == "counter-closes");
        Assert.True(plan.HasErrors);
    }

    [Fact]
    public void Accessories_alone_leave_the_buck_out()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Sheet = new(), Jig = new() });
        var names = CutPlan.Create(design, new(), CutScope.Accessories).Boards.SelectMany(s => s.Placements)
            .Select(p => p.Part.Name).ToArray();
        Assert.NotEmpty(names);
        Assert.Equal(design.Accessories.SelectMany(l => l.Parts.Select(l.NameOf)).Order(), names.Order());
        Assert.Throws<ArgumentNullException>(() => CutPlan.Create(null!, new()));
        Assert.Throws<ArgumentNullException>(() => CutPlan.Create(design, null!));
    }

    private static CutPlan Vented(VentSpec vents) =>
        Cuts.Create(Shapes.Rectangle(100, 60),
            buck: PlainBuck.Spec with { Base = new(PlainBuck.Mdf12), Sheet = new() { Gauge = 1 }, Vents = vents });
}
