using System.Collections.Immutable;
using System.Text;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Design.Venting;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Output.Files;
using BuckGen.Output.Reports;
using BuckGen.Plugins;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Plugins;

/// <summary>
/// The plug-in Evil does one deed after another: its part is named with what it did, everything else comes out as without it,
/// and nothing is thrown.
/// </summary>
[Trait("Tier", "slow")]
public sealed class EvilPluginTests : IDisposable
{
    private const string Svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" height=\"80mm\" viewBox=\"0 0 100 80\"><path d=\"M5 "
        + "5H95V75H5Z\"/></svg>";

    /// <summary>The same job without the plug-in: it asks for no vents of its own.</summary>
    private static readonly Lazy<SortedDictionary<string, ImmutableArray<byte>>> Without =
        new(() =>
            new(Made(Extensions.BuiltIn, VentPatterns.Given).Files.ToDictionary(f => f.Path, f => f.Content),
                StringComparer.Ordinal));

    private readonly string folder = Directory.CreateTempSubdirectory("buckgen-evil-").FullName;

    public void Dispose() => Directory.Delete(folder, true);

    [Theory]
    [InlineData("check: throw", "evil check", "it fell apart")]
    [InlineData("check: throw a stranger", "evil check", "StrangeException")]
    [InlineData("check: throw in the middle", "evil check", "half of it fell apart")]
    [InlineData("check: cancel", "evil check", "the server did not answer")]
    [InlineData("check: null list", "evil check", "it gave no list of findings")]
    [InlineData("check: null finding", "evil check", "finding 2 is null")]
    [InlineData("check: null message", "evil check", "finding 1 (evil) has a message that is null")]
    [InlineData("check: id with brackets", "evil check", "finding 1 has an id that is not made of")]
    [InlineData("check: unknown severity", "evil check", "finding 1 (evil) has the unknown severity 7")]
    [InlineData("check: place without numbers", "evil check", "finding 1 (evil) has a place that is not a place within 1 km")]
    [InlineData("check: value without number", "evil check", "finding 1 (evil) has a height, value or limit that is not")]
    [InlineData("check: fifty million", "evil check", "it gave more than 1000 findings")]
    [InlineData("check: never end", "evil check", "it gave more than 1000 findings")]
    [InlineData("check: change the layers", "evil check", "")]
    [InlineData("check: hang", "evil check", "it did not come back within 3 s")]
    [InlineData("section: throw", "Evil section", "it fell apart")]
    [InlineData("section: null list", "Evil section", "it gave no list of lines")]
    [InlineData("section: null line", "Evil section", "line 2 is null")]
    [InlineData("section: long line", "Evil section", "line 1 has 1000000 characters; the limit is 2000")]
    [InlineData("section: fifty million", "Evil section", "it gave more than 1000 lines")]
    [InlineData("section: hang", "Evil section", "it did not come back within 3 s")]
    [InlineData("pattern: throw", "evil-pattern", "it fell apart")]
    [InlineData("pattern: null list", "evil-pattern", "it gave no list of places")]
    [InlineData("pattern: places without numbers", "evil-pattern", "place 1 is not a place within 1 km")]
    [InlineData("pattern: fifty million", "evil-pattern", "it gave more than 10000 places")]
    [InlineData("pattern: hang", "evil-pattern", "it did not come back within 3 s")]
    [InlineData("jig: throw", "evil-jig", "it fell apart")]
    [InlineData("jig: no layers", "evil-jig", "it gave no list of layers")]
    [InlineData("jig: no findings", "evil-jig", "it gave no list of findings")]
    [InlineData("jig: null layer", "evil-jig", "layer 1 is null")]
    [InlineData("jig: no parts", "evil-jig", "layer EVIL 1: it gave no list of pieces")]
    [InlineData("jig: null part", "evil-jig", "layer EVIL 1: piece 1 is null")]
    [InlineData("jig: null shape", "evil-jig", "layer EVIL 1: piece 1 has no shape")]
    [InlineData("jig: no dowels", "evil-jig", "layer EVIL 1: it gave no list of dowel holes")]
    [InlineData("jig: dowel without numbers", "evil-jig", "layer EVIL 1: dowel hole 1 is not a place within 1 km")]
    [InlineData("jig: no name", "evil-jig", "layer 1 must be named in 1 to 20 capital letters A to Z")]
    [InlineData("jig: no stock", "evil-jig", "layer 1 (EVIL) has no stock")]
    [InlineData("jig: stock without numbers", "evil-jig", "layer 1 (EVIL) has a stock that can't be used")]
    [InlineData("jig: no height", "evil-jig", "layer 1 (EVIL) has no height")]
    [InlineData("jig: edges that cross", "evil-jig", "the edges of layer EVIL 1 cross, or run the wrong way round")]
    [InlineData("jig: a piece far away", "evil-jig", "layer EVIL 1: piece 1 has an edge that reaches farther than 1 km")]
    [InlineData("jig: a layer of the wall", "evil-jig", "layer 1 (EVIL) is neither for a jig nor for a panel")]
    [InlineData("jig: null finding", "evil-jig", "finding 1 is null")]
    [InlineData("jig: hang", "evil-jig", "it did not come back within 3 s")]
    [InlineData("writer: throw", "evil-writer", "it fell apart")]
    [InlineData("writer: no bytes", "evil-writer", "it gave no bytes")]
    [InlineData("writer: fail at the second file", "evil-writer", "enough written")]
    [InlineData("writer: hang", "evil-writer", "it did not come back within 3 s")]
    public void A_part_that_does_wrong_is_named_and_left_out(string deed, string part, string says)
    {
        var (outline, files) = Made(deed);

        var finding =
            Assert.Single(SummaryJson.Read(files.Single(f => f.Path == OutputFiles.SummaryPath).Content).Findings,
                f => f.Id == "plugin-failed");
        Assert.StartsWith($"The plug-in part \"{part}\" failed: ", finding.Message);
        Assert.Contains(says, finding.Message);
        Assert.Empty(outline.Notes);
        AssertSameAsWithout(files);
    }

