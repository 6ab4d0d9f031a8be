using System.Text;
using System.Text.Json;
using System.Xml;
using AngleSharp.Html.Parser;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Cutting.Drilling;
using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Writing;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Outlines;
using BuckGen.Jobs;
using BuckGen.Output.Models;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Pdf;
using BuckGen.Output.Pictures.Svg;
using BuckGen.Output.Reports;
using BuckGen.Output.Reports.Page;
using BuckGen.Tests.Design.Bucks;
using UglyToad.PdfPig;
using Xunit;

namespace BuckGen.Tests.ForeignTexts;

/// <summary>
/// Each writer, given each text: another reader finds the text, whole and visible, and nothing else in its place.
/// </summary>
[Trait("Tier", "slow")]
public class WriterTests
{
    private static readonly Bounds Page = new(0, 0, 200, 100);

    public static TheoryData<string> Names => ForeignText.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void SVG_of_a_picture(string name)
    {
        var text = ForeignText.Find(name);
        var picture = new Picture(text.Text, Page, [
            new PictureText(new(10, 10), text.Text, 4, TextAlign.Start, "#161616"),
            new PictureLink("place", "target", text.Text, []),
        ]);

        var read = Xml([.. SvgPicture.Write(picture)]);

        Assert.Equal(["svg", "title", "desc", "rect", "text", "a", "title"], Elements(read));
        Assert.Equal([text.Shown, text.Shown, text.Shown], read.GetElementsByTagName("*").Cast<XmlElement>()
            .Where(e => e.Name is "title" or "text").Select(e => e.InnerText));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void SVG_for_a_machine(string name)
    {
        var text = ForeignText.Find(name);

        var read = Xml([.. SvgCutFile.Write(new(text.Text, [CutPath.FromLoop(CutLayer.CutOuter, Loop.Rectangle(Page))], Page))]);

        Assert.Equal(text.Shown, read.GetElementsByTagName("title")[0]!.InnerText);
        Assert.Equal(["svg", "title", "g", "path"], Elements(read));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void HTML(string name)
    {
        var text = ForeignText.Find(name);
        var page = new Html();
        page.Raw("<!DOCTYPE html><html><head>").Line($"<title>{text.Text}</title>").Raw("</head><body>")
            .Line($"<p title=\"{text.Text}\">{text.Text}</p>").Raw("<pre>").Raw(Html.EscapedLines($"first\n{text.Text}"))
            .Raw("</pre></body></html>");

        var read = new HtmlParser().ParseDocument(page.ToString());

        Assert.Equal(["HTML", "HEAD", "TITLE", "BODY", "P", "PRE"], read.All.Select(e => e.TagName));
        Assert.Equal(text.Shown, read.QuerySelector("p")!.TextContent);
        Assert.Equal(text.Shown, read.QuerySelector("p")!.GetAttribute("title"));
        Assert.Equal(["title"], read.QuerySelector("p")!.Attributes.Select(a => a.Name));
        // A page's title is trimmed by every reader.
        Assert.Equal(text.Shown.Trim(), read.Title);
        Assert.Null(ForeignText.Hidden(page.ToString(), "\n"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void PDF(string name)
    {
        var text = ForeignText.Find(name);
        var picture = new Picture(text.Text, Page, [new PictureText(new(10, 10), text.Text, 4, TextAlign.Start, "#161616")]);

        using var read = PdfDocument.Open([.. PdfPicture.Write([picture])]);

        Assert.Equal(text.Shown, read.Information.Title);
        // The standard font has Latin letters only.
        Assert.Equal(string.Concat(text.Shown.EnumerateRunes().Select(r => r.Value <= 0xFF ? r.ToString() : "?")),
            read.GetPage(1).Text);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Comma_separated_values(string name)
    {
        var text = ForeignText.Find(name);

        var file = Encoding.UTF8.GetString([.. DrillCsv.Write([new(new(1, -2), 3, 4, 1, text.Text)])]);

        var rows = Csv.Read(file);
        Assert.Equal(["1.000", "-2.000", "3.000", "4.000", "1"], rows[1][..5]);
        Assert.Equal(2, rows.Count);
        Assert.Equal(7, rows[1].Length);
        var cell = rows[1][6];
        Assert.Equal(text.Shown, cell.StartsWith('\'') ? cell[1..] : cell);
        Assert.DoesNotMatch("^[=+@\t\r-]|^[＝＋－＠]", cell);
        Assert.Null(ForeignText.Hidden(file, "\r\n"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void GlTF(string name)
    {
        var text = ForeignText.Find(name);
        var file = GlbFile.Write(BuckModel.Stepped(PlainBuck.Create(Shapes.Rectangle(40, 30))), text.Text);

        var json = JsonDocument.Parse(file.AsMemory().Slice(20, BitConverter.ToInt32([.. file[12..16]]))).RootElement;

        Assert.Equal(WellFormed(text.Text), json.GetProperty("nodes")[0].GetProperty("name").GetString());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void JSON_of_an_outline(string name)
    {
        var text = ForeignText.Find(name);

        var file = Encoding.UTF8
            .GetString([.. SummaryJson.Write(OutlineReport.Create(Outline.FromRegion(text.Text, Shapes.Rectangle(40, 30))))]);

        Assert.Equal(WellFormed(text.Text), JsonDocument.Parse(file).RootElement.GetProperty("name").GetString());
        Assert.Null(ForeignText.Hidden(file, "\n"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void TOML_of_a_new_job(string name)
    {
        var text = ForeignText.Find(name);
        if (WellFormed(text.Text) != text.Text)
        {
            Assert.Contains("half a character", Assert.Throws<JobFileException>(() => JobTemplate.Text(text.Text)).Message);
            return;
        }

        var file = JobTemplate.Text(text.Text);

        Assert.Equal(text.Text, JobFile.Read(file, "job.toml").OutlineFile);
        Assert.Null(ForeignText.Hidden(file, "\n"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void DXF_refuses_it_as_the_name_of_a_layer(string name)
    {
        var text = ForeignText.Find(name);
        // One of the texts is a plain word.
        if (name == "device") return;
        foreach (var version in Enum.GetValues<DxfVersion>())
        {
            var refused = Assert.Throws<DxfException>(() => DxfWriter.Write(
                new DxfDrawing { Entities = [new DxfCircle(new(0, 0), 5) { Layer = text.Text }] }, version, new MemoryStream()));
            Assert.Contains("layer name", refused.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void DXF_takes_only_printable_ASCII_whatever_the_tag(string name)
    {
        var text = ForeignText.Find(name).Text;
        using var stream = new MemoryStream();
        var sink = new DxfTextSink(stream);
        if (text.Any(c => c is < ' ' or > '~')) Assert.Throws<DxfException>(() => sink.Write(1, text));
        else sink.Write(1, text);
        Assert.InRange(Encoding.ASCII.GetString(stream.ToArray()).Count(c => c == '\n'), 0, 2);
    }

    /// <summary>Lone surrogates can't be written in UTF-8; readers get the replacement character.</summary>
    private static string WellFormed(string text) => string.Concat(text.EnumerateRunes());

    private static XmlDocument Xml(byte[] file)
    {
        Assert.Null(ForeignText.Hidden(Encoding.UTF8.GetString(file), "\n"));
        var read = new XmlDocument { PreserveWhitespace = true };
        read.Load(XmlReader.Create(new MemoryStream(file), new() { CheckCharacters = true }));
        return read;
    }

    private static IEnumerable<string> Elements(XmlDocument read) =>
        read.GetElementsByTagName("*").Cast<XmlElement>().Select(e => e.Name);
}
