using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using Xunit;

namespace BuckGen.Tests.Intake.Outlines;

/// <summary>
/// Crossing loops in one shape: made one by the nonzero rule, refused by the even-odd rule. Shapes of their own become one where
/// they are filled with one colour, or where that is asked for.
/// </summary>
public class OverlapTests
{
    private const string TwoSquares = "M0 0H30V30H0Z M20 20H50V50H20Z";

    [Fact]
    public void Parts_of_a_nonzero_shape_that_overlap_are_made_one()
    {
        var outline = Nonzero(TwoSquares);

        Assert.Equal(1, outline.LoopCount);
        Assert.Equal(2 * 30 * 30 - 10 * 10, outline.Region.Area, 1e-6);
        Assert.Equal(8, outline.Region.Segments.Count());
        var repair = Assert.Single(outline.Repairs);
        Assert.Equal(("overlap-united", 2), (repair.Kind, repair.Count));
        // y is turned over on the page of 100 mm.
        Assert.Contains(repair.Places, p => p.DistanceTo(new(30, 80)) < 1e-6);
        Assert.Contains(repair.Places, p => p.DistanceTo(new(20, 70)) < 1e-6);
    }

    [Fact]
    public void By_the_even_odd_rule_they_are_refused() =>
        Assert.Contains("outlines cross at", Assert.Throws<OutlineException>(
            () => Reading.Svg($"<path d=\"{TwoSquares}\" fill-rule=\"evenodd\"/>")).Message);

    [Theory]
    [InlineData("fill='navy'", "fill='teal'")]
    [InlineData("fill='none' stroke='black'", "fill='none' stroke='black'")]
    [InlineData("fill='navy'", "fill='none' stroke='navy'")]
    [InlineData("fill='navy' fill-opacity='.5'", "fill='navy' fill-opacity='.5'")]
    public void Shapes_of_their_own_that_cross_are_refused_unless_uniting_is_asked_for(string first, string second)
    {
        var shapes = $"<path d='M0 0H30V30H0Z' {first}/><path d='M20 20H50V50H20Z' {second}/>";

        var refused = Assert.Throws<OutlineException>(() => Reading.Svg(shapes));
        Assert.All((string[])["outlines cross at", "--unite"], s => Assert.Contains(s, refused.Message));

        AssertTwoSquares(Reading.Svg(shapes, new(Tolerance.Default) { Unite = true }));
    }

    [Fact]
    public void Shapes_of_their_own_that_are_filled_with_one_colour_become_one()
    {
        AssertTwoSquares(Reading.Svg("<path fill='#008080' d='M0 0H30V30H0Z'/><path fill='teal' d='M20 20H50V50H20Z'/>"));
        AssertTwoSquares(Reading.Svg("<path d='M0 0V30H30V0Z'/><path d='M20 20H50V50H20Z' stroke='red'/>"));
    }

    [Fact]
    public void In_DXF_closed_lines_that_cross_become_one_where_that_is_asked_for()
    {
        string[] squares = [DxfText.Rectangle(0, 0, 30, 30), DxfText.Rectangle(20, 20, 30, 30)];
        var content = DxfText.File(squares);

        Assert.Contains("--unite", Reading.Refusal(content));
        AssertTwoSquares(OutlineReader.Read(content, "test.dxf", new(Tolerance.Default) { Unite = true }));
    }

    [Fact]
    public void Letters_that_touch_along_an_edge_become_one()
    {
        var outline = Reading.Svg("<path d='M0 0H30V30H0Z'/><path d='M30 10H50V20H30Z'/>");

        Assert.Equal((1, 8, 1100), (outline.LoopCount, outline.Region.Segments.Count(), Math.Round(outline.Region.Area, 6)));
        Assert.DoesNotContain(outline.Notes, n => n.Kind == "shared-edge");
    }

    [Fact]
    public void A_chain_of_letters_keeps_its_counters_and_what_lies_apart()
    {
        // Three rings in a row, each over the next, as the letters of a script; a dot above.
        string Ring(int x) => $"<path fill-rule='evenodd' d='M{x} 40h30v30h-30z M{x + 10} 50h10v10h-10z'/>";

        var outline = Reading.Svg(Ring(5) + Ring(30) + Ring(55) + "<path d='M10 10h6v6h-6z'/>");

        Assert.Equal((2, 3), (outline.Region.Islands.Length, outline.Region.HoleCount));
        Assert.Equal(80 * 30 - 300 + 36, outline.Region.Area, 1e-6);
        Assert.Equal("3 shapes that overlap or touch were united: they are filled with one colour, first path at line 1 and path "
            + "at line 1.", Assert.Single(outline.Repairs).Message);
    }

