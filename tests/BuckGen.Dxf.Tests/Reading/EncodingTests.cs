using System.Text;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Reading;

public class EncodingTests
{
    private const string OnUmlaut = "0 LINE|8 Fräsen|10 1|20 2|11 3|21 4";

    [Theory]
    [InlineData("9 $ACADVER|1 AC1015|9 $DWGCODEPAGE|3 ANSI_1252", 1252)]
    [InlineData("9 $ACADVER|1 AC1009|9 $DWGCODEPAGE|3 dos850", 850)]
    [InlineData("9 $ACADVER|1 AC1015|9 $DWGCODEPAGE|3 ISO8859-1", 28591)]
    [InlineData("9 $ACADVER|1 AC1021|9 $DWGCODEPAGE|3 ANSI_1252", 65001)]
    [InlineData("9 $ACADVER|1 AC1015", 65001)]
    public void Names_are_decoded_as_the_header_says(string header, int codePage)
    {
        var encoding = CodePagesEncodingProvider.Instance.GetEncoding(codePage) ?? Encoding.GetEncoding(codePage);
        var drawing = DxfReader.Read(encoding.GetBytes(Sample.Header(header, OnUmlaut)));
        Assert.Equal("Fräsen", Assert.Single(drawing.Entities).Layer);
        Assert.Empty(drawing.Notes);
    }

    [Fact]
    public void Bytes_that_are_not_UTF8_are_read_as_Windows_Latin_and_noted()
    {
        var drawing = DxfReader.Read(Encoding.Latin1.GetBytes(Sample.Header("9 $ACADVER|1 AC1021", OnUmlaut)));
        Assert.Equal("Fräsen", Assert.Single(drawing.Entities).Layer);
        Assert.Equal(DxfNoteKind.UndecodableText, Assert.Single(drawing.Notes).Kind);
    }

    [Fact]
    public void An_unknown_code_page_is_noted() =>
        Assert.Equal(DxfNoteKind.UndecodableText,
            Assert.Single(Sample.Read(Sample.Header("9 $DWGCODEPAGE|3 KLINGON")).Notes).Kind);

    [Theory]
    [InlineData(@"\U+043a\U+043E", "ко")]
    [InlineData(@"a\U+00e4b", "aäb")]
    [InlineData(@"\U+12", @"\U+12")]
    [InlineData(@"\U+zzzz", @"\U+zzzz")]
    public void Unicode_escapes_in_names_are_resolved(string written, string expected) =>
        Assert.Equal(expected, Sample.ReadOne<DxfLine>($"0 LINE|8 {written}|10 1|20 2|11 3|21 4").Layer);
}
