using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Xml;
using AngleSharp.Html.Parser;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Files;
using BuckGen.Output.Reports;
using BuckGen.Tests.Design.Bucks;
using UglyToad.PdfPig;
using Xunit;

namespace BuckGen.Tests.ForeignTexts;

/// <summary>
/// All files of a job whose every name is foreign text: they are built as those of a job with plain names, and nothing hidden
/// is in them.
/// </summary>
[Trait("Tier", "slow")]
public class JobFilesTests
{
    /// <summary>Texts that share a run, to keep it short.</summary>
    private const int Together = 8;

    private static readonly ImmutableArray<OutputFile> Plain = Files("Boathouse", "Boathouse");

    public static TheoryData<int> Groups => [.. Enumerable.Range(0, (ForeignText.All.Count + Together - 1) / Together)];

    [Theory]
    [MemberData(nameof(Groups))]
    public void Every_file_is_what_it_would_be_with_plain_names(int group)
    {
        var texts = ForeignText.All.Skip(group * Together).Take(Together).ToArray();
        // What starts a cell or a line matters too.
        var (text, shown) = (string.Join(" | ", texts.Select(t => t.Text)), string.Join(" | ", texts.Select(t => t.Shown)));

        var files = Files(text, text);

        Assert.Equal(Plain.Length, files.Length);
        Assert.All(files, f => Assert.Matches("^[a-z0-9./-]+$", f.Path));
        foreach (var (file, plain) in files.Zip(Plain)) Check(file, plain, text, shown);
    }

    private static void Check(OutputFile file, OutputFile plain, string text, string shown)
    {
        switch (Path.GetExtension(file.Path))
        {
            case ".dxf" or ".ngc" or ".csv" or ".stl" or ".glb":
                // No name gets into what a machine reads.
                Assert.True(file.Content.SequenceEqual(plain.Content), file.Path);
                break;
            case ".svg":
                Assert.Equal(Elements(plain), Elements(file));
                break;
            case ".html":
                var (page, plainPage) = (Page(file), Page(plain));
                Assert.Equal(plainPage.All.Select(e => $"{e.TagName} {string.Join(' ', e.Attributes.Select(a => a.Name))}"),
                    page.All.Select(e => $"{e.TagName} {string.Join(' ', e.Attributes.Select(a => a.Name))}"));
                Assert.Equal(plainPage.Scripts.Select(s => s.TextContent), page.Scripts.Select(s => s.TextContent));
                Assert.Equal(shown.Trim(), page.QuerySelector("h1")!.TextContent.Trim());
                Assert.Contains(shown, page.Body!.TextContent, StringComparison.Ordinal);
                Assert.Null(ForeignText.Hidden(Utf8(file), "\n"));
                break;
            case ".txt":
                Assert.Null(ForeignText.Hidden(Utf8(file), "\n"));
                Assert.Contains($"\n{shown}\n", Utf8(file), StringComparison.Ordinal);
                Assert.Contains("\nBEFORE THE END\n", Utf8(file), StringComparison.Ordinal);
                break;
            case ".json":
                var json = JsonDocument.Parse(Utf8(file)).RootElement;
                Assert.Equal(string.Concat(text.EnumerateRunes()), json.GetProperty("title").GetString());
                Assert.Null(ForeignText.Hidden(Utf8(file), "\n"));
                break;
            case ".pdf":
                using (var read = PdfDocument.Open([.. file.Content])) Assert
                    .Contains(shown, read.Information.Title, StringComparison.Ordinal);
                break;
            case ".png":
                Assert.Equal(plain.Content[..24], file.Content[..24]);
                break;
            default:
                Assert.Fail($"{file.Path}: a kind of file that nobody checks");
                break;
        }
    }

    private static ImmutableArray<OutputFile> Files(string title, string name)
    {
        var stock = new Stock(name, 12);
        var plan = CutPlan.Create(
            BuckDesign.Create(Outline.FromRegion(name, Shapes.Counter(80, 60, 40, 20)), PlainBuck.Spec with
            {
                Depth = 36,
                Stock = [stock],
                Base = new(stock),
                Vents = new(),
                Jig = new() { TrimHeight = 24 },
                Panel = new(stock),
                Sheet = new() { Plastic = Catalog.BuiltIn.FindPlastic("petg")! with { Name = name } },
                Checks = new() { Silenced = [new("air-too-slow", name)] },
            }), new());
        return OutputFiles.Create(plan, new(title, Svg: true, Drilling: new())
        {
            Model = true,
            Rates = new() { Currency = name, Labour = 40, GlueMinutes = 5 },
            Sections = [new Section(name)],
        }, force: true);
    }

    private static AngleSharp.Html.Dom.IHtmlDocument Page(OutputFile file) => new HtmlParser().ParseDocument(Utf8(file));

    private static IEnumerable<string> Elements(OutputFile file)
    {
        Assert.Null(ForeignText.Hidden(Utf8(file), "\n"));
        var read = new XmlDocument();
        read.Load(XmlReader.Create(new MemoryStream([.. file.Content]), new() { CheckCharacters = true }));
        return read.GetElementsByTagName("*").Cast<XmlElement>().Select(e => e.Name);
    }

    private static string Utf8(OutputFile file) => Encoding.UTF8.GetString([.. file.Content]);

    private sealed class Section(string text) : IReportSection
    {
        public string Title => "Before the end";

        public IEnumerable<string> Lines(CutPlan plan) => [text];
    }
}
