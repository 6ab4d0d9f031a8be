using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Design.Venting;
using BuckGen.Fuzz.Tests.Laws;
using BuckGen.Fuzz.Tests.Runs;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Files;
using Xunit;

namespace BuckGen.Fuzz.Tests;

/// <summary>
/// A sound design keeps every law, and each law sees what it is there for when the design or its files are spoilt.
/// </summary>
public class LawTests
{
    private static readonly Stock Thin = new("board", 6, 600, 600);

    private static readonly BuckDesign Sound = BuckDesign.Create(
        Outline.FromRegion("frame", Region.FromLoops([Loop.Rectangle(new(0, 0, 120, 80)), Loop.Circle(new(40, 40), 25)])),
        new BuckSpec { Depth = 18, Stock = [Thin], Base = new(Thin, 15), Sheet = new(), Vents = new(), Dowels = new(4, 0.1, 3) });

    private static readonly CutPlan Plan = CutPlan.Create(Sound, new());

    [Fact]
    public void A_sound_design_keeps_them_all() =>
        Assert.Empty(DesignFuzzTests.Laws.SelectMany(l => l.Broken(Run(Sound)).Select(b => $"{l.GetType().Name}: {b}")));

    [Fact]
    public void Wood_where_there_is_air_is_on_the_wrong_side() =>
        Breaks(new SideLaw(), WithShape(3, s => s with { Holes = [] }));

    [Fact]
    public void An_edge_a_tenth_of_a_millimetre_aside_is_not_at_its_distance() =>
        Breaks(new DistanceLaw(), WithShape(2, s => Moved(s, new(0.1, 0))));

    [Fact]
    public void An_upper_layer_beyond_the_lower_one_does_not_nest() =>
        Breaks(new NestingLaw(), WithShape(4, s => Moved(s, new(0, 3))));

    [Fact]
    public void A_layer_that_floats_breaks_the_stack() =>
        Breaks(new StackLaw(), With(3, l => l with { Bottom = l.Bottom + 1, Top = l.Top + 1 }));

    [Fact]
    public void A_dowel_at_the_edge_has_no_wall() =>
        Breaks(new DowelLaw(),
            WithPart(2, p => p with { Dowels = [p.Dowels[0] with { Centre = new(-1, 10) }, .. p.Dowels.Skip(1)] }));

    [Fact]
    public void A_dowel_that_stops_half_way_holds_nothing() =>
        Breaks(new DowelLaw(), WithPart(2, p => p with { Dowels = [.. p.Dowels.Skip(1)] }));

    [Fact]
    public void A_vent_under_the_buck_draws_no_air() =>
        Breaks(new VentLaw(),
            Sound with
            {
                Vents = Sound.Vents! with
                {
                    Vents = [
                .. Sound.Vents.Vents.Select(v => v with { Centre = new(5, 40) })]
                }
            });

    /// <summary>
    /// The foot is a small triangle inside the drawn one, so vents round its corners lie farther from it than the drawing
    /// alone tells.
    /// </summary>
    [Fact]
    public void Vents_round_the_corners_of_a_foot_that_was_moved_inward_keep_the_law()
    {
        var design = BuckDesign.Create(
            Outline.FromRegion("triangle", Region.FromLoops([Loop.Polygon([new(0, 0), new(120, 0), new(60, 60)])])),
            Sound.Spec with { Draft = -10, Vents = new() { Spacing = 5, BoreDiameter = 2, Land = 0.5, Diameter = 1.5 } });
        Assert.Empty(new VentLaw().Broken(Run(design)));
        Breaks(new VentLaw(),
            design with
            {
                Vents = design.Vents! with
                {
                    Vents = [.. design.Vents.Vents
                .Select(v => v with { Centre = v.Centre + (new Vec2(60, 25) - v.Centre).Unit() * 0.5 })]
                }
            });
    }

