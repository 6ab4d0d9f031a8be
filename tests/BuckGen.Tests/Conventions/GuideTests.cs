using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Checks;
using BuckGen.Design.Specs;
using BuckGen.Findings;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Jobs;
using BuckGen.Output.Files;
using BuckGen.Output.Pictures.Svg;
using BuckGen.Output.Pictures.Thickness;
using BuckGen.Plugins;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Conventions;

/// <summary>Every line of C# in the guides stands here, or in the README's own test, and runs.</summary>
[Collection(nameof(CurrentFolder))]
public sealed partial class GuideTests
{
    private static readonly string Folder = Path.Combine(Repository.Root, "src/docs/guides");

    public static TheoryData<string> Guides =>
        [.. Directory.GetFiles(Folder, "*.md").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Guides))]
    public void Every_line_of_a_guide_is_compiled_here(string guide)
    {
        string[] sources = [ThisFile(), Path.Combine(Path.GetDirectoryName(ThisFile())!, "ReadmeSnippetTests.cs")];
        var lines = sources.SelectMany(File.ReadAllLines).Select(l => l.Trim()).ToHashSet();

        var snippets = Fence().Matches(File.ReadAllText(Path.Combine(Folder, guide)))
            .SelectMany(f => f.Groups[1].Value.Split('\n')).Select(l => l.Trim());

        Assert.All(snippets.Where(l => l.Length > 0), l => Assert.Contains(l, lines));
    }

    [Fact]
    public void The_guides_have_snippets() =>
        Assert.InRange(Guides.Sum(g => Fence().Count(File.ReadAllText(Path.Combine(Folder, g.Data)))), 6, 100);

    [Fact]
    public void What_the_guide_to_embedding_shows_runs()
    {
        var (told, sent, steps) = (new List<string>(), new List<string>(), new List<DesignProgress>());
        void Tell(string message, string remedy) => told.Add(message + remedy);
        void Send(string path, System.Collections.Immutable.ImmutableArray<byte> content) => sent.Add($"{path} {content.Length}");
        var progress = new Listener<DesignProgress>(steps.Add);
        var stop = TestContext.Current.CancellationToken;
        using var upload = File.OpenRead(Path.Combine(Repository.Root, "examples/specimen-box/outline.dxf"));

        var reading = OutlineOptions.Default with { Units = "mm" };
        var drawing = OutlineReader.Read(upload, "upload.dxf", reading, stop);
        var wanted = new BuckSpec
        {
            Depth = 36,
            Draft = 5,
            Stock = [new("MDF 12", 11.9)],
            Sheet = new() { Gauge = 1, Plastic = Catalog.BuiltIn.FindPlastic("petg") },
        };
        var made = BuckDesign.Create(drawing, wanted, extensions: null, progress, stop);
        foreach (var finding in made.Findings.Where(f => f.Severity == Severity.Error)) Tell(finding.Message, finding.Remedy);
        foreach (var file in OutputFiles.Create(CutPlan.Create(made, new()), new("Order 17"), cancellation: stop))
            Send(file.Path, file.Content);

        var thickest = made.Layers.MaxBy(layer => layer.Thickness)!;
        var glueArea = made.Layers.Sum(layer => layer.Region.Area);
        var draw = made.Blank!.Ratios.Areal;

        var formed = BuckDesign.Create(drawing, wanted with { Prediction = new() }, extensions: null, progress, stop);
        var thinnest = formed.Formed!.Thinnest!;
        var map = SvgPicture.Write(ThicknessMap.Draw(formed)!);

        Assert.InRange(thinnest.Thickness, 0.2, 0.9);
        Assert.InRange(map.Length, 10_000, 1_000_000);
        Assert.Empty(told);
        Assert.Contains(sent, s => s.StartsWith("layers/layer-03.dxf", StringComparison.Ordinal));
        Assert.Equal([.. Enumerable.Range(1, 8), .. Enumerable.Range(1, 9)], steps.Select(s => s.Number));
        Assert.Equal(11.9, thickest.Thickness, 1e-9);
        Assert.InRange(glueArea, 20_000, 40_000);
        Assert.InRange(draw, 1.1, 2);
    }

    [Fact]
    public void A_whole_job_file_runs()
    {
        var before = Directory.GetCurrentDirectory();
        try
        {
            Directory.SetCurrentDirectory(Path.Combine(Repository.Root, "examples/boathouse-sign"));
            var result = JobRunner.Run(File.ReadAllText("job.toml"), "job.toml", new JobFolder("."));
            var files = result.Files;

            Assert.Contains(files, f => f.Path == "panel/panel-01.dxf");
        }
        finally
        {
            Directory.SetCurrentDirectory(before);
        }
    }

    [Theory]
    [InlineData(100, false)]
    [InlineData(900, true)]
    public void What_the_guide_to_plug_ins_shows_runs(double side, bool told)
    {
        var outline = Outline.FromRegion("plate", Formed.Rectangle(side, side));
        var spec = new BuckSpec { Depth = 36, Stock = [new("MDF 12", 12, 2000, 2000)] };

        var extensions = Extensions.BuiltIn.With(new WeightCheck());
        var heavy = BuckDesign.Create(outline, spec, extensions.Design);

        Assert.Equal(told, heavy.Findings.Any(f => f.Id == "too-heavy"));
    }

    [GeneratedRegex("```csharp\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Fence();

    private static string ThisFile([CallerFilePath] string path = "") => path;

    /// <summary>Tells at once, on the same thread.</summary>
    private sealed class Listener<T>(Action<T> hear) : IProgress<T>
    {
        public void Report(T value) => hear(value);
    }
}

public sealed class WeightCheck : IDesignCheck
{
    private const double Limit = 15;

    public string Name => "weight";

    public IEnumerable<Finding> Run(DesignView design)
    {
        // 750 kg/m3 is common for MDF; the catalog knows better for its own stocks.
        var kilograms = design.Layers
            .Sum(l => l.Wood.Area * (l.Top - l.Bottom) * (l.Stock.Material?.Density?.Middle ?? 750) * 1e-9);
        if (kilograms > Limit)
            yield return new("too-heavy", Severity.Warning, $"The buck weighs {kilograms:0} kg.",
                "Leave the middle of the lower layers out.")
            {
                Value = kilograms,
                Limit = Limit,
            };
    }
}
