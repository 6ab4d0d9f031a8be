using System.Text;
using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Tags;

public class SinkTests
{
    [Theory]
    [InlineData(0, "0.0")]
    [InlineData(-1e-9, "0.0")]
    [InlineData(80, "80.0")]
    [InlineData(1.5, "1.5")]
    [InlineData(-2.25, "-2.25")]
    [InlineData(1.0 / 3, "0.333333")]
    [InlineData(1e-5, "0.00001")]
    [InlineData(123456789.123456, "123456789.123456")]
    [InlineData(1e9, "1000000000.0")]
    public void Numbers_are_fixed_with_at_most_six_decimals(double value, string expected) =>
        Assert.Equal(expected, Written(value));

    [Fact]
    public void Negative_zero_loses_its_sign() => Assert.Equal("0.0", Written(double.NegativeZero));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Numbers_that_are_not_finite_are_refused(double value)
    {
        Assert.Throws<DxfException>(() => new DxfTagList().Write(10, value));
        Assert.Throws<DxfException>(() => new DxfTextSink(Stream.Null).Write(10, value));
    }

    [Theory]
    [InlineData("Fräsen")]
    [InlineData("two\nlines")]
    [InlineData("tab\t")]
    public void Text_outside_printable_ASCII_is_refused(string value) =>
        Assert.Throws<DxfException>(() => new DxfTextSink(Stream.Null).Write(8, value));

    [Fact]
    public void Text_has_codes_in_three_columns_and_CRLF()
    {
        using var stream = new MemoryStream();
        var sink = new DxfTextSink(stream);
        sink.Write(0, "LINE");
        sink.Write(62, -5);
        sink.Write(210, 1.5);
        sink.Write(1071, 7);
        Assert.Equal("  0\r\nLINE\r\n 62\r\n-5\r\n210\r\n1.5\r\n1071\r\n7\r\n", Encoding.ASCII.GetString(stream.ToArray()));
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("fa-IR")]
    [InlineData("sv-SE")]
    public void Numbers_do_not_depend_on_the_culture(string culture) =>
        Assert.Equal("-1234.5", Drawings.Under(culture, () => Written(-1234.5)));

    private static string Written(double value)
    {
        var list = new DxfTagList();
        list.Write(40, value);
        return Assert.Single(list.Tags).Value;
    }
}
