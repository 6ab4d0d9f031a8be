using System.Globalization;
using System.IO.Compression;
using System.Text;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Svg;
using Xunit;

namespace BuckGen.Tests.Intake.Outlines;

public class SvgReaderTests
{
    private const string Open =
        """<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" """
        + """width="100mm" height="80mm" viewBox="0 0 100 80">""";

    [Fact]
    public void A_circle_stays_a_circle_and_lies_upright_on_the_page()
    {
        var circle = Assert.IsType<EllipseCurve>(Only("""<circle id="hole" cx="30" cy="20" r="7"/>""").Curves.Single());
        Assert.Equal(7, circle.CircleRadius!.Value, 1e-6);
        AssertNear(new(30, 60), circle.Centre);
    }

    [Theory]
    [InlineData("rotate(33 12 7) scale(1.7)")]
    [InlineData("translate(80 10) scale(-2.3 2.3) rotate(17)")]
    [InlineData("matrix(.8660254 .5 -.5 .8660254 20 10)")]
    [InlineData("matrix(.866025 .5 -.499999 .866026 20 10)")]
    public void A_circle_stays_a_circle_under_every_map_that_keeps_circles(string transform)
    {
        var path = Only($"""<circle cx="3" cy="2" r="7" transform="{transform}"/>""");
        Assert.NotNull(Assert.IsType<EllipseCurve>(path.Curves.Single()).CircleRadius);
    }

    /// <summary>SVG 1.1, 9.2: a corner is round only where both radii are above 0; one left out is as the other.</summary>
    [Theory]
    [InlineData("rx='0' ry='9'", 2400)]
    [InlineData("rx='9' ry='0'", 2400)]
    [InlineData("rx='0'", 2400)]
    [InlineData("ry='9'", 2330.469)]
    public void A_corner_without_one_radius_is_square(string radii, double area) =>
        Assert.Equal(area, Reading.Svg($"<rect x='5' y='5' width='60' height='40' {radii}/>").Region.Area, 1e-3);

    [Fact]
    public void A_rounded_rectangle_has_four_lines_and_four_quarter_circles()
    {
        var curves = Only("""<rect x="5" y="5" width="60" height="40" rx="8"/>""").Curves;
        Assert.Equal(8, curves.Length);
        Assert.All(curves.OfType<EllipseCurve>(), c => Assert.Equal(8, c.CircleRadius!.Value, 1e-6));
        Assert.Equal(4, curves.OfType<LineCurve>().Count());
        AssertContinuous(curves);
    }

    [Theory]
    [InlineData("A5 5 0 0 1 10 0", 5)]
    [InlineData("A9 9 0 1 0 10 0", 9)]
    [InlineData("A9 9 20 0110 0", 9)]
    [InlineData("A1 1 0 0 1 10 0", 5)]
    public void An_arc_command_gives_a_circular_arc_grown_where_its_radius_is_too_small(string arc, double radius)
    {
        var path = Only($"""<path d="M20 20a0 0 0 0 0 0 0 m0 0 {arc.Replace('A', 'a')}"/>""");
        var curve = Assert.IsType<EllipseCurve>(path.Curves[0]);
        Assert.Equal(radius, curve.CircleRadius!.Value, 1e-5);
        AssertNear(new(20, 60), curve.Start);
        AssertNear(new(30, 60), curve.End);
    }

    [Fact]
    public void A_sweep_flag_of_one_turns_clockwise_as_seen_on_the_page()
    {
        var curve = Only("""<path d="M20 20A5 5 0 0 1 30 20"/>""").Curves[0];
        AssertNear(new(25, 65), curve.PointAt(0.5));
    }

    [Fact]
    public void An_arc_without_radius_is_a_line()
    {
        Assert.All(Only("""<path d="M0 0A0 5 0 0 1 10 0L5 5"/>""").Curves, c => Assert.IsType<LineCurve>(c));
    }

    [Fact]
    public void The_compact_grammar_of_path_data_is_read_as_it_is_meant()
    {
        var points = Read("""<path d="M10,10 10-5.5.5 1e1zm1 1h2v.5 .5H-1.V2zl4 4z"/>""").Paths
            .Select(p => p.Curves.Select(c => c.Start).ToArray()).ToArray();
        AssertNear([new(10, 70), new(10, 85.5), new(0.5, 70)], points[0]);
        AssertNear([new(11, 69), new(13, 69), new(13, 68.5), new(13, 68), new(-1, 68), new(-1, 78)], points[1]);
        AssertNear([new(11, 69), new(15, 65)], points[2]);
    }