    [Theory]
    [InlineData("recognises: throw", "it fell apart")]
    [InlineData("recognises: hang", "it did not come back within 3 s")]
    [InlineData("reader: throw", "it fell apart")]
    [InlineData("reader: null drawing", "it gave nothing")]
    [InlineData("reader: no paths", "it gave no list of paths")]
    [InlineData("reader: null path", "path 1 is null")]
    [InlineData("reader: no curves", "it gave no list of curves")]
    [InlineData("reader: null curve", "curve 1 is null")]
    [InlineData("reader: curve without numbers", "curve 2 has a coordinate that is not a place within 1 km")]
    [InlineData("reader: curve of its own", "curve 1 is none of the library's curves")]
    [InlineData("reader: no unit", "its unit is null")]
    [InlineData("reader: null note", "note 1 is null")]
    [InlineData("reader: change the file", "the file is gone")]
    [InlineData("reader: hang", "it did not come back within 3 s")]
    public void A_reader_that_does_wrong_is_named_and_the_next_one_is_asked(string deed, string says)
    {
        var (outline, files) = Made(deed);

        var note = Assert.Single(outline.Notes);
        Assert.Equal("plugin-failed", note.Kind);
        Assert.Contains("\"evil-reader\"", note.Message);
        Assert.Contains(says, note.Message);
        AssertSameAsWithout(files);
    }

    [Fact]
    public void A_reader_may_refuse_a_file_of_its_kind() =>
        Assert.Equal("plate.svg: not on a Sunday", Assert.Throws<OutlineException>(() => Made("reader: refuse")).Message);

