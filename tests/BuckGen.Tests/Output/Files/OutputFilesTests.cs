using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Parts;
using BuckGen.Design.Specs;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Files;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Output.Files;

/// <summary>Which files a job makes, in which order, and when it makes fewer.</summary>
[Trait("Tier", "slow")]
public sealed class OutputFilesTests
{
    private static readonly BuckSpec Everything = PlainBuck.Spec with
    {
        Base = new(new("ply 6", 6), 20, new("MDF 9", 9)),
        Vents = new(),
        Plenum = new(PlainBuck.Mdf12),
        Part = new() { Side = PartSide.Outside, At = PartEnd.Face },
        Sheet = new() { Plastic = Catalog.BuiltIn.FindPlastic("petg"), MinWall = 0.5 },
        Jig = new() { TrimHeight = 24 },
        Panel = new(PlainBuck.Mdf12),
    };

    private static readonly OutputOptions AllOptions = new("Everything", Drilling: new()) { Model = true };

    private static readonly string[] Closing = ["report.html", "report.png", "summary.json"];

    [Fact]
    public void A_job_makes_every_file_once_in_the_order_of_the_work()
    {
        var files = OutputFiles.Create(Plan(Shapes.Counter(80, 60, 40, 20), Everything), AllOptions);

        AssertInOrder(files,
            "layers/layer-01.dxf", "layers/layer-02.dxf", "drill/vents.csv", "drill/vents.dxf", "drill/template.svg",
            "templates/drilling.pdf", "drill/layer-", "jig/ring-01.dxf",
            "templates/trim.pdf", "cut/board-01", "model/buck-stepped.stl", "model/buck.stl", "model/buck.glb",
            "process-card.txt", "report.html", "report.png", "summary.json");
        Assert.All(files, f => Assert.NotEmpty(f.Content));
        Assert.Matches(@"^drill/layer-\d\d-[\d.]+mm\.ngc$",
            files.First(f => f.Path.EndsWith(".ngc", StringComparison.Ordinal)).Path);
    }

    [Fact]
    public void What_is_not_asked_for_is_not_made()
    {
        var plain = Paths(OutputFiles.Create(Plan(Shapes.Rectangle(100, 60), PlainBuck.Spec), new()));

        Assert.Equal([.. Layers(3), "cut/board-01-mdf-12.dxf", .. Closing], plain);
        Assert.Equal(
            [.. Layers(3), "cut/board-01-mdf-12.dxf", "model/buck-stepped.stl", "model/buck.stl", "model/buck.glb", .. Closing],
            Paths(OutputFiles.Create(Plan(Shapes.Rectangle(100, 60), PlainBuck.Spec), new() { Model = true })));
        Assert.DoesNotContain(Paths(OutputFiles.Create(Plan(Shapes.Counter(80, 60, 40, 20), Everything), new())),
            p => p.EndsWith(".ngc", StringComparison.Ordinal) || p.StartsWith("model/", StringComparison.Ordinal));
    }

    [Fact]
    public void Jigs_alone_are_jigs_and_what_they_are_cut_from()
    {
        var files = Paths(OutputFiles.Jigs(Plan(Shapes.Counter(80, 60, 40, 20), Everything, CutScope.Accessories), AllOptions));

        Assert.Contains("jig/ring-01.dxf", files);
        Assert.Contains("panel/panel-01.dxf", files);
        Assert.Contains("templates/trim.pdf", files);
        Assert.Contains(files, f => f.StartsWith("cut/", StringComparison.Ordinal));
        Assert.DoesNotContain(files, f => f.StartsWith("layers/", StringComparison.Ordinal)
            || f.StartsWith("drill/", StringComparison.Ordinal) || f.StartsWith("model/", StringComparison.Ordinal)
            || f == "process-card.txt");
        Assert.Equal(Closing, files[^3..]);
    }

    [Fact]
    public void A_drill_map_alone_is_that_and_the_report()
    {
        var files = Paths(OutputFiles.DrillMap(Plan(Shapes.Counter(80, 60, 40, 20), Everything), AllOptions));

        Assert.All(files[..^3],
            f => Assert.True(f.StartsWith("drill/", StringComparison.Ordinal) || f == "templates/drilling.pdf", f));
        Assert.Contains("drill/vents.csv", files);
        Assert.Equal(Closing, files[^3..]);
        Assert.Equal(Closing, Paths(OutputFiles.DrillMap(Plan(Shapes.Rectangle(100, 60), PlainBuck.Spec), AllOptions)));
    }

    [Fact]
    public void A_design_with_errors_makes_only_the_report_unless_forced()
    {
        // 4 mm wide, to size at the base: nothing of it is left at the top.
        var bad = Plan(Shapes.Rectangle(100, 4), PlainBuck.Spec with { OutlineAt = OutlineAt.Base });
        Assert.True(bad.HasErrors);

        Assert.Equal(Closing, Paths(OutputFiles.Create(bad, AllOptions)));
        Assert.Contains("layers/layer-01.dxf", Paths(OutputFiles.Create(bad, AllOptions, force: true)));
        Assert.Equal(Closing, Paths(OutputFiles.Jigs(bad, AllOptions)));
        Assert.Contains(Paths(OutputFiles.Jigs(bad, AllOptions, force: true)),
            f => f.StartsWith("cut/", StringComparison.Ordinal));
    }

