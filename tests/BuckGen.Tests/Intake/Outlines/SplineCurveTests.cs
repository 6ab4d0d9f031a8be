using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Intake.Outlines;

public class SplineCurveTests
{
    [Fact]
    public void A_rational_spline_runs_exactly_on_a_circle()
    {
        var half = Math.Sqrt(0.5);
        ImmutableArray<Vec2> square =
            [new(1, 0), new(1, 1), new(0, 1), new(-1, 1), new(-1, 0), new(-1, -1), new(0, -1), new(1, -1), new(1, 0)];
        var stretches =
            NurbsCurve.Stretches(2, [0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4], square, [1, half, 1, half, 1, half, 1, half, 1]);

        Assert.Equal(4, stretches.Length);
        foreach (var stretch in stretches)
            for (var t = 0.0; t <= 1; t += 0.125)
            {
                Assert.Equal(1, stretch.PointAt(t).Length, 1e-12);
                Assert.Equal(0, stretch.PointAt(t).Dot(stretch.DerivativeAt(t)), 1e-12);
            }
    }

    [Fact]
    public void The_derivative_is_the_slope_of_the_curve() =>
        Gen.Select(Gen.Int[1, 5], Gen.Double[0.05, 0.95], Gen.Double[-50, 50].Array[16], Gen.Double[0.5, 2].Array[8])
            .Sample((degree, t, xy, weights) =>
        {
            ImmutableArray<Vec2> points = [.. Enumerable.Range(0, 8).Select(i => new Vec2(xy[2 * i], xy[2 * i + 1]))];
            var knots = Enumerable.Range(0, 8 + degree + 1).Select(i => (double)Math.Clamp(i - degree, 0, 8 - degree));
            var curve = new NurbsCurve(degree, [.. knots], points, [.. weights], 0, 8 - degree);
            // Away from inner knots, where the slope of a low degree jumps.
            if (Math.Abs(t * (8 - degree) - Math.Round(t * (8 - degree))) < 1e-3) return;

            var slope = (curve.PointAt(t + 1e-6) - curve.PointAt(t - 1e-6)) * 5e5;

            Assert.Equal(0, slope.DistanceTo(curve.DerivativeAt(t)), 1e-2 * Math.Max(1, slope.Length));
        });

    [Fact]
    public void Stretches_end_where_the_curve_has_a_kink()
    {
        ImmutableArray<Vec2> points = [new(0, 0), new(1, 2), new(2, 2), new(3, 0), new(4, 2), new(5, 2), new(6, 0)];

        var stretches = NurbsCurve.Stretches(3, [0, 0, 0, 0, 1, 1, 1, 2, 2, 2, 2], points, []);

        Assert.Equal([new(3, 0), new(6, 0)], stretches.Select(s => s.End));
        Assert.True(stretches[0].DerivativeAt(1).Y < 0 && stretches[1].DerivativeAt(0).Y > 0);
    }

    [Fact]
    public void A_spline_through_points_passes_them_without_a_kink()
    {
        ImmutableArray<Vec2> points = [new(0, 0), new(10, 5), new(25, 0), new(30, 20), new(5, 25), new(0, 0)];
        foreach (var closed in new[] { false, true })
        {
            var curves = SplineThrough.Points(points, closed);

            Assert.Equal(points[1..], curves.Select(c => c.End));
            for (var i = closed ? 0 : 1; i < curves.Length; i++)
            {
                var before = curves[(i + curves.Length - 1) % curves.Length].DerivativeAt(1).Unit();
                Assert.Equal(0, before.DistanceTo(curves[i].DerivativeAt(0).Unit()), 1e-3);
            }
        }
    }
}