    [Fact]
    public void Smooth_curves_mirror_the_handle_before_them()
    {
        var curves = Only("""<path d="M0 0C0 5 5 10 10 10S20 5 20 0Q30 0 30 10T40 20z"/>""").Curves;
        AssertNear(new(15, 70), Assert.IsType<BezierCurve>(curves[1]).P1);
        var last = Assert.IsType<BezierCurve>(curves[3]);
        AssertNear(BezierCurve.Quadratic(new(30, 70), new(30, 60), new(40, 60)).P1, last.P1);
    }

    [Fact]
    public void A_fill_closes_an_open_path_and_a_line_alone_does_not()
    {
        const string d = "M10 10H50V40";
        Assert.True(Only($"""<path d="{d}"/>""").Closed);
        Assert.Equal(3, Only($"""<path d="{d}"/>""").Curves.Length);
        var line = Only($"""<path d="{d}" fill="none" stroke="red"/>""");
        Assert.False(line.Closed);
        Assert.Equal(2, line.Curves.Length);
    }

    [Fact]
    public void A_straight_line_with_a_fill_is_still_an_open_line()
    {
        Assert.False(Only("""<path d="M10 10L20 20L50 50" stroke="black"/>""").Closed);
    }

    [Fact]
    public void A_line_that_ends_where_it_began_is_closed()
    {
        Assert.True(Only("""<polyline points="10,10 50,10 50,40 10,10" fill="none" stroke="black"/>""").Closed);
    }

    [Theory]
    [InlineData("""<rect width="9" height="9" fill="none"/>""")]
    [InlineData("""<rect width="9" height="9" fill="transparent"/>""")]
    [InlineData("""<rect width="9" height="9" fill-opacity="0"/>""")]
    [InlineData("""<rect width="9" height="9" fill="none" stroke="red" stroke-width="0"/>""")]
    [InlineData("""<rect width="9" height="9" style="display:none"/>""")]
    [InlineData("""<g display="none"><g><rect width="9" height="9"/></g></g>""")]
    [InlineData("""<g visibility="hidden"><rect width="9" height="9"/></g>""")]
    [InlineData("""<g opacity="0"><rect width="9" height="9"/></g>""")]
    [InlineData("""<style>.off{display:none}</style><rect class="off" width="9" height="9"/>""")]
    [InlineData("""<symbol id="s"><rect width="9" height="9"/></symbol>""")]
    [InlineData("""<defs><rect width="9" height="9"/></defs>""")]
    [InlineData("""<clipPath id="c"><rect width="9" height="9"/></clipPath>""")]
    [InlineData("""<pattern id="p"><rect width="9" height="9"/></pattern>""")]
    public void What_a_viewer_does_not_show_is_not_there(string hidden)
    {
        var path = Only(hidden + """<circle id="seen" cx="30" cy="20" r="7"/>""");
        Assert.Equal("circle #seen", path.Source);
    }

    [Theory]
    [InlineData("""<linearGradient id="g" href="#g"/>""")]
    [InlineData("""<pattern id="g"><image href="x.png"/></pattern>""")]
    public void A_fill_by_gradient_or_pattern_is_a_fill(string paint)
    {
        Assert.True(Only(paint + """<path d="M10 10H50V40" fill="url(#g)"/>""").Closed);
    }

    [Fact]
    public void A_visible_shape_in_a_hidden_group_is_there()
    {
        Only("""<g visibility="hidden"><rect width="9" height="9" visibility="visible"/></g>""");
    }

    [Theory]
    [InlineData("", FillRule.NonZero)]
    [InlineData("fill-rule='evenodd'", FillRule.EvenOdd)]
    [InlineData("fill='none' stroke='black'", FillRule.EvenOdd)]
    public void The_fill_rule_is_passed_on_and_lines_count_each_loop(string attributes, FillRule rule)
    {
        var paths = Read($"""<rect width="1" height="1"/><path {attributes} d="M5 5H75V55H5zM20 15H60V45H20z"/>""").Paths;
        Assert.Equal([1, 2, 2], paths.Select(p => p.Shape));
        Assert.All(paths.Skip(1), p => Assert.Equal(rule, p.FillRule));
    }

