using System.Text;
using Xunit;

namespace BuckGen.Tests.Intake.Outlines;

public class ContentKindTests
{
    public static TheoryData<byte[], string> Foreign => new()
    {
        { [], "empty" },
        { [0x89, .. "PNG\r\n"u8], "PNG" },
        { [0xFF, 0xD8, 0xFF, 0xE0, 0, 16], "JPEG" },
        { [.. "GIF89a"u8], "GIF" },
        { [.. "%PDF-1.7"u8], "PDF" },
        { [.. "%!PS-Adobe-3.0"u8], "PostScript" },
        { [.. "PK\u0003\u0004"u8], "zip" },
        { [.. "AC1032"u8, 0, 0, 0], "DWG" },
        { [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("0\nSECTION\n")], "UTF-16" },
    };

    [Theory]
    [MemberData(nameof(Foreign))]
    public void A_file_that_is_no_drawing_is_refused_by_what_it_is(byte[] content, string kind) =>
        Assert.Contains(kind, Reading.Refusal(content));

    [Fact]
    public void The_content_decides_and_not_the_name()
    {
        var dxf = BuckGen.Intake.Reading.OutlineReader.Read(DxfText.File(DxfText.Circle(0, 0, 5)), "circle.svg");
        Assert.Equal(25 * Math.PI, dxf.Region.Area, 1e-9);
    }
}
