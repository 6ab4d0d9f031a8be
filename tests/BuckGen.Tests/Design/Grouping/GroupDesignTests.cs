using System.Text;
using System.Text.Json;
using BuckGen.Cutting.Boards;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Parts;
using BuckGen.Design.Specs;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Output.Files;
using BuckGen.Output.Folders;
using BuckGen.Output.Reports;
using BuckGen.Settings;
using BuckGen.Tests.Conventions;
using BuckGen.Tests.Design.Bucks;
using Json.Schema;
using Xunit;

namespace BuckGen.Tests.Design.Grouping;

[Trait("Tier", "slow")]
public class GroupDesignTests
{
    private static readonly Stock Mdf6 = new("MDF 6", 6, 1200, 600);

    private static readonly BuckSpec Spec = new()
    {
        Depth = 12,
        Draft = 5,
        Stock = [Mdf6],
        Base = new(Mdf6, 15),
        Sheet = new SheetSpec { Gauge = 1 },
        Former = new FormerSpec { Opening = new(300, 200) },
        Groups = new(Mdf6) { Fit = 0.5 },
    };

    /// <summary>Six blocks of 100 x 100 mm with 40 mm between them: 800 mm long; two fit a frame with their gaps.</summary>
    private static readonly Region Six = Shapes.Union(
        [.. Enumerable.Range(0, 6).Select(i => Shapes.RectangleAt(i * 140, 0, 100, 100))]);

    private static readonly Region OneTooLong =
        Shapes.Union(Shapes.RectangleAt(0, 0, 100, 100), Shapes.RectangleAt(150, 0, 320, 100));

    [Fact]
    public void Each_buck_fits_the_frame_and_has_its_own_islands()
    {
        var whole = PlainBuck.Create(Six, Spec);

        Assert.Equal([2, 2, 2], whole.Groups.Select(g => g.Design.Outline.Region.Islands.Length));
        Assert.Equal([1, 2, 3], whole.Groups.Select(g => g.Number));
        Assert.Equal(Six.Area, whole.Groups.Sum(g => g.Design.Outline.Region.Area), 1e-6);
        Assert.All(whole.Groups, g =>
        {
            Assert.NotEmpty(g.Design.Layers);
            Assert.DoesNotContain(g.Design.Findings, f => f.Id is "frame-too-small" or "frame-tight" or "base-over-frame");
        });
        Assert.DoesNotContain(whole.Findings, f => f.Severity == Severity.Error);
    }

    [Fact]
    public void The_register_board_has_an_opening_for_every_piece_at_its_place()
    {
        var whole = PlainBuck.Create(Six, Spec);

        var board = Assert.Single(whole.Accessories);
        Assert.Equal("REGISTER", board.Name);
        var openings = Assert.Single(board.Parts).Shape.Holes;
        Assert.Equal(6, openings.Length);
        foreach (var (group, island) in whole.Groups.SelectMany(g => g.Design.Part!.Mouth.Outside.Islands.Select(i => (g, i))))
        {
            var opening = openings.MinBy(o => o.Bounds.Centre.DistanceTo(island.Outer.Bounds.Centre))!;
            Assert.Equal(island.Outer.Bounds.Width + 1, opening.Bounds.Width, 1e-6);
            Assert.Equal(0, opening.Bounds.Centre.DistanceTo(island.Outer.Bounds.Centre), 1e-6);
            Assert.Contains(board.Parts[0].Marks, m => m.Text == $"B{group.Number}"
                && Math.Abs(m.Box.Centre.X - opening.Bounds.Centre.X) < 50);
        }
    }

    [Fact]
    public void The_panel_has_the_openings_of_all_bucks()
    {
        var whole = PlainBuck.Create(Six, Spec with { Panel = new(Mdf6) });

        Assert.Equal(6, whole.Panel!.Panel.Parts.Single().Shape.Holes.Length);
        Assert.All(whole.Groups, g => Assert.Null(g.Design.Panel));
    }

    [Fact]
    public void An_island_larger_than_the_frame_is_an_error_that_names_it_and_the_millimetres()
    {
        var whole = PlainBuck.Create(OneTooLong, Spec);

        var finding = Assert.Single(whole.Findings, f => f.Id == "island-larger-than-frame");
        Assert.Equal(Severity.Error, finding.Severity);
        // 320 mm, 12·tan 5° wider on either side at the foot, and the base 15 mm wider still, in 300 mm.
        Assert.Equal(320 + 24 * PlainBuck.Tan5 + 30 - 300, finding.Value!.Value, 1e-6);
        Assert.Contains("x = 149", finding.Message);
    }

    [Fact]
    public void Islands_whose_walls_run_together_stay_together()
    {
        // 1.5 mm apart at the face, they meet at the foot: no board could hold both pieces.
        var whole = PlainBuck.Create(
            Shapes.Union(Shapes.RectangleAt(0, 0, 110, 100), Shapes.RectangleAt(111.5, 0, 110, 100),
                Shapes.RectangleAt(250, 0, 100, 100)), Spec);

        Assert.Equal([2, 1], whole.Groups.Select(g => g.Design.Outline.Region.Islands.Length));
    }

