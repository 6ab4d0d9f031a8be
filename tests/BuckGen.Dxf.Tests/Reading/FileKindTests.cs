using System.Text;
using BuckGen.Dxf.Reading;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Reading;

public class FileKindTests
{
    [Theory]
    [InlineData("", "empty")]
    [InlineData("AC1032\0\0\0\0", "DWG")]
    [InlineData("<?xml version=\"1.0\"?>\n<svg/>", "SVG")]
    [InlineData("<html></html>", "XML or HTML")]
    [InlineData("%PDF-1.4", "PDF")]
    [InlineData("Dear customer,\nplease cut this.\n", "\"Dear customer,\"")]
    [InlineData("8\nA\n", "not a DXF file")]
    public void What_is_not_dxf_is_named(string content, string expected) =>
        Assert.Contains(expected, Sample.Refused(content).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(new byte[] { 0x89, (byte)'P', (byte)'N', (byte)'G' }, "PNG")]
    [InlineData(new byte[] { 0x1F, 0x8B, 8, 0 }, "gzip")]
    [InlineData(new byte[] { 0xFF, 0xFE, (byte)'0', 0 }, "UTF-16")]
    [InlineData(new byte[] { (byte)'0', 0, 10, 0, (byte)'S', 0, (byte)'E', 0 }, "UTF-16")]
    public void Foreign_bytes_are_named(byte[] content, string expected) =>
        Assert.Contains(expected, Assert.Throws<DxfException>(() => DxfReader.Read(content)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_NUL_byte_is_refused_with_its_line()
    {
        var exception = Sample.Refused(Sample.Entities(Sample.Line).Replace("\n4\n", "\n4\0\n", StringComparison.Ordinal));
        Assert.Equal(16, exception.Line);
    }

    [Fact]
    public void A_UTF8_mark_is_skipped()
    {
        var bytes = Encoding.UTF8.GetPreamble().Concat(Encoding.UTF8.GetBytes(Sample.Entities(Sample.Line))).ToArray();
        Assert.Single(DxfReader.Read(bytes).Entities);
    }
}