    /// <summary>
    /// At 20 degrees a hole of 3 mm radius closes 8.2 mm below the face (trigonometry); its layer is cut at the face, so air
    /// reaches the base.
    /// </summary>
    [Fact]
    public void A_vent_in_a_counter_that_closes_within_the_lowest_layer_keeps_the_law_where_that_is_reported()
    {
        var design = BuckDesign.Create(
            Outline.FromRegion("ring", Region.FromLoops([Loop.Rectangle(new(0, 0, 120, 80)), Loop.Circle(new(40, 40), 3)])),
            Sound.Spec with { Depth = 18, Draft = 20, Steps = Steps.Inside, Stock = [new("thick board", 18, 600, 600)] });
        var pit = Assert.Single(design.Vents!.Vents, v => v.Reason == VentReason.Counter);
        Assert.Equal(0, pit.Centre.DistanceTo(new(40, 40)), 0.1);
        Assert.Empty(new VentLaw().Broken(Run(design)));
        Breaks(new VentLaw(), design with { Vents = design.Vents with { Vents = [pit with { Centre = new(123, 40) }] } });
        Breaks(new VentLaw(), design with { Findings = [.. design.Findings.Where(f => f.Id != "counter-closes")] });
    }

    [Fact]
    public void A_file_of_another_layer_is_not_this_one()
    {
        var files = MadeFiles.Few(Plan, new());
        var mixed = files with { Layers = [.. files.Layers.Select((l, i) => (l.Layer, files.Layers[i == 1 ? 2 : i].Dxf))] };
        Assert.NotEmpty(new LayerFileLaw().Broken(new(Sound, Plan, mixed)));
        Assert.NotEmpty(new SummaryLaw().Broken(new(Sound, Plan, mixed)));
    }

    [Fact]
    public void A_kerf_other_than_asked_for_is_seen() =>
        Assert.NotEmpty(
            new KerfLaw().Broken(new(Sound, Plan with { Spec = Plan.Spec with { Kerf = 0.3 } }, MadeFiles.Few(Plan, new()))));

    [Theory]
    [InlineData(-4, 0)]
    [InlineData(0, 500)]
    public void A_part_moved_on_its_board_comes_too_near(double x, double y)
    {
        var board = Plan.Boards[0];
        var moved = board.Placements[0] with { Map = Moved(board.Placements[0].Map, x, y) };
        var plan = Plan with
        {
            Boards = [board with { Placements = [moved, .. board.Placements.Skip(1)] },
            .. Plan.Boards.Skip(1)]
        };
        Assert.NotEmpty(new BoardLaw().Broken(new(Sound, plan, MadeFiles.Few(plan, new()))));
    }

    [Fact]
    public void A_part_left_out_is_missed()
    {
        var plan = Plan with
        {
            Boards = [Plan.Boards[0] with { Placements = [.. Plan.Boards[0].Placements.Skip(1)] },
            .. Plan.Boards.Skip(1)]
        };
        Assert.NotEmpty(new BoardLaw().Broken(new(Sound, plan, MadeFiles.Few(plan, new()))));
    }

    private static void Breaks(ILaw law, BuckDesign spoilt) => Assert.NotEmpty(law.Broken(Run(spoilt)));

    private static DesignRun Run(BuckDesign design) => new(design, Plan, MadeFiles.Few(Plan, new OutputOptions()));

    private static BuckDesign With(int number, Func<Layer, Layer> change) =>
        Sound with { Layers = [.. Sound.Layers.Select(l => l.Number == number ? change(l) : l)] };

    private static BuckDesign WithPart(int number, Func<LayerPart, LayerPart> change) =>
        With(number, l => l with { Parts = [.. l.Parts.Select(change)] });

    private static BuckDesign WithShape(int number, Func<Island, Island> change) =>
        WithPart(number, p => p with { Shape = change(p.Shape) });

    private static Island Moved(Island island, Vec2 by)
    {
        var map = Affine.Translation(by);
        return new(island.Outer.Transformed(map), [.. island.Holes.Select(h => h.Transformed(map))]);
    }

    private static Affine Moved(Affine map, double x, double y) => map with { E = map.E + x, F = map.F + y };
}