    [Fact]
    public void What_one_buck_lacks_is_named_with_its_number()
    {
        // A sharp star only in the last group.
        var star = new Region([new(Loop.Polygon(new(600, 0), new(700, 0), new(601, 3)), [])]);
        var whole = PlainBuck.Create(Shapes.Union(Shapes.RectangleAt(0, 0, 220, 100), star), Spec);

        var named = whole.Findings.Where(f => f.Message.StartsWith("Buck", StringComparison.Ordinal)).ToArray();
        Assert.Contains(named, f => f.Message.StartsWith("Buck 2: ", StringComparison.Ordinal));
        Assert.Equal(
            whole.Groups.SelectMany(g => g.Design.Findings.Select(f => f.Id)).Distinct().Order(),
            named.Select(f => f.Id).Distinct().Order());
    }

    [Fact]
    public void Without_groups_the_error_offers_them_for_several_islands_only()
    {
        var several = PlainBuck.Create(Six, Spec with { Groups = null });
        var one = PlainBuck.Create(Shapes.Rectangle(400, 100), Spec with { Groups = null });

        Assert.Contains("[groups]", Assert.Single(several.Named("frame-too-small")).Remedy);
        Assert.DoesNotContain("[groups]", Assert.Single(one.Named("frame-too-small")).Remedy);
    }

    [Fact]
    public void Sheet_and_frame_are_needed()
    {
        Assert.Throws<SpecException>(() => PlainBuck.Create(Six, Spec with { Sheet = null }));
        Assert.Throws<SpecException>(() => PlainBuck.Create(Six, Spec with { Former = new() }));
    }

    [Fact]
    public void An_ordered_size_is_that_of_the_whole_sign()
    {
        // 400 mm drawn, ordered 800 mm long: blocks of 100 mm again.
        var half = Six.Transformed(new(0.5, 0, 0, 0.5, 0, 0));
        var ordered = Spec with { Part = new PartSpec { Size = new(800, 100) } };

        var whole = PlainBuck.Create(half, ordered);

        Assert.Equal(3, whole.Groups.Length);
        Assert.All(whole.Groups, g => Assert.Equal(240, g.Design.Outline.Region.Bounds.Width, 1e-6));
    }

    [Fact]
    public void Every_buck_has_a_folder_with_all_its_files_and_the_main_folder_sums_up()
    {
        var plan = CutPlan.Create(PlainBuck.Create(Six, Spec), new() { Bed = new(600, 400), Seams = new() });

        var files = OutputFiles.Create(plan, new());

        foreach (var n in (int[])[1, 2, 3])
            foreach (var name in (string[])["summary.json", "report.html", "process-card.txt", "layers/layer-01.dxf"])
                Assert.Contains(files, f => f.Path == $"buck-{n}/{name}");
        Assert.Contains(files, f => f.Path == "jig/register-01.dxf");
        Assert.All(files, f => Assert.True(
            f.Path == OutputFiles.SummaryPath || FolderRecord.MayList(f.Path), f.Path));
        var json = Text(files, OutputFiles.SummaryPath);
        var schema = JsonSchema.FromText(Repository.Text("src", "BuckGen", "Output", "Reports", "summary.schema.json"));
        using var document = JsonDocument.Parse(json);
        var valid = schema.Evaluate(document.RootElement, new() { OutputFormat = OutputFormat.List });
        Assert.True(valid.IsValid, string.Join('\n', (valid.Details ?? []).Where(d => d.Errors is not null)
            .SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}"))));
        var summary = SummaryJson.Read([.. Encoding.UTF8.GetBytes(json)]);
        Assert.Equal(["buck-1", "buck-2", "buck-3"], summary.Groups!.Value.Select(g => g.Folder));
        Assert.Equal("REGISTER1", Assert.Single(summary.Plates!.Value).Name);
        Assert.Equal(plan.Groups.Sum(g => g.CutLength) + plan.Boards.SelectMany(b => b.Placements).Sum(p => p.Part.CutLength),
            summary.CutLength, 1e-3);
        Assert.Contains("3 heats, 3 blanks", Text(files, OutputFiles.ProcessCardPath));
        Assert.Contains("buck-2/report.html", Text(files, OutputFiles.ReportPath));
    }

    [Fact]
    public void With_an_error_in_one_buck_nothing_is_cut_of_any()
    {
        var plan = CutPlan.Create(
            PlainBuck.Create(OneTooLong, Spec), new());

        var files = OutputFiles.Create(plan, new());

        Assert.True(plan.HasErrors);
        Assert.Contains(files, f => f.Path == "buck-1/report.html");
        Assert.DoesNotContain(files, f => f.Path.EndsWith(".dxf", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("buck-1/summary.json", true)]
    [InlineData("buck-12/layers/layer-01.dxf", true)]
    [InlineData("lid/cut/board-01-mdf.dxf", true)]
    [InlineData("buck-x/summary.json", false)]
    [InlineData("buck-1/../summary.json", false)]
    [InlineData("buck-1/mine.txt", false)]
    [InlineData("other/summary.json", false)]
    public void Only_folders_of_bucks_are_ours(string path, bool ours) => Assert.Equal(ours, FolderRecord.MayList(path));

    private static string Text(IEnumerable<OutputFile> files, string path) =>
        Encoding.UTF8.GetString([.. files.Single(f => f.Path == path).Content]);
}
