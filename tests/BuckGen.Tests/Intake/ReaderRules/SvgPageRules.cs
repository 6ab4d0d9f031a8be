using Xunit;
using static BuckGen.Tests.Intake.ReaderRules.Files;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>From user units to millimetres on the page, y up.</summary>
public class SvgPageRules
{
    private const double Pixel = 25.4 / 96;

    [Theory]
    [InlineData("width='10in' height='10in' viewBox='0 0 100 100'", 2.54)]
    [InlineData("width='10cm' height='10cm' viewBox='0 0 100 100'", 1)]
    [InlineData("width='10mm' height='10mm' viewBox='0 0 100 100'", 0.1)]
    [InlineData("width='72pt' height='72pt' viewBox='0 0 100 100'", 0.254)]
    [InlineData("width='6pc' height='6pc' viewBox='0 0 100 100'", 0.254)]
    [InlineData("width='400Q' height='400Q' viewBox='0 0 100 100'", 1)]
    [InlineData("width='96px' height='96px' viewBox='0 0 100 100'", 0.254)]
    [InlineData("width='96' height='96' viewBox='0 0 100 100'", 0.254)]
    [InlineData("width='100%' height='100%' viewBox='0 0 100 100'", Pixel)]
    [InlineData("viewBox='0 0 100 100'", Pixel)]
    [InlineData("width='200' height='200'", Pixel)]
    [InlineData("", Pixel)]
    public void The_size_of_the_root_and_its_viewBox_give_the_scale(string root, double scale) =>
        Assert.Equal(10 * scale, BoxOf(SvgFile("<rect width='10' height='10'/>", root: root))[2], 0.001);

    [Theory]
    [InlineData("xMinYMin meet", 0, 80, 20)]
    [InlineData("xMidYMid meet", 40, 80, 20)]
    [InlineData("xMaxYMax meet", 80, 80, 20)]
    [InlineData("xMidYMid slice", 0, 40, 100)]
    [InlineData("none", 0, 80, 100)]
    public void Spare_room_goes_where_preserveAspectRatio_says(string ratio, double left, double bottom, double width)
    {
        // The viewBox is as high as wide, the page five times as wide as high; the shape is the upper fifth of the viewBox.
        var box = BoxOf(
            SvgFile("<rect width='10' height='2'/>",
                root: $"width='100mm' height='20mm' viewBox='0 0 10 10' preserveAspectRatio='{ratio}'"));

        Assert.Equal(left, box[0], 0.001);
        Assert.Equal(width, box[2], 0.001);
        Assert.Equal(bottom / 5, box[1], ratio.EndsWith("slice", StringComparison.Ordinal) ? 32 : 0.001);
    }

    [Fact]
    public void The_origin_of_the_viewBox_is_the_upper_left_corner_of_the_page() =>
        Assert.Equal([0, 95, 10, 5],
            BoxOf(SvgFile("<rect x='-50' y='30' width='10' height='5'/>",
                root: "width='100mm' height='100mm' viewBox='-50 30 100 100'")));

    [Fact]
    public void Y_is_turned_over_once() =>
        // Upside down twice: what stands at the top of the page stays at the top.
        Assert.Equal([0, 90, 20, 10],
            BoxOf(SvgFile("<g transform='translate(0 100) scale(1 -1)'><path d='M0 100H20L0 90z'/></g>")));

    [Theory]
    [InlineData("<svg x='10' y='20' width='50' height='50' viewBox='0 0 10 10'><rect width='4' height='2'/></svg>", 10,
        70, 20, 10)]
    [InlineData("<svg x='10mm' y='0' width='50%' height='50%' viewBox='0 0 10 10'><rect width='4' height='2'/></svg>", 37.795,
        90, 20, 10)]
    [InlineData("<svg x='10' y='10'><svg x='5' y='5'><rect width='4' height='2'/></svg></svg>", 15, 83, 4, 2)]
    [InlineData("<svg width='50' height='20' viewBox='0 0 10 10'><rect width='10' height='10'/></svg>", 15, 80, 20, 20)]
    [InlineData("<svg width='50' height='20' viewBox='0 0 10 10' preserveAspectRatio='none'><rect width='10' height='10'/></svg>",
        0, 80, 50, 20)]
    public void A_page_within_the_page_has_its_own_place_and_scale(string body, double left, double bottom, double width,
        double height) =>
        Assert.Equal([left, bottom, width, height], BoxOf(SvgFile(body)));

    [Theory]
    [InlineData("<rect x='50%' y='50%' width='25%' height='10%'/>", 50, 40, 25, 10)]
    [InlineData("<rect x='10pt' y='1pc' width='1in' height='40Q'/>", 13.333, 46.205, 96, 37.795)]
    [InlineData("<rect x='1cm' y='0' width='10mm' height='10px'/>", 37.795, 90, 37.795, 10)]
    public void Lengths_of_shapes_are_read_in_every_unit(string body, double left, double bottom, double width, double height) =>
        Assert.Equal([left, bottom, width, height], BoxOf(SvgFile(body)));

    [Theory]
    [InlineData("translate(10)", 10, 98, 4, 2)]
    [InlineData("translate(10,5)", 10, 93, 4, 2)]
    [InlineData("scale(2)", 0, 96, 8, 4)]
    [InlineData("scale(2 3)", 0, 94, 8, 6)]
    [InlineData("translate(0 10) rotate(-90)", 0, 90, 2, 4)]
    [InlineData("rotate(90 10 10)", 18, 96, 2, 4)]
    [InlineData("skewX(45)", 0, 98, 6, 2)]
    [InlineData("skewY(45)", 0, 94, 4, 6)]
    [InlineData("matrix(0 1 1 0 5 6)", 5, 90, 2, 4)]
    [InlineData("translate(10 0) scale(2)", 10, 96, 8, 4)]
    [InlineData("scale(2) translate(10 0)", 20, 96, 8, 4)]
    public void Every_transform_is_applied_in_its_order(string transform, double left, double bottom, double width,
        double height) =>
        Assert.Equal([left, bottom, width, height], BoxOf(SvgFile($"<rect width='4' height='2' transform='{transform}'/>")));

    [Theory]
    [InlineData("<defs><rect id='a' width='4' height='2'/></defs><use href='#a' x='10' y='5'/>", 10, 93, 4, 2)]
    [InlineData("<defs><rect id='a' width='4' height='2'/></defs><use xlink:href='#a' transform='scale(2)' x='10'/>",
        20, 96, 8, 4)]
    [InlineData("<defs><g id='b'><use href='#a' x='1'/></g><rect id='a' width='4' height='2'/></defs><use href='#b' x='10'/>",
        11, 98, 4, 2)]
    [InlineData(
        "<symbol id='a' viewBox='0 0 10 10'><rect width='10' height='10'/></symbol><use href='#a' x='10' y='5' width='20' "
        + "height='20'/>", 10, 75, 20, 20)]
    [InlineData(
        "<symbol id='a' viewBox='0 0 10 10'><rect width='10' height='10'/></symbol><use href='#a' width='50' height='20'/>", 15,
        80, 20, 20)]
    public void Copies_and_symbols_lie_where_they_are_used(string body, double left, double bottom, double width,
        double height) =>
        Assert.Equal([left, bottom, width, height], BoxOf(SvgFile(body)));
}
