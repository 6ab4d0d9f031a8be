using System.Globalization;
using System.Text;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>Files for the tests of what a reader must hold to.</summary>
internal static class Files
{
    public const string Millimetres = "9\n$INSUNITS\n70\n4\n";

    /// <summary>A DXF from words "code value" with bars between, as one entity section.</summary>
    public static byte[] Entities(string tags) => DxfText.File(Tags(tags));

    /// <summary>Turns "10 2.5|20 3" into lines of code and value.</summary>
    public static string Tags(string tags) => string.Concat(tags.Split('|').Select(tag => tag.Replace(' ', '\n') + "\n"));

    /// <summary>A layer table of names, flags (code 70) and colours (code 62).</summary>
    public static string Layers(params (string Name, int Flags, int Colour)[] layers) =>
        "0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n"
        + string.Concat(layers
            .Select(l => string.Create(CultureInfo.InvariantCulture, $"0\nLAYER\n2\n{l.Name}\n70\n{l.Flags}\n62\n{l.Colour}\n")))
        + "0\nENDTAB\n0\nENDSEC\n";

    public static Outline Read(byte[] content, string name = "test.dxf") => OutlineReader.Read(content, name);

    public static Outline Read(string sections, params IEnumerable<string> entities) =>
        Read(DxfText.FileWith(Millimetres, sections, entities));

    /// <summary>An SVG of 100 x 100 mm whose user unit is the millimetre.</summary>
    public static byte[] SvgFile(string body, string before = "",
        string root = "width='100mm' height='100mm' viewBox='0 0 100 100'") =>
        Encoding.UTF8.GetBytes(
            $"{before}<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' {root}>{body}</svg>");

    /// <summary>Left, bottom, width and height, mm, as an SVG is read.</summary>
    public static double[] BoxOf(byte[] svg)
    {
        var b = Read(svg, "test.svg").Region.Bounds;
        return [.. new[] { b.MinX, b.MinY, b.Width, b.Height }.Select(v => Math.Round(v, 3) + 0)];
    }

    public static string RefusalOf(byte[] content, string name = "test.dxf") =>
        Assert.Throws<OutlineException>(() => OutlineReader.Read(content, name)).Message;
}
