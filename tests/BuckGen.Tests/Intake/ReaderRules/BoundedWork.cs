using System.Text;
using BuckGen.Tests.Intake.Outlines;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;
using static BuckGen.Tests.Intake.ReaderRules.Files;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>Small files that once took very long or very much room; each ends at a limit, or quickly.</summary>
[Trait("Tier", "slow")]
public class BoundedWork
{
    private const string Square = "<rect width='9' height='9'/>";

    [Theory]
    [InlineData("M0 0A1e9 1e-9 33 0 1 9 9z")]
    [InlineData("M0 0A1e9 1 33 0 1 0 1e9z")]
    public void An_arc_on_an_ellipse_beyond_every_drawing_is_refused_and_not_halved_without_end(string data) =>
        Assert.Contains("from the origin, the limit is 1E+08 mm", RefusalOf(SvgFile($"<path d='{data}'/>")));

    [Fact]
    public void A_stroke_that_goes_round_hundreds_of_times_is_given_up()
    {
        var lap = string
            .Concat(Enumerable.Range(0, 40)
                .Select(i =>
                    FormattableString.Invariant($"L{50 + 40 * Math.Cos(i * 0.157):F3} {50 + 40 * Math.Sin(i * 0.157):F3}")));

        Assert.Contains("test.dxf", RefusalOf(SvgFile($"<path d='M90 50{string.Concat(Enumerable.Repeat(lap, 300))}z'/>")));
    }

    [Fact]
    public void Rings_by_the_thousand_are_given_up_and_not_compared_pair_by_pair() =>
        Assert.Contains("since very many lie about one centre",
            RefusalOf(DxfText.File(Enumerable.Range(1, 4000).Select(i => Circle(0, 0, i * 0.05)))));

    /// <summary>
    /// The copies meet all along their curves, and from each place both are followed until they part. Two mutants, of
    /// ff_ampersand.svg and cairo_text.svg, took 2.2 s so.
    /// </summary>
    [Fact]
    public void A_letter_drawn_again_and_again_a_hair_aside_is_followed_quickly()
    {
        var drawn = Encoding.UTF8.GetString(Corpus.File("svg/ff_ampersand.svg").Content);
        var letter = drawn[drawn.IndexOf("<path", StringComparison.Ordinal)..drawn.IndexOf("</svg>", StringComparison.Ordinal)];
        var copies = string.Concat(Enumerable.Range(1, 6).Select(i => letter
            .Replace("-141 193 -141", FormattableString.Invariant($"-141 {193 + i * 0.2} -141"), StringComparison.Ordinal)));
        Assert.DoesNotContain("-141 193 -141", copies);

        var refusal = RefusalOf(Encoding.UTF8.GetBytes(drawn.Replace(letter, letter + copies, StringComparison.Ordinal)));

        Assert.Contains("outlines cross at", refusal);
    }

    [Fact]
    public void Copies_of_a_long_path_are_counted_by_its_length()
    {
        var path = $"<path id='a' d='M0 0{string.Concat(Enumerable.Repeat("h1v1", 2000))}z'/>";

        Assert.Contains("200 characters of path data",
            RefusalOf(SvgFile(path + string.Concat(Enumerable.Repeat("<use href='#a'/>", 3000)))));
    }

    [Fact]
    public void Elements_left_out_by_the_ten_thousand_do_not_cost_a_walk_each() =>
        Assert.Equal(1, Read(SvgFile(Square + string.Concat(Enumerable.Repeat("<defs/>words<text/>", 30_000)))).LoopCount);

    [Fact]
    public void Long_open_lines_by_the_thousand_are_reported_in_one_message() =>
        Assert.Contains("outlines are open", Reading.Refusal(
            Enumerable.Range(0, 5000).Select(i => Line(0, i * 0.2, 1000, i * 0.2 + 3)).Append(Circle(0, 0, 3000))));

    [Fact]
    public void A_line_end_within_a_binary_value_does_not_break_the_message()
    {
        var file = Corpus.File("dxf/ez_binary_r2000.dxf").Content;
        var place = file.AsSpan().LastIndexOf("LWPOLYLINE"u8);
        file[place + 5] = (byte)'\n';

        Assert.DoesNotContain('\n', RefusalOf(file));
    }

    [Fact]
    public void Names_that_are_not_UTF8_by_the_thousand_are_reported_once()
    {
        var lines = Enumerable.Range(0, 3000).Select(i => Circle(i * 3, 0, 1, "Fr\u00E4sen"));
        var file = Encoding.Latin1.GetBytes("0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1027\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n"
            + $"0\nSECTION\n2\nENTITIES\n{string.Concat(lines)}0\nENDSEC\n0\nEOF\n");

        Assert.Contains("not UTF-8", Assert.Single(Read(file).Notes).Message);
    }
}
