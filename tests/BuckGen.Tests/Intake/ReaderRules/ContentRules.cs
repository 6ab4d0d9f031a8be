using System.IO.Compression;
using System.Text;
using BuckGen.Tests.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>The bytes say what a file is, and how much of it is borne.</summary>
[Trait("Tier", "slow")]
public class ContentRules
{
    private static readonly byte[] Mark = Encoding.UTF8.GetPreamble();
    private static readonly byte[] Disc = Files.SvgFile("<circle cx='50' cy='50' r='10'/>");

    public static TheoryData<string, byte[]> Readable => new()
    {
        { "DXF", DxfText.File(DxfText.Circle(0, 0, 10)) },
        { "DXF with a UTF-8 mark", [.. Mark, .. DxfText.File(DxfText.Circle(0, 0, 10))] },
        { "SVG", Disc },
        { "SVG with a UTF-8 mark", [.. Mark, .. Disc] },
        { "SVG after blank lines", [.. "\r\n \t"u8, .. Disc] },
        { "packed SVG", Packed(Disc) },
        { "SVG in UTF-16", [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(Encoding.UTF8.GetString(Disc))] },
    };

    [Theory]
    [MemberData(nameof(Readable))]
    public void A_file_is_read_as_what_it_is_under_any_name(string kind, byte[] content)
    {
        foreach (var name in new[] { "a.dxf", "a.svg", "a" })
            Assert.True(Math.Abs(OutlineArea(content, name) - 100 * Math.PI) < 0.01, $"{kind} as {name}");
    }

    [Fact]
    public void A_binary_DXF_is_known_by_its_first_bytes() =>
        Assert.Equal(1, Files.Read(Corpus.File("dxf/ez_binary_r2000.dxf").Content, "a.svg").LoopCount);

    [Theory]
    [InlineData("BM6\0\0\0", "BMP")]
    [InlineData("AC1015\0\0", "DWG")]
    [InlineData("AutoCAD Binary DXF\n\0", "binary DXF")]
    [InlineData("<html><body/></html>", "<html>")]
    [InlineData("hello", "not a DXF file")]
    public void What_is_no_outline_is_called_what_it_is(string content, string kind) =>
        Assert.Contains(kind, Files.RefusalOf(Encoding.Latin1.GetBytes(content), "a.svg"));

    [Fact]
    public void A_DXF_of_more_bytes_than_the_limit_is_refused_before_it_is_read() =>
        Assert.Contains("larger than 67108864 bytes",
            Files.RefusalOf(new byte[64 * 1024 * 1024 + 1].Select(_ => (byte)'0').ToArray()));

    [Fact]
    public void An_SVG_of_more_bytes_than_the_limit_is_refused_before_it_is_read() =>
        Assert.Contains("67108864 bytes", Files.RefusalOf([.. "<svg>"u8, .. new byte[64 * 1024 * 1024]]));

    [Fact]
    public void An_SVG_of_more_elements_than_the_limit_is_refused() =>
        Assert.Contains("more than 100000 elements",
            Files.RefusalOf(Files.SvgFile(string.Concat(Enumerable.Repeat("<g/>", 100_001)))));

    [Fact]
    public void Path_data_beyond_the_limit_are_refused() =>
        Assert.Contains("200 characters of path data",
            Files.RefusalOf(Files.SvgFile($"<path d='M0 0{string.Concat(Enumerable.Repeat("h1", 10_000_100))}'/>")));

    private static double OutlineArea(byte[] content, string name) => Files.Read(content, name).Region.Area;

    private static byte[] Packed(byte[] content)
    {
        using var result = new MemoryStream();
        using (var packer = new GZipStream(result, CompressionLevel.Fastest)) packer.Write(content);
        return result.ToArray();
    }
}