    [Fact]
    public void A_hole_that_touches_the_edge_stays_one() =>
        Assert.Equal(30 * 30 - 100,
            Reading.Svg("<path d='M0 0H30V30H0Z'/><path d='M0 10H10V20H0Z'/>").Region.Area, 1e-6);

    private static void AssertTwoSquares(Outline outline)
    {
        Assert.Equal((1, 8), (outline.LoopCount, outline.Region.Segments.Count()));
        Assert.Equal(2 * 30 * 30 - 10 * 10, outline.Region.Area, 1e-6);
        Assert.Equal("shapes-united", Assert.Single(outline.Repairs).Kind);
    }

    [Fact]
    public void A_star_in_one_stroke_keeps_its_middle()
    {
        var file = Corpus.File("svg/h_pentagram_nonzero.svg");

        var outline = OutlineReader.Read(file.Content, file.Name);

        // Ten triangles between the centre, a tip at the radius 35 and the nearest inner corner (plane trigonometry).
        var inner = 35 * Math.Cos(2 * Math.PI / 5) / Math.Cos(Math.PI / 5);
        Assert.Equal(10 * 35 * inner * Math.Sin(Math.PI / 5) / 2, outline.Region.Area, 1e-3);
        Assert.Equal((1, 10), (outline.LoopCount, outline.Region.Segments.Count()));
    }

    [Fact]
    public void Overlapping_rings_keep_the_holes_that_nothing_covers()
    {
        const string ring = "M{0} 30a20 20 0 1 1 -40 0a20 20 0 1 1 40 0Z M{1} 30a10 10 0 1 0 -20 0a10 10 0 1 0 20 0Z";
        string Ring(int x) => string.Format(System.Globalization.CultureInfo.InvariantCulture, ring, x + 20, x + 10);

        var outline = Nonzero(Ring(30) + Ring(55));

        // Lenses of two circles (standard formula): the outer discs share one; each hole is covered in part by the other disc.
        var (disc, hole) = (Math.PI * 400, Math.PI * 100);
        var covered = Lens(10, 20, 25);
        Assert.Equal((1, 2), (outline.Region.Islands.Length, outline.Region.HoleCount));
        Assert.Equal(2 * disc - Lens(20, 20, 25) - 2 * (hole - covered), outline.Region.Area, 0.05);
    }

    [Theory]
    [InlineData("M0 0H30V30H0Z M30 10H60V20H30Z", 1200, 2, 0)]
    [InlineData("M0 0H30V30H0Z M20 10H60V20H20Z M20 10H60V20H20Z", 1200, 1, 0)]
    [InlineData("M0 0H30V30H0Z M10 -10H20V40H10Z", 1100, 1, 0)]
    // The bars run the other way round: where one of them lies on the square the two cancel each other.
    [InlineData("M0 0H30V30H0Z M30 10V20H60V10Z M25 12V18H70V12Z", 900 - 30 + 300 + 60, 1, 1)]
    [InlineData("M0 0L60 40V0L0 40Z", 1200, 2, 0)]
    public void Odd_meetings_are_sorted_out(string path, double area, int islands, int holes)
    {
        var outline = Nonzero(path);

        Assert.Equal(area, outline.Region.Area, 1e-6);
        Assert.Equal((islands, holes), (outline.Region.Islands.Length, outline.Region.HoleCount));
    }

    private static Outline Nonzero(string path) => Reading.Svg($"<path d=\"{path}\"/>");

    private static double Lens(double r, double s, double d)
    {
        var (a, b) = ((d * d + r * r - s * s) / (2 * d * r), (d * d + s * s - r * r) / (2 * d * s));
        return r * r * Math.Acos(a) + s * s * Math.Acos(b)
            - Math.Sqrt((-d + r + s) * (d + r - s) * (d - r + s) * (d + r + s)) / 2;
    }
}