    [Fact]
    public void A_layer_of_the_drawing_program_is_named()
    {
        var path = Only(
            """<g xmlns:inkscape="urn:i" inkscape:groupmode="layer" inkscape:label="Cut">"""
            + """<g><rect width="9" height="9"/></g></g>""");
        Assert.Equal("Cut", path.Layer);
        Assert.Equal("rect at line 1", path.Source);
    }

    [Theory]
    [InlineData("50mm", 50)]
    [InlineData("5cm", 50)]
    [InlineData("2in", 50.8)]
    [InlineData("36pt", 12.7)]
    [InlineData("3PC", 12.7)]
    [InlineData("200Q", 50)]
    [InlineData("96px", 25.4)]
    [InlineData(" 96 ", 25.4)]
    public void The_page_width_is_read_in_every_unit(string width, double millimetres)
    {
        var drawing =
            ReadRaw($"""<svg xmlns="http://www.w3.org/2000/svg" width="{width}" height="{width}" viewBox="0 0 10 10">"""
                + """<path d="M0 10H10V0"/></svg>""");
        Assert.Equal(millimetres, drawing.Paths[0].Curves[0].End.X, 1e-9);
    }

    [Fact]
    public void Units_inside_the_page_are_read_in_px_of_the_page()
    {
        var path = Only("""<line x1="10mm" x2="100Q" y2="1in" stroke="red"/>""");
        AssertNear(new(10 * 96 / 25.4, 80), path.Curves[0].Start);
        AssertNear(new(25 * 96 / 25.4, 80 - 96), path.Curves[0].End);
    }

    [Theory]
    [InlineData("xMidYMid", 25, 0)]
    [InlineData("xMinYMid meet", 0, 0)]
    [InlineData("xMaxYMax meet", 50, 0)]
    [InlineData("xMidYMax slice", 0, 0)]
    [InlineData("xMidYMin slice", 0, -50)]
    public void The_page_is_fitted_as_preserveAspectRatio_says(string ratio, double left, double bottom)
    {
        var drawing =
            ReadRaw($"""<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="50mm" viewBox="10 20 10 10" """
                + $"""preserveAspectRatio="{ratio}"><path d="M10 30H20V20"/></svg>""");
        AssertNear(new(left, bottom), drawing.Paths[0].Curves[0].Start);
    }

    [Fact]
    public void A_missing_height_follows_from_the_viewBox()
    {
        var drawing =
            ReadRaw("""<svg xmlns="http://www.w3.org/2000/svg" width="50mm" viewBox="0 0 10 30"><path d="M0 0H10V30"/></svg>""");
        AssertNear(new(0, 150), drawing.Paths[0].Curves[0].Start);
    }

