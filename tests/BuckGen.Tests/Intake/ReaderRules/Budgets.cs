using System.IO.Compression;
using System.Text;
using BuckGen.Dxf.Reading;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;
using BuckGen.Intake.Measuring;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Svg;
using BuckGen.Tests.Intake.Outlines;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;
using static BuckGen.Tests.Intake.ReaderRules.Files;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>
/// What a drawing may cost follows from the size of its file: small files that ask for much are refused, large honest ones are
/// read.
/// </summary>
[Trait("Tier", "slow")]
public class Budgets
{
    private const string Square = "<rect width='9' height='9'/>";

    [Fact]
    public void A_grid_of_a_block_may_not_grow_far_beyond_what_the_file_spells_out() =>
        Assert.Contains(
            "with every block in place the drawing has 300000 lines and curves; the limit for a file that spells out 2 is 50008",
            RefusalOf(FileWith(Millimetres, Blocks(Block("A", Circle(0, 0, 5))),
                "0\nINSERT\n2\nA\n10\n0\n20\n0\n70\n30000\n71\n5\n44\n20\n45\n20\n")));

    [Fact]
    public void A_perforated_panel_of_ten_thousand_holes_is_read() =>
        Assert.Equal(10_000,
            Read(FileWith(Millimetres, Blocks(Block("A", Circle(0, 0, 5))),
                "0\nINSERT\n2\nA\n10\n0\n20\n0\n70\n100\n71\n100\n44\n20\n45\n20\n")).LoopCount);

    [Fact]
    public void The_stretches_of_a_long_spline_hold_each_point_a_few_times_only()
    {
        const int n = 20_000;
        var stretches =
            NurbsCurve.Stretches(3, [.. Enumerable.Range(0, n + 4).Select(i => (double)i)],
                [.. Enumerable.Range(0, n).Select(i => new Vec2(i, i % 7))], []);

        Assert.InRange(stretches.Sum(s => s.Points.Length), n, 3 * n);
    }

    [Fact]
    public void A_curve_shorter_than_a_few_tolerances_becomes_two_pieces_at_most()
    {
        var curve = new BezierCurve(new(0, 0), new(0.03, 0.01), new(0.06, 0.01), new(0.09, 0));

        Assert.InRange(ArcFitting.Fit(curve, 0.01).Pieces.Length, 1, 2);
    }

    [Fact]
    public void Curves_of_a_small_file_that_come_to_very_many_pieces_are_refused()
    {
        var curves = string.Concat(Enumerable.Repeat("C9e7 9e7 -9e7 9e7 1 1", 600));

        Assert.Contains("the limit for a file of its size is 1", RefusalOf(SvgFile($"<path d='M0 0{curves}z'/>")));
    }

    [Fact]
    public void A_path_that_is_closed_again_and_again_is_closed_once() =>
        Assert.Equal("M 0 0L 9 0L 9 9z", SvgGrammar.PlainPath("M0 0 9 0 9 9zzZ z", out _));

    [Fact]
    public void Copies_of_copies_may_not_grow_far_beyond_what_the_file_spells_out()
    {
        var doubling =
            string.Concat(Enumerable.Range(0, 12)
                .Select(i => $"<g id='g{i}'><use href='#g{i + 1}'/><use href='#g{i + 1}' x='1'/></g>"));

        Assert.Contains("the limit for a file that spells out",
            RefusalOf(SvgFile($"<defs>{doubling}<g id='g12'>{Square}</g></defs><use href='#g0'/>")));
    }

    [Theory]
    [InlineData("g g g rect{fill:red}")]
    [InlineData("rect~rect~rect{fill:red}")]
    public void A_style_rule_that_can_be_laid_over_the_tree_in_many_ways_is_refused(string rule)
    {
        var (open, close) = (string.Concat(Enumerable.Repeat("<g>", 150)), string.Concat(Enumerable.Repeat("</g>", 150)));

        Assert.Contains("the style rules take",
            RefusalOf(SvgFile($"<style>{rule}</style>{open}{string.Concat(Enumerable.Repeat(Square, 500))}{close}")));
    }

    [Fact]
    public void The_style_rules_of_a_usual_drawing_are_borne() =>
        Assert.Equal(1,
            Read(SvgFile(
                $"<style>svg .a{{fill:red}}g > rect{{stroke:none}}@media "
                + $"print{{.b{{fill:none}}}}</style><g>{string.Concat(Enumerable.Repeat(Square, 500))}</g>")).LoopCount);