    [Theory]
    [InlineData("start: throw", "EvilCheck: it fell apart")]
    [InlineData("start: throw a stranger", "EvilCheck: StrangeException")]
    [InlineData("start: hang", "it did not start within 3 s")]
    [InlineData("check: no name", "EvilCheck: its name must be made of")]
    [InlineData("check: name with brackets", "EvilCheck: its name must be made of")]
    [InlineData("check: name that throws", "EvilCheck: no name")]
    [InlineData("catalog: throw", "EvilCatalog: it fell apart")]
    [InlineData("catalog: null catalog", "EvilCatalog: it gave nothing")]
    [InlineData("catalog: no stocks", "EvilCatalog: it gave no list of stocks")]
    [InlineData("catalog: null stock", "EvilCatalog: stock 1 is null")]
    [InlineData("catalog: stock without thickness", "(evil) has no thickness")]
    [InlineData("catalog: thickness without number", "(thickness) is not from 0.2 to 100")]
    [InlineData("catalog: id with brackets", "has an id that does not begin with a letter")]
    public void A_plug_in_that_does_wrong_while_it_starts_is_left_out(string deed, string says)
    {
        var plugin = Assert.Single(Load(deed).Plugins);

        Assert.Contains(says, plugin.Problem);
        Assert.DoesNotContain(plugin.Parts,
            p => p.Name == (deed.StartsWith("catalog", StringComparison.Ordinal) ? "evil-catalog" : "evil check"));
        Assert.Equal(Extensions.BuiltIn.Catalog.Stock, Load(deed).AddTo(Extensions.BuiltIn).Catalog.Stock);
    }

    [Fact]
    public void A_catalog_that_is_whole_brings_its_stocks_on_top_of_any_other()
    {
        var onto = Extensions.BuiltIn with { Catalog = Extensions.BuiltIn.Catalog with { Stock = [] } };

        Assert.Equal(["evil"], Load("catalog: good").AddTo(onto).Catalog.Stock.Select(s => s.Id));
    }

    [Fact]
    public void A_jig_that_is_whole_is_cut() => Assert.Contains("jig/evil-01.dxf", Made("jig: good").Files.Select(f => f.Path));

    [Fact]
    public void What_is_changed_after_it_was_handed_over_does_not_change_the_design()
    {
        var all = Load("jig: change it later").AddTo(Extensions.BuiltIn);
        var design =
            BuckDesign.Create(Read(all), Spec(VentPatterns.Given), all.Design,
                cancellation: TestContext.Current.CancellationToken);
        Thread.Sleep(300);

        Assert.Equal("EVIL", Assert.Single(design.Accessories).Name);
    }

    [Fact]
    public void Words_with_brackets_are_words()
    {
        var finding =
            SummaryJson.Read(Made("check: message with brackets").Files
                .Single(f => f.Path == OutputFiles.SummaryPath).Content).Findings.Single(f => f.Id == "evil");

        Assert.Equal("it is [red]red[/] ] [", finding.Message);
    }

    [Fact]
    public void A_part_that_hung_once_is_not_called_again()
    {
        var calls = new List<PluginCall>();
        var all = Load("pattern: hang", new PluginRun { Call = TimeSpan.FromSeconds(1), Calls = new RecordingProgress(calls) })
            .AddTo(Extensions.BuiltIn);
        var pattern = all.VentPatterns.Single(p => p.Name == "evil-pattern");

        for (var i = 0; i < 3; i++)
            Assert.Throws<PluginException>(() =>
                pattern.Places(new(new(BuckGen.Geometry.Loop.Rectangle(new(0, 0, 1, 1)), []), BuckGen.Geometry.Region.Empty),
                    new()));

        Assert.Single(calls, c => c.Part == "evil-pattern");
    }