    [Fact]
    public void Pixels_to_the_inch_can_be_given()
    {
        const string file = """<svg xmlns="http://www.w3.org/2000/svg" width="72" height="72"><path d="M0 72H72V0"/></svg>""";
        Assert.Equal(19.05, ReadRaw(file).Paths[0].Curves[0].End.X, 1e-9);
        Assert.Equal(25.4, SvgReader.Read(Encoding.UTF8.GetBytes(file), "a.svg", new(PixelsPerInch: 72)).Paths[0].Curves[0].End.X,
            1e-9);
        Assert.Contains(ReadRaw(file).Notes, n => n.Kind == "units-assumed"
            && n.Message.Contains("19.05 x 19.05 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void Far_coordinates_that_lose_digits_are_reported()
    {
        Assert.Empty(Read("""<g transform="translate(-1e3)"><rect x="1001" width="9" height="9"/></g>""").Notes);
        var note = Read("""<g transform="translate(-1e6)"><rect id="far" x="1000001.23" width="9" height="9"/></g>""").Notes
            .Single();
        Assert.Equal("precision", note.Kind);
        Assert.Contains("rect #far", note.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<text>a</text>", "text-ignored", "Convert text")]
    [InlineData("<image href='data:image/png;base64,AA' width='9' height='9'/>", "image-ignored", "trace")]
    [InlineData("<image href='http://example.invalid/a.png' width='9' height='9'/>", "external-ignored", "never opened")]
    [InlineData("<use href='other.svg#a'/>", "external-ignored", "other.svg#a")]
    [InlineData("<use href='#nowhere'/>", "reference-missing", "#nowhere")]
    [InlineData("<use id='u' href='#u'/>", "reference-loop", "use #u")]
    [InlineData("<foreignObject/>", "foreign-object-ignored", "foreignObject")]
    [InlineData("<style>@import 'a.css';</style>", "external-ignored", "style at line 1")]
    [InlineData("<rect id='r' style='clip-path:url(#c)' width='9' height='9'/>", "clip-ignored", "rect #r")]
    [InlineData("<g id='g' mask='url(#c)'><rect width='9' height='9'/></g>", "mask-ignored", "g #g")]
    [InlineData("<g id='g' filter='url(#c)'><rect width='9' height='9'/></g>", "filter-ignored", "g #g")]
    [InlineData("<line id='l' x2='9' stroke='red' marker-end='url(#m)'/>", "marker-ignored", "line #l")]
    [InlineData("<g transform='scale(0 1)'><rect id='r' width='9' height='9'/></g>", "collapsed", "rect #r")]
    [InlineData("<flowRegion/>", "unknown-ignored", "flowRegion")]
    public void What_is_left_out_is_reported_by_name(string part, string kind, string words)
    {
        var drawing = Read(part + """<circle cx="30" cy="20" r="7"/>""");
        Assert.Contains(drawing.Notes, n => n.Kind == kind && n.Message.Contains(words, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("<path id='p' d='M0 0L1 NaN'/>", "path #p", "'NaN'")]
    [InlineData("<path id='p' d='M0 0L1 1e400'/>", "path #p", "'1e400'")]
    [InlineData("<path id='p' d='M0 0A5 5 0 2 1 9 9'/>", "path #p", "arc flag")]
    [InlineData("<path id='p' d='M0 0L1'/>", "path #p", "the end")]
    [InlineData("<path id='p' d='L1 1'/>", "path #p", "moveto")]
    [InlineData("<path id='p' d='M0,0,'/>", "path #p", "the end")]
    [InlineData("<path id='p' d='M0 0zz1 1'/>", "path #p", "'1'")]
    [InlineData("<polygon id='p' points='0,0 5,0 5'/>", "polygon #p", "5 numbers")]
    [InlineData("<polygon id='p' points='0,0 5;0'/>", "polygon #p", "';0'")]
    [InlineData("<rect width='9 mm' height='9'/>", "rect at line 1", "'9 mm'")]
    [InlineData("<rect width='1,5' height='9'/>", "rect at line 1", "'1,5'")]
    [InlineData("<rect width='-1' height='9'/>", "rect at line 1", "below 0")]
    [InlineData("<circle r='2em'/>", "circle at line 1", "'2em'")]
    [InlineData("<g transform='rotate(ten)'/>", "g at line 1", "rotate(ten)")]
    [InlineData("<g transform='scale(2'/>", "g at line 1", "scale(2")]
    [InlineData("<g transform='translate(1 2 3)'/>", "g at line 1", "translate(1 2 3)")]
    [InlineData("<g style='fill:red; transform: scale(2)'/>", "g at line 1", "'transform'")]
    [InlineData("<style>rect { transform:scale(2) }</style>", "style at line 1", "'transform'")]
    [InlineData("<svg viewBox='0 0 1'/>", "svg at line 1", "viewBox '0 0 1'")]
    public void What_would_be_read_wrongly_is_refused_with_its_place(string part, string place, string words)
    {
        var error = Assert.Throws<OutlineException>(() => Read(part + """<circle cx="30" cy="20" r="7"/>"""));
        Assert.StartsWith("a.svg, line 1", error.Message, StringComparison.Ordinal);
        Assert.Contains(place, error.Message, StringComparison.Ordinal);
        Assert.Contains(words, error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error.Message);
    }

    [Theory]
    [InlineData("width='60 mm' height='40mm'", "'60 mm'")]
    [InlineData("width='60mm' height='-40mm'", "'-40mm'")]
    [InlineData("width='0' height='40mm'", "above 0")]
    [InlineData("viewBox='0 0 sixty 40'", "'sixty 40'")]
    [InlineData("viewBox='0 0 0 40'", "above 0")]
    [InlineData("viewBox='0 0 9 9' preserveAspectRatio='middle'", "'middle'")]
    public void A_page_of_no_clear_size_is_refused(string attributes, string words)
    {
        var error = Assert
            .Throws<OutlineException>(() =>
                ReadRaw($"<svg xmlns='http://www.w3.org/2000/svg' {attributes}><rect width='9' height='9'/></svg>"));
        Assert.Contains(words, error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("  0\r\nSECTION\r\n  2\r\nENTITIES", "a DXF drawing")]
    [InlineData("AutoCAD Binary DXF\r\n", "a DXF drawing")]
    [InlineData("%PDF-1.7", "a PDF document")]
    [InlineData("<html/>", "the root element is <html>")]
    [InlineData("<svg xmlns='urn:other'/>", "'urn:other'")]
    [InlineData("hello", "broken XML")]
    [InlineData("<?xml version='1.0' encoding='klingon'?><svg/>", "'klingon'")]
    public void What_is_no_SVG_is_called_what_it_is(string content, string words)
    {
        Assert.Contains(words, Assert.Throws<OutlineException>(() => ReadRaw(content)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Copies_of_copies_are_counted_before_they_are_made()
    {
        var levels = Enumerable.Range(1, 12).Select(i =>
            $"<g id='l{i}'>{string.Concat(Enumerable.Repeat($"<use href='#l{i - 1}'/>", 10))}</g>");
        var error = Assert.Throws<OutlineException>(() => Read($"<rect id='l0' width='1' height='1'/>{string.Concat(levels)}"));
        Assert.Contains("elements", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Long_chains_of_references_are_refused(bool backward)
    {
        var chain = Enumerable.Range(1, 20_000).Select(i => $"<use id='l{i}' href='#l{i - 1}'/>");
        if (backward) chain = chain.Reverse();
        Assert.Throws<OutlineException>(() => Read($"<rect id='l0' width='1' height='1'/>{string.Concat(chain)}"));
    }

    [Fact]
    public void Nesting_up_to_the_limit_is_read()
    {
        const int deep = 199;
        Only(string.Concat(Enumerable.Repeat("<g>", deep - 1)) + "<rect width='1' height='1'/>"
            + string.Concat(Enumerable.Repeat("</g>", deep - 1)));
    }

    [Fact]
    public void A_packed_file_is_read_and_one_that_unpacks_without_end_is_refused()
    {
        Assert.Single(
            SvgReader.Read(Packed(Encoding.UTF8.GetBytes(Open + "<rect width='1' height='1'/></svg>")), "a.svgz").Paths);
        var bomb = Packed(new byte[2_000_000]);
        var error = Assert.Throws<OutlineException>(() => SvgReader.Read(bomb, "a.svgz", new(MaxBytes: 1_000_000)));
        Assert.Contains("1000000 bytes", error.Message, StringComparison.Ordinal);
        Assert.Throws<OutlineException>(() => SvgReader.Read([0x1F, 0x8B, 8, 0, 1, 2, 3], "a.svgz"));
    }

    [Fact]
    public void Files_in_other_encodings_are_read()
    {
        const string text = "<?xml version='1.0' encoding='utf-16'?>" + Open + "<g id='ä'><rect width='1' height='1'/></g></svg>";
        Assert.Single(SvgReader.Read([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(text)], "a.svg").Paths);
        Assert.Single(SvgReader.Read([.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(text)], "a.svg").Paths);
    }

    [Fact]
    public void The_culture_of_the_machine_changes_nothing()
    {
        const string drawing =
            """<g transform="rotate(12.5)"><rect x="1.5" y="2.25" width="60.125" height="40" """
            + """rx="8.5" style="fill-opacity:0.5"/></g>""";
        var expected = Only(drawing).Curves;
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(expected, Only(drawing).Curves);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static Drawing Read(string body) => ReadRaw(Open + body + "</svg>");

    private static Drawing ReadRaw(string file) => SvgReader.Read(Encoding.UTF8.GetBytes(file), "a.svg");

    private static DrawnPath Only(string body) => Assert.Single(Read(body).Paths);

    private static byte[] Packed(byte[] content)
    {
        using var result = new MemoryStream();
        using (var packer = new GZipStream(result, CompressionLevel.Fastest)) packer.Write(content);
        return result.ToArray();
    }

    private static void AssertNear(Vec2 expected, Vec2 actual) =>
        Assert.True(expected.DistanceTo(actual) < 1e-4, $"expected {expected}, got {actual}");

    private static void AssertNear(Vec2[] expected, Vec2[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (var i = 0; i < expected.Length; i++) AssertNear(expected[i], actual[i]);
    }

    private static void AssertContinuous(IReadOnlyList<Curve> curves)
    {
        for (var i = 0; i < curves.Count; i++) AssertNear(curves[i].End, curves[(i + 1) % curves.Count].Start);
    }
}
