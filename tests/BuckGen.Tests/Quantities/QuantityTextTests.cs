using System.Globalization;
using BuckGen.Quantities;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Quantities;

public class QuantityTextTests
{
    [Theory]
    [InlineData("36", 36)]
    [InlineData("36mm", 36)]
    [InlineData(" 36 mm ", 36)]
    [InlineData("36MM", 36)]
    [InlineData("3.6cm", 36)]
    [InlineData(".5mm", 0.5)]
    [InlineData("1m", 1000)]
    [InlineData("1in", 25.4)]
    [InlineData("1 inch", 25.4)]
    [InlineData("2 inches", 50.8)]
    [InlineData("1\"", 25.4)]
    [InlineData("1ft", 304.8)]
    [InlineData("1/2in", 12.7)]
    [InlineData("3/4\"", 19.05)]
    [InlineData("1 1/2 in", 38.1)]
    [InlineData("1-1/2in", 38.1)]
    [InlineData("2 1/4", 2.25)]
    [InlineData("-3mm", -3)]
    public void A_length_is_read_in_mm(string text, double millimetres)
    {
        // An inch is 25.4 mm exactly by the international agreement of 1959.
        Assert.True(QuantityText.TryLength(text, out var read));
        Assert.Equal(millimetres, read, 1e-12);
    }

    [Fact]
    public void A_whole_inch_is_exact()
    {
        Assert.True(QuantityText.TryLength("1in", out var read));
        Assert.Equal(25.4, read);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("mm")]
    [InlineData("wide")]
    [InlineData("12 parsecs")]
    [InlineData("12kg")]
    [InlineData("1/0in")]
    [InlineData("1/2/3in")]
    [InlineData("1 2 3")]
    [InlineData("12,5mm")]
    [InlineData("1e3mm")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("5deg")]
    [InlineData("--5mm")]
    [InlineData("-1/2in")]
    public void What_is_no_length_is_refused(string? text) => Assert.False(QuantityText.TryLength(text, out _));

    [Theory]
    [InlineData("5", 5)]
    [InlineData("5deg", 5)]
    [InlineData("5 degrees", 5)]
    [InlineData("2.5°", 2.5)]
    [InlineData("-1deg", -1)]
    public void An_angle_is_read_in_degrees(string text, double degrees)
    {
        Assert.True(QuantityText.TryAngle(text, out var read));
        Assert.Equal(degrees, read);
    }

    [Fact]
    public void Radians_are_turned_into_degrees()
    {
        Assert.True(QuantityText.TryAngle("1rad", out var read));
        Assert.Equal(180 / Math.PI, read, 1e-9);
    }

    [Theory]
    [InlineData("5mm")]
    [InlineData("steep")]
    [InlineData("")]
    public void What_is_no_angle_is_refused(string text) => Assert.False(QuantityText.TryAngle(text, out _));

    [Theory]
    [InlineData("0.5%", 0.5)]
    [InlineData("2", 2)]
    [InlineData("1/2 %", 0.5)]
    public void A_share_is_read_in_per_cent(string text, double share)
    {
        Assert.True(QuantityText.TryPerCent(text, out var read));
        Assert.Equal(share, read);
    }

    [Theory]
    [InlineData("0.5mm")]
    [InlineData("half")]
    public void What_is_no_share_is_refused(string text) => Assert.False(QuantityText.TryPerCent(text, out _));

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void The_culture_of_the_machine_does_not_matter(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new(culture);
            Assert.True(QuantityText.TryLength("12.5MM", out var length));
            Assert.Equal(12.5, length);
            Assert.True(QuantityText.TryLength("1 INCH", out var inch));
            Assert.Equal(25.4, inch);
            Assert.True(QuantityText.TryAngle("2.5 DEG", out var angle));
            Assert.Equal(2.5, angle);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Any_fraction_of_an_inch_is_that_part_of_25_4_mm() =>
        Gen.Select(Gen.Int[0, 12], Gen.Int[0, 63], Gen.Int[1, 64]).Sample((whole, above, below) =>
        {
            var text = FormattableString.Invariant($"{whole} {above}/{below}in");
            return QuantityText.TryLength(text, out var read) && Math.Abs(read - (whole + (double)above / below) * 25.4) < 1e-9;
        });

    [Fact]
    public void No_text_makes_it_throw() =>
        Gen.String[Gen.Char["0123456789 ./-+mincftdeg\"%°é"], 0, 12].Sample(text =>
        {
            if (QuantityText.TryLength(text, out var length)) Assert.True(double.IsFinite(length), text);
            QuantityText.TryAngle(text, out _);
            QuantityText.TryPerCent(text, out _);
        });
}
