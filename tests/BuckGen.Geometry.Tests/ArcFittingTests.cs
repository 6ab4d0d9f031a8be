using System.Collections.Immutable;
using BuckGen.Geometry.Curves;
using CsCheck;
using Xunit;

namespace BuckGen.Geometry.Tests;

[Trait("Tier", "slow")]
public class ArcFittingTests
{
    private const double Tolerance = 0.01;

    private static readonly Gen<Vec2> Points = Gen.Select(Gen.Double[-100, 100], Gen.Double[-100, 100], (x, y) => new Vec2(x, y));

    private static readonly Gen<Curve> Beziers =
        Gen.Select(Points, Points, Points, Points, (a, b, c, d) => (Curve)new BezierCurve(a, b, c, d));

    [Fact]
    public void A_line_stays_one_line() =>
        Assert.Equal([new Segment(new(0, 0), new(50, 20))],
            ArcFitting.Fit(new LineCurve(new(0, 0), new(50, 20)), Tolerance).Pieces);

    [Fact]
    public void A_circular_arc_stays_on_its_circle()
    {
        var fit = ArcFitting.Fit(EllipseCurve.Circular(new(10, 10), 25, 0.3, 0.3 + 1.5 * Math.PI), Tolerance).Pieces;

        Assert.Equal(2, fit.Length);
        Assert.All(fit, s => Assert.Equal(25, s.Radius, 1e-9));
        Assert.All(fit, s => Assert.Equal(0, s.Centre.DistanceTo(new(10, 10)), 1e-9));
        Assert.Equal(1.5 * Math.PI * 25, fit.Sum(s => s.Length), 1e-9);
    }

    [Fact]
    public void A_circle_drawn_backwards_turns_to_the_right() =>
        Assert.All(ArcFitting.Fit(EllipseCurve.Circular(new(0, 0), 25, 6, 0), Tolerance).Pieces, s => Assert.True(s.Bulge < 0));

    [Fact]
    public void An_ellipse_is_fitted_with_few_arcs()
    {
        var ellipse = new EllipseCurve(new(0, 0), new(50, 0), new(0, 25), 0, 2 * Math.PI);

        var fit = ArcFitting.Fit(ellipse, Tolerance).Pieces;

        AssertFollows(ellipse, fit);
        // Within 0.01 mm chords would be √(8·0.01·r) long: about 150 of them. Arcs need fewer by far.
        Assert.InRange(fit.Length, 8, 64);
    }

    [Fact]
    public void The_fit_lies_within_the_tolerance_of_any_cubic() =>
        Beziers.Sample(curve => AssertFollows(curve, ArcFitting.Fit(curve, Tolerance).Pieces), iter: 200);

    [Fact]
    public void Joined_arcs_have_no_kink() =>
        Beziers.Where(IsRound).Sample(curve =>
        {
            var fit = ArcFitting.Fit(curve, Tolerance).Pieces;
            for (var i = 0; i + 1 < fit.Length; i++)
                // Straight stretches stand for curves flatter than 0.0005 mm and may turn a little.
                if (fit[i].IsArc && fit[i + 1].IsArc)
                    Assert.InRange(Math.Abs(fit[i].DirectionAt(1).AngleTo(fit[i + 1].DirectionAt(0))), 0, 1e-3);
        }, iter: 200);

    [Fact]
    public void A_tighter_tolerance_takes_more_pieces()
    {
        var curve = new BezierCurve(new(0, 0), new(30, 80), new(70, -80), new(100, 0));

        Assert.True(ArcFitting.Fit(curve, 0.001).Pieces.Length > ArcFitting.Fit(curve, 0.1).Pieces.Length);
    }

    [Theory]
    [InlineData(0, 0, 0, 0, 50, 0, 100, 0)]
    [InlineData(0, 0, 33, 0, 66, 0, 100, 0)]
    [InlineData(0, 0, 0, 0, 50, 50, 100, 0)]
    [InlineData(0, 0, 100, 100, 0, 100, 100, 0)]
    [InlineData(0, 0, 120, 60, -20, 60, 100, 0)]
    public void Curves_with_no_handle_a_straight_run_a_cusp_or_a_loop_are_followed(
        double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3)
    {
        var curve = new BezierCurve(new(x0, y0), new(x1, y1), new(x2, y2), new(x3, y3));

        AssertFollows(curve, ArcFitting.Fit(curve, Tolerance).Pieces);
    }

    [Fact]
    public void A_curve_of_no_length_leaves_nothing() =>
        Assert.Empty(ArcFitting.Fit(new BezierCurve(new(5, 5), new(5, 5), new(5, 5), new(5, 5)), Tolerance).Pieces);

    private static void AssertFollows(Curve curve, ImmutableArray<Segment> fit)
    {
        Assert.NotEmpty(fit);
        Assert.Equal(curve.Start, fit[0].Start);
        Assert.Equal(0, curve.End.DistanceTo(fit[^1].End), 1e-9);
        for (var i = 0; i + 1 < fit.Length; i++) Assert.Equal(fit[i].End, fit[i + 1].Start);
        var worst = Enumerable.Range(0, 2001).Max(i => fit.Min(s => s.DistanceTo(curve.PointAt(i / 2000.0))));
        // The fit is judged at samples; between them it may be off by a little more.
        Assert.InRange(worst, 0, 1.5 * Tolerance);
    }

    /// <summary>No cusp or near-cusp: the direction is well defined all along.</summary>
    private static bool IsRound(Curve curve) =>
        Enumerable.Range(0, 201).All(i => curve.DerivativeAt(i / 200.0).Length > 20);
}