    [Fact]
    public void Elements_that_all_lie_very_deep_are_refused()
    {
        var chain = string.Concat(Enumerable.Repeat("<g>", 190)) + Square + string.Concat(Enumerable.Repeat("</g>", 190));

        Assert.Contains("levels deep on average", RefusalOf(SvgFile(string.Concat(Enumerable.Repeat(chain, 120)))));
    }

    [Fact]
    public void An_element_of_very_many_attributes_is_refused() =>
        Assert.Contains("attributes, the limit is 500",
            RefusalOf(SvgFile(
                $"<rect width='9' height='9' {string.Join(' ', Enumerable.Range(0, 600).Select(i => $"a{i}='1'"))}/>")));

    [Fact]
    public void A_DOCTYPE_that_goes_on_and_on_is_refused_before_it_is_understood() =>
        Assert.Contains("the DOCTYPE is longer than 20000 characters", RefusalOf(Encoding.UTF8.GetBytes(
            $"<!DOCTYPE svg [<!-- ]> --><!ELEMENT rect ({string.Concat(Enumerable.Repeat("a?,", 10_000))}b)>]><svg "
            + $"xmlns='http://www.w3.org/2000/svg'>{Square}</svg>")));

    [Fact]
    public void A_packed_file_that_is_mostly_nothing_is_refused()
    {
        using var packed = new MemoryStream();
        using (var packer = new GZipStream(packed, CompressionLevel.SmallestSize)) packer
            .Write(SvgFile(Square + new string(' ', 30_000_000)));

        Assert.Contains("beyond 50 times its size", RefusalOf(packed.ToArray()));
    }

    [Fact]
    public void Sections_by_the_thousand_are_gathered_without_copying_what_was_read_before()
    {
        var file = Encoding.ASCII.GetBytes(
            string.Concat(Enumerable.Range(0, 6000).Select(i => $"0\nSECTION\n2\nENTITIES\n{Circle(3 * i, 0, 1)}0\nENDSEC\n"))
                + "0\nEOF\n");
        DxfReader.Read(file);
        var before = GC.GetAllocatedBytesForCurrentThread();

        Assert.Equal(6000, DxfReader.Read(file).Entities.Length);

        // Copying would take 144 MB for the references alone.
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100 * (long)file.Length);
    }

    [Fact]
    public void Oddities_by_the_thousand_are_reported_one_by_one_only_at_first()
    {
        var odd = string
            .Concat(Enumerable.Range(0, 2000)
                .Select(i =>
                    $"0\nLWPOLYLINE\n8\n0\n90\n7\n70\n1\n10\n{3 * i}\n20\n0\n10\n{3 * i + 1}\n20\n0\n10\n{3 * i}\n20\n1\n"));

        var notes = Read(DxfText.File(odd)).Notes;

        Assert.Equal(21, notes.Length);
        Assert.Contains("1980 more places", notes[^1].Message);
    }

    [Fact]
    public void Names_as_long_as_a_file_are_cut_in_messages()
    {
        var name = new string('L', 10_000);

        Assert.InRange(RefusalOf(DxfText.File(Line(0, 0, 9, 0, name))).Length, 20, 400);
        Assert.InRange(RefusalOf(DxfText.File($"0\n{name}\n8\n0\n", "0\nLINE\n8\n0\n10\n0\n")).Length, 20, 400);
        Assert.All(Read(
            DxfText.File(
                [Circle(0, 0, 5), .. Enumerable.Range(0, 50).Select(i => $"0\nTEXT\n8\n{i}{name}\n10\n0\n20\n0\n1\nx\n")])).Notes,
                n => Assert.InRange(n.Message.Length, 20, 500));
    }

    [Fact]
    public void A_round_shape_of_very_many_sides_is_measured_within_the_budget()
    {
        const int sides = 30_000;
        var ring = Region
            .FromLoops([
                Loop.Polygon(Enumerable.Range(0, sides)
                    .Select(i => new Vec2(500 * Math.Cos(2 * Math.PI * i / sides), 500 * Math.Sin(2 * Math.PI * i / sides))))]);

        var measures = OutlineMeasures.Measure(Outline.FromRegion("ring", ring));

        Assert.Equal(1000, measures.NarrowestNeck!.Width, 1e-3);
        Assert.Empty(measures.Notes);
    }
}