    [Fact]
    public void The_summary_lists_every_file()
    {
        foreach (var files in (ImmutableArray<OutputFile>[])
            [OutputFiles.Create(Plan(Shapes.Counter(80, 60, 40, 20), Everything), AllOptions),
                OutputFiles.DrillMap(Plan(Shapes.Rectangle(100, 60), PlainBuck.Spec), new())])
        {
            using var summary = JsonDocument.Parse(files[^1].Content.AsMemory());
            Assert.Equal(files.Select(f => f.Path), summary.RootElement.GetProperty("files").EnumerateArray()
                .Select(f => f.GetString()));
        }
    }

    [Fact]
    public void Every_file_is_reported_as_progress_and_the_work_stops_between_two()
    {
        var plan = Plan(Shapes.Rectangle(100, 60), PlainBuck.Spec);
        var told = new List<string>();
        var files = OutputFiles.Create(plan, new(), progress: new SynchronousProgress(told.Add));
        Assert.Equal(Paths(files), told);

        foreach (var count in (int[])[1, 3, 6])
        {
            told.Clear();
            using var stop = new CancellationTokenSource();
            Assert.ThrowsAny<OperationCanceledException>(() =>
                OutputFiles.Create(plan, new(), progress: new SynchronousProgress(p =>
            {
                told.Add(p);
                if (told.Count == count) stop.Cancel();
            }), cancellation: stop.Token));
            Assert.Equal(count, told.Count);
        }
    }

    [Fact]
    public void The_preview_is_1600_pixels_wide()
    {
        var png = OutputFiles.Create(Plan(Shapes.Rectangle(100, 60), PlainBuck.Spec), new())[^2];

        // A PNG begins with 8 bytes, then the header: length, IHDR, width (PNG specification, clause 11.2.2).
        Assert.Equal("IHDR", Encoding.ASCII.GetString([.. png.Content[12..16]]));
        Assert.Equal(1600, BinaryPrimitives.ReadInt32BigEndian(png.Content.AsSpan()[16..]));
    }

    [Fact]
    public void A_template_of_more_than_500_pages_is_left_out_and_says_so()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(6000, 4000), PlainBuck.Spec with
        {
            Depth = 12,
            Sheet = new(),
            Flange = new(PlainBuck.Mdf12),
        });

        var made = TemplateFiles.Trimming(design, new());

        Assert.Empty(made.Files);
        var finding = Assert.Single(made.Findings);
        Assert.Equal(("template-too-large", Severity.Warning, 500.0), (finding.Id, finding.Severity, finding.Limit));
        // Some 180 x 260 mm of a page are drawn on.
        Assert.InRange(finding.Value!.Value, 450, 700);
        Assert.Equal(
            FormattableString.Invariant($"The paper template templates/trim.pdf would be spread over {finding.Value} pages of ")
                + "A4, the limit is 500; it is left out.", finding.Message);
        Assert.Equal("Have the drawings of the layers plotted at full size instead.", finding.Remedy);
    }

    [Fact]
    public void The_card_in_the_report_is_the_card_in_the_folder()
    {
        var files = OutputFiles.Create(Plan(Shapes.Counter(80, 60, 40, 20), Everything), new());
        var card = Encoding.UTF8.GetString([.. files.Single(f => f.Path == OutputFiles.ProcessCardPath).Content]).Split('\n')
            .First(l => l.Trim().Length > 20 && l.All(c => char.IsAsciiLetterOrDigit(c) || c == ' '));

        Assert.Contains(card.Trim(), Encoding.UTF8.GetString([.. files.Single(f => f.Path == OutputFiles.ReportPath).Content]));
    }

    [Fact]
    public void A_plan_and_options_are_needed()
    {
        var plan = Plan(Shapes.Rectangle(100, 60), PlainBuck.Spec);
        foreach (var make in
            (Action<CutPlan, OutputOptions>[])[(p, o) => OutputFiles.Create(p, o), (p, o) => OutputFiles.Jigs(p, o),
                (p, o) => OutputFiles.DrillMap(p, o)])
        {
            Assert.Equal("plan", Assert.Throws<ArgumentNullException>(() => make(null!, new())).ParamName);
            Assert.Equal("options", Assert.Throws<ArgumentNullException>(() => make(plan, null!)).ParamName);
        }
    }

    private static CutPlan Plan(Region region, BuckSpec spec, CutScope scope = CutScope.Everything) =>
        CutPlan.Create(BuckDesign.Create(Outline.FromRegion("drawn", region), spec), new(), scope);

    private static string[] Paths(ImmutableArray<OutputFile> files) => [.. files.Select(f => f.Path)];

    private static IEnumerable<string> Layers(int count) => Enumerable.Range(1, count).Select(n => $"layers/layer-{n:00}.dxf");

    /// <summary>The first files that begin so stand in this order, and no file is there twice.</summary>
    private static void AssertInOrder(ImmutableArray<OutputFile> files, params string[] beginnings)
    {
        var places = beginnings.Select(b => Array.FindIndex(Paths(files), p => p.StartsWith(b, StringComparison.Ordinal)))
            .ToArray();
        Assert.True(places.All(p => p >= 0)
            && places.SequenceEqual(places.Order()), $"{string.Join(", ", places)} of {string.Join(", ", Paths(files))}");
        Assert.Equal(files.Length, files.DistinctBy(f => f.Path).Count());
    }

    /// <summary>Tells at once, on the thread that works.</summary>
    private sealed class SynchronousProgress(Action<string> tell) : IProgress<string>
    {
        public void Report(string value) => tell(value);
    }
}
