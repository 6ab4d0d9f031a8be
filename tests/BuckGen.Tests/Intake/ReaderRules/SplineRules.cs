using BuckGen.Geometry;
using BuckGen.Tests.Intake.Outlines;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;
using static BuckGen.Tests.Intake.ReaderRules.Files;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>A spline is what its points and knots say, whatever its flags claim.</summary>
public class SplineRules
{
    [Fact]
    public void A_curve_without_clamped_ends_runs_only_where_its_knots_bear_it()
    {
        // Degree 2 over even knots starts and ends halfway along the first and the last leg.
        var outline = Read("", Spline(2, "0 1 2 3 4 5", "0 0,10 10,20 0"), Line(5, 5, 15, 5));

        Assert.Equal(new Bounds(5, 5, 15, 7.5), Rounded(outline.Region.Bounds));
    }

    [Theory]
    [InlineData(1, "0 0 1 1")]
    [InlineData(2, "0 0 0 1 1 1")]
    [InlineData(4, "0 0 0 0 0 1 1 1 1 1")]
    [InlineData(7, "0 0 0 0 0 0 0 0 1 1 1 1 1 1 1 1")]
    public void Any_degree_is_read(int degree, string knots)
    {
        // Points evenly spread on a line give that line at every degree.
        var points =
            string.Join(',', Enumerable.Range(0, degree + 1).Select(i => FormattableString.Invariant($"{12.0 * i / degree} 0")));

        var outline = Read("", Spline(degree, knots, points), Line(12, 0, 12, 5), Line(12, 5, 0, 0));

        Assert.Equal(30, outline.Region.Area, 1e-6);
    }

    [Fact]
    public void Weights_pull_the_curve_and_minus_one_means_none()
    {
        const string quarter = "10 0,10 10,0 10";
        var circle = Read("", Spline(2, "0 0 0 1 1 1", quarter, "1 0.7071067811865476 1"), Line(0, 10, 0, 0), Line(0, 0, 10, 0));
        var parabola = Read("", Spline(2, "0 0 0 1 1 1", quarter), Line(0, 10, 0, 0), Line(0, 0, 10, 0));
        var ignored = Read("", Spline(2, "0 0 0 1 1 1", quarter, "-1 -1 -1"), Line(0, 10, 0, 0), Line(0, 0, 10, 0));

        Assert.Equal(25 * Math.PI, circle.Region.Area, 0.02);
        Assert.Equal(50 + 100.0 / 3, parabola.Region.Area, 0.02);
        Assert.Equal(parabola.Region.Area, ignored.Region.Area);
    }

    [Fact]
    public void A_kink_at_a_knot_repeated_as_often_as_the_degree_stays_sharp()
    {
        var outline =
            Read("", Spline(3, "0 0 0 0 1 1 1 2 2 2 2", "0 0,5 0,10 0,15 0,15 5,15 10,15 15"), Line(15, 15, 0, 15),
                Line(0, 15, 0, 0));

        Assert.Equal(225, outline.Region.Area, 1e-6);
    }

    [Fact]
    public void A_curve_that_falls_apart_at_a_knot_is_refused_where_it_does()
    {
        var message = RefusalOf(DxfText.File(Spline(1, "0 0 1 1 2 2", "0 0,10 0,10 3,20 3"), Line(20, 3, 0, 0)));

        Assert.Contains("SPLINE: the curve breaks at (10.000, 0.000)", message);
    }

    [Fact]
    public void A_knot_repeated_once_more_is_harmless_where_the_points_meet() =>
        Assert.Equal(100, Read("", Spline(1, "0 0 1 1 2 2", "0 0,20 0,20 0,20 10"), Line(20, 10, 0, 0)).Region.Area, 1e-6);

    [Fact]
    public void A_periodic_curve_closes_by_its_points_and_not_by_its_flag()
    {
        const string square = "0 0,30 0,30 30,0 30,0 0,30 0,30 30";
        var outline = Read("", Spline(3, "0 1 2 3 4 5 6 7 8 9 10", square, flags: 11));

        Assert.Equal(1, outline.LoopCount);
        Assert.Empty(outline.Repairs);
        Assert.Equal(new Vec2(15, 15),
            new(Math.Round(outline.Region.Bounds.Centre.X, 3), Math.Round(outline.Region.Bounds.Centre.Y, 3)));
    }

    [Fact]
    public void The_flag_for_closed_adds_no_line_to_an_open_curve() =>
        Assert.Contains("nothing is closed", RefusalOf(DxfText.File(Spline(2, "0 0 0 1 1 1", "0 0,10 20,20 0", flags: 1))));

    [Fact]
    public void Points_to_pass_through_give_a_curve_through_them_and_a_warning()
    {
        var outline = Read("", Tags("0 SPLINE|70 8|71 3|11 0|21 0|11 10|21 5|11 20|21 0"), Line(20, 0, 0, 0));

        Assert.Equal("spline-through-points", Assert.Single(outline.Notes).Kind);
        Assert.Equal(5, outline.Region.Bounds.MaxY, 0.05);
    }

    private static string Spline(int degree, string knots, string points, string weights = "", int flags = 8) => Tags(
        $"0 SPLINE|8 0|70 {flags}|71 {degree}|" + string.Join('|', knots.Split(' ').Select(k => $"40 {k}")
            .Concat(weights.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(w => $"41 {w}"))
            .Concat(points.Split(',').Select(p => $"10 {p.Split(' ')[0]}|20 {p.Split(' ')[1]}"))));

    private static Bounds Rounded(Bounds b) =>
        new(Math.Round(b.MinX, 2), Math.Round(b.MinY, 2), Math.Round(b.MaxX, 2), Math.Round(b.MaxY, 2));
}
