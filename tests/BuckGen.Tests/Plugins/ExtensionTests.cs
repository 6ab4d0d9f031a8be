using System.Collections.Immutable;
using System.Text;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Jobs;
using BuckGen.Output.Files;
using BuckGen.Output.Reports;
using BuckGen.Plugins;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Plugins;

/// <summary>
/// Each extension point used from outside the library, without any file: what is added takes part, and what fails is named
/// while the rest goes on.
/// </summary>
public class ExtensionTests
{
    private static readonly Outline Plate = Outline.FromRegion("plate", Formed.Rectangle(100, 80));

    private static BuckSpec Spec => Formed.Spec(BuckKind.Male, 24, 5) with
    {
        Stock = [Formed.Mdf6],
        Base = new(Formed.Mdf6, 20, Formed.Mdf6),
        Vents = new(),
        Former = new() { Opening = new(300, 300) },
    };

    [Fact]
    public void A_pattern_places_its_vents()
    {
        var design = BuckDesign.Create(Plate, Spec with { Vents = new() { Pattern = new Corners() } });

        Assert.Equal([new(-15, -15), new(115, 95)],
            design.Vents!.Vents.Where(v => v.Reason == BuckGen.Design.Venting.VentReason.Pattern).Select(v => v.Centre)
                .OrderBy(c => c.X));
        Assert.DoesNotContain(design.Findings, f => f.Id == "plugin-failed");
    }

    [Fact]
    public void A_check_asks_its_question()
    {
        var extensions = Extensions.BuiltIn.With(new HeavyCheck()).Design;

        var finding = BuckDesign.Create(Plate, Spec, extensions).Findings.Single(f => f.Id == "heavy");

        // Four walls of 6 mm and two plates; the areas are those of the layers themselves.
        Assert.Equal(BuckDesign.Create(Plate, Spec).Layers.Sum(l => l.Region.Area * l.Thickness), finding.Value!.Value, 1e-6);
    }

    [Fact]
    public void A_jig_is_cut_with_the_rest()
    {
        var design = BuckDesign.Create(Plate, Spec, Extensions.BuiltIn.With(new Lid()).Design);
        var files = OutputFiles.Create(CutPlan.Create(design, new()), new());

        var lid = design.Accessories.Single(l => l.Name == "LID");
        Assert.Contains("jig/lid-01.dxf", files.Select(f => f.Path));
        // The part outside at its flange: the plate, the draft, the wall; and 2 mm.
        Assert.Equal(100 + 2 * (24 * Math.Tan(5 * Math.PI / 180) + design.Blank!.MeanThickness / Math.Cos(5 * Math.PI / 180) + 2),
            lid.Region.Bounds.Width, 1e-4);
    }

    [Fact]
    public void A_catalog_brings_its_stocks()
    {
        var job = JobFile.Read("[outline]\nfile = \"x.svg\"\n[buck]\ndepth = 20\n[[stock]]\ncatalog = \"cork-10\"", "job.toml",
            null, Extensions.BuiltIn.With(new CorkCatalog()));

        Assert.Equal(("Cork 10", 10.0), (job.Buck.Stock[0].Name, job.Buck.Stock[0].Thickness));
        Assert.NotNull(Extensions.BuiltIn.With(new CorkCatalog()).Catalog.FindStock("mdf-12"));
    }

    [Fact]
    public void A_reader_reads_what_it_knows_and_leaves_the_rest()
    {
        var options = OutlineOptions.Default with { Formats = Extensions.BuiltIn.With(new CornerList()).OutlineFormats };

        var outline = OutlineReader.Read(Encoding.UTF8.GetBytes("corners\n0 0\n40 0\n40 30\n0 30\n"), "plate.txt", options);

        Assert.Equal(1200, outline.Region.Area, 1e-9);
        var svg = Encoding.UTF8
            .GetBytes("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10mm\" height=\"10mm\" viewBox=\"0 0 10 "
                + "10\"><circle cx=\"5\" cy=\"5\" r=\"4\"/></svg>");
        Assert.Equal(OutlineReader.Read(svg, "a.svg").Region.Area, OutlineReader.Read(svg, "a.svg", options).Region.Area);
        using var stream = new MemoryStream(svg);
        Assert.Equal(16 * Math.PI,
            OutlineReader.Read(stream, "a.svg", options, TestContext.Current.CancellationToken).Region.Area, 1e-6);
    }

