using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Settings;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Cutting.Boards;

public class CutPlanTests
{
    [Fact]
    public void Every_part_of_every_layer_is_cut_once()
    {
        var plan = Cuts.Create(Shapes.Union(Shapes.Rectangle(100, 60), Shapes.RectangleAt(150, 0, 60, 60)));

        Assert.Equal(["1A", "1B", "2A", "2B", "3A", "3B"], plan.Boards.SelectMany(s => s.Placements)
            .Select(p => p.Part.Name).Order());
    }

    [Fact]
    public void Each_board_holds_one_stock_only_the_thickest_first()
    {
        var plan = Cuts
            .Create(Shapes.Rectangle(100, 60),
                buck: PlainBuck.Spec with { Depth = 30, Stock = [new("ply 6", 6), PlainBuck.Mdf12] });

        Assert.Equal(["MDF 12", "ply 6"], plan.Boards.Select(s => s.Stock.Name));
        Assert.Equal([1, 2], plan.Boards.Select(s => s.Number));
        Assert.All(plan.Boards, s => Assert.All(s.Placements, p => Assert.Equal(s.Stock, p.Part.Stock)));
    }

    [Fact]
    public void More_parts_than_a_board_holds_take_several()
    {
        var plan = Cuts.Create(Shapes.Rectangle(250, 250), buck: PlainBuck.Spec with { Depth = 60 });

        Assert.Equal(3, plan.Boards.Length);
        Assert.Empty(plan.Findings);
    }

    [Fact]
    public void A_part_larger_than_its_board_is_an_error_with_both_sizes()
    {
        var plan = Cuts.Create(Shapes.Rectangle(620, 100), buck: PlainBuck.Spec with { Depth = 12, Draft = 0 });

        var finding = Assert.Single(plan.Findings);
        Assert.Equal(("part-larger-than-stock", Severity.Error), (finding.Id, finding.Severity));
        Assert.Contains("Part 1A needs 620.2 x 100.2 mm; a board of MDF 12 is 600 x 400 mm with 5 mm of margin", finding.Message);
        Assert.True(plan.HasErrors);
        Assert.Empty(plan.Boards);
    }

    [Fact]
    public void Area_and_cut_length_add_up()
    {
        // One disc of 50 mm radius without dowels: 2π·50.1 mm of cut with a kerf of 0.2 mm, π·2500 mm² of a 600 x 400 board.
        var plan = Cuts.Create(Shapes.Disc(50), new(Kerf: 0.2), PlainBuck.Spec with { Depth = 12, Draft = 0 });

        Assert.Equal(2 * Math.PI * 50.1, plan.CutLength, 1e-6);
        Assert.Equal(Math.PI * 2500 / 240000, plan.Boards[0].Utilisation, 1e-9);
    }

    [Fact]
    public void The_cut_length_of_a_plan_is_that_of_all_its_parts() =>
        // Three discs of 50 mm radius, each with three dowel holes of 6.15 mm.
        Assert.Equal(3 * Math.PI * (100 + 3 * 6.15),
            Cuts.Create(Shapes.Disc(50), new(Kerf: 0),
                PlainBuck.Spec with { Draft = 0, Dowels = new() { ThroughFace = true } }).CutLength, 1e-6);

    [Fact]
    public void The_lines_of_a_part_stay_on_the_part()
    {
        var plan = Cuts.Create(
            Shapes.Union(Shapes.Counter(60, 60, 30, 30), Shapes.RectangleAt(80, 0, 50, 50)), new(Kerf: 0.2),
            PlainBuck.Spec with { Steps = Steps.Middle });

        foreach (var part in plan.Boards.SelectMany(s => s.Placements).Select(p => p.Part))
        {
            Assert.Single(part.Loops(CutLayer.CutOuter));
            Assert.All(part.Paths, p => Assert.All(p.Segments, s => Assert.True(part.Bounds.Grown(1e-6).Contains(s.Bounds))));
            // At least one line to sand or glue to; and the lettering, but on the top layer.
            Assert.Contains(part.Paths, p => p.Layer == CutLayer.Mark && p.Closed);
            Assert.Equal(part.Name[0] != '3', part.Paths.Any(p => p.Layer == CutLayer.Mark && !p.Closed));
        }
    }

    [Fact]
    public void A_hole_narrower_than_the_kerf_is_gone_from_the_cut()
    {
        // The beam is wider than the hole: there is nothing to follow inside it.
        var plan = Cuts.Create(Region.FromLoops([Loop.Rectangle(new(0, 0, 60, 60)), Loop.Circle(new(30, 30), 0.2)]),
            new(Kerf: 0.5), PlainBuck.Spec with { Draft = 0, Depth = 12 });

        Assert.Empty(plan.Boards[0].Placements[0].Part.Loops(CutLayer.CutInner));
        Assert.Contains(plan.AllFindings, f => f.Message.Contains("kerf"));
    }

    [Theory]
    [InlineData(-0.1, 4, 5, "kerf is -0.1 mm; it must be from 0 to 5 mm")]
    [InlineData(6, 4, 5, "kerf is 6 mm")]
    [InlineData(double.NaN, 4, 5, "kerf is NaN")]
    [InlineData(0.2, -1, 5, "spacing of parts is -1 mm")]
    [InlineData(0.2, 4, 201, "edge margin is 201 mm")]
    public void A_number_out_of_range_is_refused(double kerf, double spacing, double margin, string says) =>
        Assert.Contains(says,
            Assert.Throws<SpecException>(() => Cuts.Create(Shapes.Disc(50), new(Machine.Laser, kerf, spacing, margin))).Message);

    [Fact]
    public void A_kerf_that_leaves_nothing_of_a_dowel_hole_is_refused() =>
        Assert.Contains("use a smaller kerf or thicker dowels",
            Assert.Throws<SpecException>(() =>
                Cuts.Create(Shapes.Disc(50), new(Kerf: 2), PlainBuck.Spec with { Dowels = new(1.5) })).Message);
}