    [Fact]
    public void A_part_that_is_left_out_is_not_called_at_all()
    {
        var (_, files) = Made("check: exit", new PluginRun { LeftOut = [new(Plugin, "evil check", "it ended the program")] });

        Assert.Contains(SummaryJson.Read(files.Single(f => f.Path == OutputFiles.SummaryPath).Content).Findings,
            f => f.Message == "The plug-in part \"evil check\" failed: it ended the program.");
        Assert.Equal("it ended the program",
            Assert.Single(
                Load("start: exit", new PluginRun { LeftOut = [new(Plugin, "", "it ended the program")] }).Plugins).Problem);
    }

    [Fact]
    public void A_run_that_is_stopped_does_not_wait_for_a_plug_in()
    {
        using var stop = new CancellationTokenSource();
        var all = Load("check: hang",
            new PluginRun { Call = TimeSpan.FromHours(1), Calls = new Stopping(stop), Cancellation = stop.Token })
                .AddTo(Extensions.BuiltIn);

        Assert.ThrowsAny<OperationCanceledException>(() =>
            BuckDesign.Create(Read(all), Spec(VentPatterns.Given), all.Design, cancellation: CancellationToken.None));
    }

    private string Plugin => Path.Combine(folder, "Evil.dll");

    private static void AssertSameAsWithout(ImmutableArray<OutputFile> files)
    {
        var without = Without.Value;
        Assert.Equal(without.Keys, files.Select(f => f.Path).Where(p => !p.EndsWith(".evil", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal));
        // Those that show the findings have one more to show.
        Assert.All(files
            .Where(f => without.ContainsKey(f.Path)
                && f.Path is not (OutputFiles.SummaryPath or OutputFiles.ReportPath or OutputFiles.PreviewPath)),
                f => Assert.Equal(without[f.Path], f.Content));
    }

    private PluginSet Load(string deed, PluginRun? run = null)
    {
        File.WriteAllText(Path.Combine(folder, "Evil.txt"), deed);
        if (!File.Exists(Plugin)) File.Copy(PluginFiles.Evil, Plugin);
        run ??= new() { Call = TimeSpan.FromSeconds(deed.EndsWith("hang", StringComparison.Ordinal) ? 3 : 60) };
        // A busy machine is no deed of the plug-in.
        return PluginSet.Load([Plugin], run with { Start = TimeSpan.FromSeconds(deed == "start: hang" ? 3 : 60) });
    }

    private (Outline Outline, ImmutableArray<OutputFile> Files) Made(string deed, PluginRun? run = null)
    {
        var all = Load(deed, run).AddTo(Extensions.BuiltIn);
        return Made(all, all.VentPatterns.Single(p => p.Name == "evil-pattern"));
    }

    private static (Outline Outline, ImmutableArray<OutputFile> Files) Made(Extensions all, IVentPattern pattern)
    {
        var outline = Read(all);
        var plan = CutPlan.Create(BuckDesign.Create(outline, Spec(pattern), all.Design), new());
        return (outline, OutputFiles.Create(plan, new() { Formats = all.CutFileFormats, Sections = all.ReportSections }));
    }

    private static Outline Read(Extensions all) =>
        OutlineReader.Read(Encoding.UTF8.GetBytes(Svg), "plate.svg",
            OutlineOptions.Default with { Formats = all.OutlineFormats });

    private static BuckSpec Spec(IVentPattern pattern) => Formed.Spec(BuckKind.Male, 24, 5) with
    {
        Stock = [Formed.Mdf6],
        Base = new(Formed.Mdf6, 20, Formed.Mdf6),
        Vents = new() { Pattern = pattern },
        Former = new() { Opening = new(300, 300) },
    };

    private sealed class RecordingProgress(List<PluginCall> calls) : IProgress<PluginCall>
    {
        public void Report(PluginCall value)
        {
            if (value.Allowed is not null) calls.Add(value);
        }
    }

    private sealed class Stopping(CancellationTokenSource stop) : IProgress<PluginCall>
    {
        public void Report(PluginCall value)
        {
            if (value.Part == "evil check") stop.Cancel();
        }
    }
}
