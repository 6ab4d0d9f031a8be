using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using Xunit;

namespace BuckGen.Tests.Intake.Outlines;

/// <summary>
/// A rectangle behind everything is left out where its paint shows that it is a background, and kept as the outline elsewhere.
/// </summary>
public class BackgroundTests
{
    private const string Page = "<rect width='100' height='100' fill='{0}'/>",
        Part = "<rect x='5' y='5' width='90' height='90' {0}/>",
        Letter = "<path d='M20 20h30v40h-30z M28 28h14v24h-14z' fill-rule='evenodd' {0}/>";

    [Theory]
    [InlineData(Page, "white", "fill='black'", "as large as the page and lighter")]
    [InlineData(Page, "#fff8ee", "fill='navy'", "as large as the page and lighter")]
    // Lines drawn on a sheet that has none itself.
    [InlineData(Page, "white", "fill='none' stroke='black'", "as large as the page")]
    // A colour of the page's size that the letters are darker than.
    [InlineData(Page, "goldenrod", "fill='maroon'", "as large as the page")]
    // Smaller than the page, but white.
    [InlineData(Part, "fill='white'", "fill='black'", "it is lighter")]
    public void It_is_left_out_where_it_is_paper(string rectangle, string paint, string letter, string reason)
    {
        var outline = Drawn(rectangle, paint, letter);

        Assert.Equal((1, 1), (outline.Region.Islands.Length, outline.Region.HoleCount));
        Assert.Equal(30 * 40 - 14 * 24, outline.Region.Area, 1e-6);
        var note = Assert.Single(outline.Notes, n => n.Kind == "background-left-out");
        Assert.All((string[])["rect at line 1", reason, "--background keep"], s => Assert.Contains(s, note.Message));
    }

    /// <summary>A hole that is painted in the colour of the page.</summary>
    [Fact]
    public void A_hole_of_its_colour_stays_a_hole() => Assert.Equal(80 * 50 - 100,
        Reading.Svg("<rect width='100' height='100' fill='#fff'/><path d='M10 10h80v50h-80z'/>"
            + "<path d='M30 30h10v10h-10z' fill='white'/>").Region.Area, 1e-6);

    [Theory]
    // A plate with a hole, as many draw it.
    [InlineData(Part, "fill='black'", "fill='white'", false)]
    [InlineData(Page, "black", "fill='white'", true)]
    // A line round everything is cut as any other.
    [InlineData(Part, "fill='white' stroke='black'", "fill='none' stroke='black'", false)]
    [InlineData(Part, "fill='none' stroke='black'", "fill='black'", false)]
    // Neither page nor paper.
    [InlineData(Part, "fill='goldenrod'", "fill='maroon'", false)]
    public void It_is_kept_elsewhere_and_named_where_it_is_the_page(string rectangle, string paint, string letter, bool named)
    {
        var outline = Drawn(rectangle, paint, letter);

        Assert.Equal((2, 1), (outline.Region.Islands.Length, outline.Region.HoleCount));
        Assert.Equal(named ? ["page-sized"] : [], outline.Notes.Select(n => n.Kind));
        Assert.All(outline.Notes, n => Assert.Contains("--background drop", n.Message));
    }

    [Theory]
    [InlineData("<rect width='100' height='100' rx='3' fill='white'/>")]
    [InlineData("<path d='M-50 0H150L50 300Z' fill='white'/>")]
    [InlineData("<path d='M0 0H100V100H0Z M1 1H3V3H1Z' fill-rule='evenodd' fill='white'/>")]
    public void What_is_no_plain_rectangle_is_an_outline(string shape) =>
        Assert.NotEqual(30 * 40 - 14 * 24, Reading.Svg(shape + Letter.Replace("{0}", "", StringComparison.Ordinal)).Region.Area);

    [Fact]
    public void Alone_it_is_the_outline() =>
        Assert.Equal(10_000, Reading.Svg("<rect width='100' height='100' fill='white'/>").Region.Area);

    [Fact]
    public void It_is_kept_or_left_out_on_request()
    {
        Outline Read(string rectangle, string paint, Background background) => Reading.Svg(
            rectangle.Replace("{0}", paint, StringComparison.Ordinal) + Letter.Replace("{0}", "", StringComparison.Ordinal),
            new(Tolerance.Default) { Background = background });

        Assert.Equal(2, Read(Page, "white", Background.Keep).Region.Islands.Length);
        Assert.Empty(Read(Page, "white", Background.Keep).Notes);
        var asked = Read(Part, "fill='none' stroke='black'", Background.Drop);
        Assert.Equal(30 * 40 - 14 * 24, asked.Region.Area, 1e-6);
        Assert.Contains("that was asked for", Assert.Single(asked.Notes).Message);
        var none = Read("<circle cx='50' cy='50' r='45' fill='{0}'/>", "white", Background.Drop);
        Assert.Equal("background-missing", Assert.Single(none.Notes).Kind);
    }

    /// <summary>The program drew the same parts with and without it.</summary>
    [Fact]
    public void A_plot_is_the_same_with_its_white_page_and_without()
    {
        CorpusFile with = Corpus.File("svg/mpl_background.svg"), without = Corpus.File("svg/mpl_parts.svg");

        var (a, b) = (OutlineReader.Read(with.Content, with.Name), OutlineReader.Read(without.Content, without.Name));

        Assert.Equal((b.LoopCount, b.Region.Area), (a.LoopCount, a.Region.Area));
    }

    [Fact]
    public void In_DXF_a_frame_is_left_out_on_request()
    {
        var content = DxfText.File(DxfText.Rectangle(0, 0, 200, 100), DxfText.Rectangle(50, 20, 60, 60));

        Assert.Equal(200 * 100 - 60 * 60, OutlineReader.Read(content, "test.dxf").Region.Area, 1e-6);
        var asked = OutlineReader.Read(content, "test.dxf", new(Tolerance.Default) { Background = Background.Drop });
        Assert.Equal(60 * 60, asked.Region.Area, 1e-6);
    }

    private static Outline Drawn(string rectangle, string paint, string letter) => Reading.Svg(
        rectangle.Replace("{0}", paint, StringComparison.Ordinal) + Letter.Replace("{0}", letter, StringComparison.Ordinal));
}
