using Xunit;
using static BuckGen.Tests.Intake.ReaderRules.Files;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>Which shapes of an SVG are there, and what their path data mean.</summary>
public class SvgShapeRules
{
    private const string Seen = "<circle cx='80' cy='80' r='10'/>";

    [Theory]
    [InlineData("<style>.n{fill:none}</style><rect class='n' width='9' height='9'/>", false)]
    [InlineData("<style>.n{fill:none} .s{stroke:red}</style><rect class='n s' width='9' height='9'/>", true)]
    [InlineData("<style>rect{fill:none}</style><rect width='9' height='9' style='fill:red'/>", true)]
    [InlineData("<style>#r{display:none}</style><rect id='r' width='9' height='9'/>", false)]
    [InlineData("<g fill='none'><rect width='9' height='9'/></g>", false)]
    [InlineData("<g fill='none'><rect width='9' height='9' style='stroke:blue'/></g>", true)]
    [InlineData("<g style='display:none'><rect width='9' height='9'/></g>", false)]
    [InlineData("<g visibility='hidden'><rect width='9' height='9' visibility='visible'/></g>", true)]
    [InlineData("<g visibility='hidden'><rect width='9' height='9'/></g>", false)]
    [InlineData("<rect width='9' height='9' fill='none' stroke='none'/>", false)]
    public void Style_class_display_and_visibility_decide_what_is_there(string body, bool there)
    {
        var outline = Read(SvgFile(body + Seen));

        Assert.Equal(there ? 2 : 1, outline.LoopCount);
        Assert.Equal(there, !outline.Notes.Any(n => n.Kind is "hidden-ignored" or "unpainted-ignored"));
    }

    [Theory]
    [InlineData("M0 0H10V10H0z", 100)]
    [InlineData("m0,0 10,0 0,10 -10,0z", 100)]
    [InlineData("M0 0 10 0 10 10 0 10", 100)]
    [InlineData("M0 0h5h5v10H0z", 100)]
    [InlineData("M0-0L1e1,0 10 1.e1.0.10e2Z", 100)]
    [InlineData("M0 0h10v10h-10zm20 0h10v10h-10z", 200)]
    [InlineData("M0 0h10v10h-10zM0 0z", 100)]
    [InlineData("M0 0A5 5 0 0 1 10 0z", 12.5 * Math.PI)]
    [InlineData("M0 0a5 5 0 0110 0z", 12.5 * Math.PI)]
    [InlineData("M0 0a5 5 0 1110 0z", 12.5 * Math.PI)]
    [InlineData("M0 0a5,5,0,01,10,0z", 12.5 * Math.PI)]
    [InlineData("M0 0a1 1 0 0 1 10 0z", 12.5 * Math.PI)]
    [InlineData("M0 0a-5 5 0 0 1 10 0z", 12.5 * Math.PI)]
    [InlineData("M0 0a0 5 0 0 1 10 0v10h-10z", 100)]
    [InlineData("M0 0Q5 10 10 0z", 100.0 / 3)]
    [InlineData("M0 0Q2.5 5 5 5T10 0z", 100.0 / 3)]
    [InlineData("M0 0C0 10 10 10 10 0z", 60)]
    [InlineData("M0 0C0 5 2 7.5 5 7.5S10 5 10 0z", 61.499)]
    public void The_whole_grammar_of_paths_is_read(string data, double area) =>
        Assert.Equal(area, Read(SvgFile($"<path d='{data}'/>")).Region.Area, 0.05 * Math.Sqrt(area));

    [Theory]
    [InlineData("M0 0H10V10H0z M", "character 16")]
    [InlineData("M0 0H10V10H0z L 5", "the end")]
    [InlineData("M0 0a5 5 0 2 1 10 0z", "an arc flag")]
    [InlineData("M0 0H10V10X0z", "'X'")]
    [InlineData("M0 0L10 1e400z", "'1e400z'")]
    [InlineData("M0 0L10 nanz", "'nanz'")]
    public void Wrong_path_data_stop_the_reading_at_the_place_and_half_a_path_is_never_used(string data, string words) =>
        Assert.Contains(words, RefusalOf(SvgFile($"<path id='p' d='{data}'/>{Seen}")));

    [Fact]
    public void A_fill_closes_what_is_open_and_a_line_does_not()
    {
        Assert.Equal(50, Read(SvgFile("<path d='M0 0H10V10'/>")).Region.Area, 1e-3);
        Assert.Contains("nothing is closed", RefusalOf(SvgFile("<path d='M0 0H10V10' fill='none' stroke='red'/>")));
    }

    [Theory]
    [InlineData("nonzero", "M0 0h60v60h-60z M20 20h20v20h-20z", 3600)]
    [InlineData("nonzero", "M0 0h60v60h-60z M20 20v20h20v-20z", 3200)]
    [InlineData("evenodd", "M0 0h60v60h-60z M20 20h20v20h-20z", 3200)]
    public void The_fill_rule_is_kept_and_reported_where_it_drops_a_loop(string rule, string data, double area)
    {
        var outline = Read(SvgFile($"<path d='{data}' style='fill-rule:{rule}'/>"));

        Assert.Equal(area, outline.Region.Area, 1e-3);
        Assert.Equal(area == 3600, outline.Notes.Any(n => n.Kind == "nonzero-applied"));
    }

    [Theory]
    [InlineData("<text x='5' y='5'>words</text>", "text-ignored")]
    [InlineData("<image href='data:image/png;base64,AA' width='9' height='9'/>", "image-ignored")]
    [InlineData("<g clip-path='url(#c)'><clipPath id='c'><rect width='4' height='4'/></clipPath><rect width='9' height='9'/></g>",
        "clip-ignored")]
    [InlineData("<mask id='m'><rect width='4' height='4'/></mask><rect mask='url(#m)' width='9' height='9'/>", "mask-ignored")]
    [InlineData("<filter id='f'/><rect filter='url(#f)' width='9' height='9'/>", "filter-ignored")]
    [InlineData("<marker id='k'/><path d='M0 0h9v9z' marker-start='url(#k)'/>", "marker-ignored")]
    [InlineData(
        "<style>.c{clip-path:url(#c)}</style><clipPath id='c'><rect width='4' height='4'/></clipPath><rect class='c' "
        + "width='9' height='9'/>", "clip-ignored")]
    [InlineData(
        "<style>.c{mask:url(#m)}</style><mask id='m'><rect width='4' height='4'/></mask><rect class='c' width='9' height='9'/>",
        "mask-ignored")]
    [InlineData("<style>.c{filter:url(#f)}</style><filter id='f'/><rect class='c' width='9' height='9'/>", "filter-ignored")]
    [InlineData("<style>.c{marker-end:url(#k)}</style><marker id='k'/><path class='c' d='M0 0h9v9z'/>", "marker-ignored")]
    [InlineData("<marker id='k'/><path d='M0 0h9v9z' style='marker:url(#k)'/>", "marker-ignored")]
    public void What_has_no_outline_and_what_would_change_one_is_reported(string body, string kind) =>
        Assert.Contains(Read(SvgFile(body + Seen)).Notes, n => n.Kind == kind);
}