    [Fact]
    public void A_writer_writes_a_file_beside_every_DXF()
    {
        var plan = CutPlan.Create(BuckDesign.Create(Plate, Spec), new());

        var files = OutputFiles.Create(plan, new() { Formats = [new PathCount(".cnt", false), new PathCount(".run", true)] });

        var dxf = files.Where(f => f.Path.EndsWith(".dxf", StringComparison.Ordinal)
            && !f.Path.StartsWith("drill", StringComparison.Ordinal)).Select(f => f.Path).ToArray();
        Assert.Equal(dxf.Select(d => Path.ChangeExtension(d, ".cnt")),
            files.Where(f => f.Path.EndsWith(".cnt", StringComparison.Ordinal)).Select(f => f.Path));
        // What a machine runs is written for the boards alone.
        Assert.All(files.Where(f => f.Path.EndsWith(".run", StringComparison.Ordinal)), f => Assert.StartsWith("cut/", f.Path));
        Assert.Equal(plan.Boards.Length, files.Count(f => f.Path.EndsWith(".run", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(".dxf", "is taken")]
    [InlineData(".svg", "is taken")]
    [InlineData("ngc", "must be a dot")]
    [InlineData(".a/../b", "must be a dot")]
    [InlineData(".toolonganending", "must be a dot")]
    public void A_writer_with_an_ending_that_won_t_do_is_named(string ending, string why)
    {
        var files = OutputFiles
            .Create(CutPlan.Create(BuckDesign.Create(Plate, Spec), new()), new() { Formats = [new PathCount(ending, false)] });

        var failed = Findings(files).Single(f => f.Id == "plugin-failed");
        Assert.Contains(why, failed.Message);
        Assert.Contains("\"count\"", failed.Message);
    }

    [Fact]
    public void A_section_stands_on_the_card()
    {
        var card = Card(
            OutputFiles.Create(CutPlan.Create(BuckDesign.Create(Plate, Spec), new()), new() { Sections = [new Customer()] }));

        Assert.Contains("\nCUSTOMER\nThe baker on the quay; one board is enough.\n", card);
        Assert.True(card.IndexOf("ORDER OF WORK", StringComparison.Ordinal) < card.IndexOf("CUSTOMER", StringComparison.Ordinal));
    }

    /// <summary>Every part of the plug-in made to fail: each is named once, and the job comes out as without it.</summary>
    [Fact]
    public void A_broken_plug_in_is_named_and_the_job_is_done()
    {
        var all = PluginSet.Load([PluginFiles.Faulty]).AddTo(Extensions.BuiltIn);
        var svg = Encoding.UTF8
            .GetBytes("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" height=\"80mm\" viewBox=\"0 0 100 "
                + "80\"><path d=\"M5 5H95V75H5Z\"/></svg>");
        var outline = OutlineReader.Read(svg, "plate.svg", OutlineOptions.Default with { Formats = all.OutlineFormats });
        var spec = Spec with { Vents = new() { Pattern = all.VentPatterns.Single(p => p.Name == "faulty") } };

        var files = OutputFiles
            .Create(CutPlan.Create(BuckDesign.Create(outline, spec, all.Design), new()),
                new() { Formats = all.CutFileFormats, Sections = all.ReportSections });

        Assert.Equal(
            ["faulty", "Faulty section", "faulty-check", "faulty-jig", "faulty-writer"],
            Findings(files).Where(f => f.Id == "plugin-failed").Select(f => f.Message.Split('"')[1])
                .Order(StringComparer.OrdinalIgnoreCase));
        Assert.Contains(outline.Notes, n => n.Kind == "plugin-failed"
            && n.Message.Contains("the reader fell apart", StringComparison.Ordinal));
        var without =
            OutputFiles.Create(
                CutPlan.Create(
                    BuckDesign.Create(OutlineReader.Read(svg, "plate.svg"),
                        Spec with { Vents = new() { Pattern = VentPatterns.Given } }), new()), new());
        Assert.Equal(without.Select(f => f.Path), files.Select(f => f.Path));
        // Those that number the findings have some more to number.
        Assert.All(files.Zip(without)
            .Where(p => p.First.Path is not (OutputFiles.SummaryPath or OutputFiles.ReportPath or OutputFiles.PreviewPath)),
            p => Assert.Equal(p.Second.Content, p.First.Content));
    }

    [Fact]
    public void A_jig_whose_name_would_make_a_bad_file_name_is_named()
    {
        foreach (var name in (string[])["../lid", "", "Lid", "RING"])
        {
            var spec = Spec with { Jig = new() { TrimHeight = 12 } };

            var findings = BuckDesign.Create(Plate, spec, Extensions.BuiltIn.With(new Lid(name)).Design).Findings;

            Assert.Contains(findings, f => f.Id == "plugin-failed" && f.Message.Contains("\"lid\"", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Settings_reach_the_part_of_their_name_and_are_refused_by_it()
    {
        var all = PluginSet.Load([PluginFiles.Pegboard]).AddTo(Extensions.BuiltIn);
        Job Read(string settings) => JobFile.Read(
            "[outline]\nfile = \"x.svg\"\n[buck]\ndepth = 24\n[[stock]]\nthickness = 6\n[base]\nstock = \"6 "
            + "mm\"\n[sheet]\n[vents]\npattern = \"Pegboard\"\n" + settings, "job.toml", null, all);

        Vec2[] Places(Job job) =>
            [.. job.Buck.Vents!.Pattern.Places(new(new(Loop.Rectangle(new(0, 0, 100, 10)), []), Region.Empty), job.Buck.Vents)];
        Assert.Equal([new(0, 0), new(25.4, 0), new(50.8, 0), new(25.4 * 3, 0)], Places(Read("")));
        Assert.Equal([new(5, 3), new(45, 3), new(85, 3)], Places(Read("[settings.pegboard]\npitch = 40\nx = 5\ny = \"3\"")));
        Assert.Contains("line 12: the plug-in refuses its settings: the pitch is 2 mm",
            Assert.Throws<JobFileException>(() => Read("[settings.pegboard]\npitch = 2")).Message);
        Assert.Contains("\"colour\" is not known",
            Assert.Throws<JobFileException>(() => Read("[settings.pegboard]\ncolour = 2")).Message);
        Assert.Contains("no plug-in part called \"grid\" takes settings",
            Assert.Throws<JobFileException>(() => Read("[settings.grid]\npitch = 2")).Message);
        Assert.Contains("it must be walls or grid or given or pegboard",
            Assert.Throws<JobFileException>(() => Read("").ToString() + JobFile.Read(
            "[outline]\nfile = \"x.svg\"\n[buck]\ndepth = 24\n[[stock]]\nthickness = 6\n[vents]\npattern = \"stars\"", "job.toml",
            null, all)).Message);
        Assert.Contains("no plug-in provides any", Assert.Throws<JobFileException>(() => JobFile.Read(
            "[outline]\nfile = \"x.svg\"\n[buck]\ndepth = 24\n[[stock]]\nthickness = 6\n[output]\nformats = [\"ngc\"]",
            "job.toml", null, all)).Message);
    }

    private static string Card(ImmutableArray<OutputFile> files) =>
        Encoding.UTF8.GetString([.. files.Single(f => f.Path == OutputFiles.ProcessCardPath).Content]);

    private static ImmutableArray<FindingReport> Findings(ImmutableArray<OutputFile> files) =>
        SummaryJson.Read(files.Single(f => f.Path == OutputFiles.SummaryPath).Content).Findings;

    private sealed class Corners : IVentPattern
    {
        public string Name => "corners";

        public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec) => [new(-15, -15), new(115, 95), new(50, 40)];
    }

    private sealed class HeavyCheck : IDesignCheck
    {
        public string Name => "heavy";

        public IEnumerable<Finding> Run(DesignView design) =>
            [new("heavy", Severity.Note, "so much wood",
                "use less") { Value = design.Layers.Sum(l => l.Wood.Area * (l.Top - l.Bottom)), Limit = 0 }];
    }

    private sealed class Lid(string layer = "LID") : IJig
    {
        public string Name => "lid";

        public JigParts? Make(PartShell part, TrimmingSpec spec) =>
            new([PlainLayers
                .Create(1, LayerRole.Jig, layer, spec.Stack.Stock[0], 0, part.Moved(PartShell.Filled(part.Outside(0)), 2),
                    [], 6)], []);
    }

    private sealed class CorkCatalog : ICatalogSource
    {
        public string Name => "cork";

        public Catalog AddTo(Catalog onto) =>
            CatalogFile.Read("[[stock]]\nid = \"cork-10\"\nname = \"Cork 10\"\nthickness = 10\nsource = \"measured\"",
                Name, onto);
    }

    private sealed class CornerList : IOutlineFormat
    {
        public string Name => "corner list";

        public bool Recognises(ReadOnlySpan<byte> content) => content.StartsWith("corners"u8);

        public Drawing Read(byte[] content, string name, OutlineOptions options)
        {
            Vec2[] corners =
                [.. Encoding.UTF8.GetString(content).Split('\n').Skip(1).Where(l => l.Length > 0).Select(l => l.Split(' '))
                .Select(p =>
                    new Vec2(double.Parse(p[0], System.Globalization.CultureInfo.InvariantCulture),
                        double.Parse(p[1], System.Globalization.CultureInfo.InvariantCulture)))];
            ImmutableArray<Curve> lines = [.. corners.Select((c, i) => new LineCurve(c, corners[(i + 1) % corners.Length]))];
            return new([new(lines, true, "the list")], "mm", []);
        }
    }

    private sealed class PathCount(string ending, bool boardsOnly) : ICutFileFormat
    {
        public string Name => "count";

        public string Extension => ending;

        public bool BoardsOnly => boardsOnly;

        public ImmutableArray<byte> Write(CutDrawing drawing) =>
            [.. Encoding.ASCII.GetBytes(FormattableString.Invariant($"{drawing.Paths.Length}"))];
    }

    private sealed class Customer : IReportSection
    {
        public string Title => "Customer";

        public IEnumerable<string> Lines(CutPlan plan) =>
            [$"The baker on the quay; {(plan.Boards.Length > 0 ? "one board is enough." : "no board at all.")}"];
    }
}
