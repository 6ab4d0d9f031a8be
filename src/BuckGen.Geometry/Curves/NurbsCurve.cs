using System.Collections.Immutable;

namespace BuckGen.Geometry.Curves;

/// <summary>A stretch of a B-spline, rational when it has weights.</summary>
/// <param name="Degree">Degree, 1 or more.</param>
/// <param name="Knots">Knots in non-decreasing order; their number is points + degree + 1.</param>
/// <param name="Points">Control points.</param>
/// <param name="Weights">One weight above 0 for each point, or empty when all are equal.</param>
/// <param name="From">Knot value where the stretch starts, not below <c>Knots[Degree]</c>.</param>
/// <param name="To">Knot value where it ends, above <paramref name="From"/> and not above <c>Knots[Points.Length]</c>.</param>
/// <remarks>Evaluated by de Boor's algorithm; the derivative comes from its last step but one.</remarks>
public sealed record NurbsCurve(
    int Degree, ImmutableArray<double> Knots, ImmutableArray<Vec2> Points, ImmutableArray<double> Weights, double From,
    double To) : Curve
{
    /// <summary>The stretches of a whole B-spline, each smooth inside and at most a few knots long.</summary>
    internal static ImmutableArray<NurbsCurve> Stretches(
        int degree, ImmutableArray<double> knots, ImmutableArray<Vec2> points, ImmutableArray<double> weights)
    {
        const int longest = 4;
        var last = degree;
        var inner = knots.Skip(degree).Take(points.Length - degree + 1).GroupBy(k => k)
            .Select(k => (Value: k.Key, Count: k.Count()))
            .Select(k => (k.Value, Kink: k.Count >= degree, Next: last += k.Count)).ToList();
        var stretches = ImmutableArray.CreateBuilder<NurbsCurve>();
        for (var (first, i) = (0, 1); i < inner.Count; i++)
        {
            if (i < inner.Count - 1 && !inner[i].Kink && i - first < longest) continue;
            stretches.Add(Between(inner[first].Value, inner[i].Value, inner[first].Next - 1, inner[i - 1].Next - 1));
            first = i;
        }

        return stretches.ToImmutable();

        // Only the points that pull at a stretch go with it: a copy of all of them for each would need too much memory.
        NurbsCurve Between(double from, double to, int firstSpan, int lastSpan)
        {
            var (start, count) = (firstSpan - degree, lastSpan - firstSpan + degree + 1);
            return new(degree, knots.Slice(start, count + degree + 1), points.Slice(start, count), weights.IsDefaultOrEmpty ? []
                : weights.Slice(start, count), from, to);
        }
    }

    /// <inheritdoc/>
    internal override double MaxLength => Points.Skip(1).Zip(Points, (b, a) => a.DistanceTo(b)).Sum();

    /// <inheritdoc/>
    public override Vec2 PointAt(double t)
    {
        var (p, w, _, _) = Evaluate(t);
        return p * (1 / w);
    }

    /// <inheritdoc/>
    public override Vec2 DerivativeAt(double t)
    {
        var (p, w, dp, dw) = Evaluate(t);
        return (dp - p * (dw / w)) * ((To - From) / w);
    }

    /// <inheritdoc/>
    public override Curve Transformed(Affine map) => this with { Points = [.. Points.Select(map.Apply)] };

    /// <summary>Weighted point, weight, and the derivatives of both by the knot value.</summary>
    private (Vec2 Point, double Weight, Vec2 PointSlope, double WeightSlope) Evaluate(double t)
    {
        var u = From + (To - From) * t;
        var span = SpanOf(u);
        Span<Vec2> p = stackalloc Vec2[Degree + 1];
        Span<double> w = stackalloc double[Degree + 1];
        for (var i = 0; i <= Degree; i++)
        {
            w[i] = Weights.IsDefaultOrEmpty ? 1 : Weights[span - Degree + i];
            p[i] = Points[span - Degree + i] * w[i];
        }

        var (slope, weightSlope) = (default(Vec2), 0.0);
        for (var level = 1; level <= Degree; level++)
        {
            if (level == Degree)
            {
                var factor = Degree / (Knots[span + 1] - Knots[span]);
                (slope, weightSlope) = ((p[Degree] - p[Degree - 1]) * factor, (w[Degree] - w[Degree - 1]) * factor);
            }

            for (var i = Degree; i >= level; i--)
            {
                var low = Knots[span - Degree + i];
                var part = (u - low) / (Knots[span + 1 + i - level] - low);
                p[i] = p[i - 1] * (1 - part) + p[i] * part;
                w[i] = w[i - 1] * (1 - part) + w[i] * part;
            }
        }

        return (p[Degree], w[Degree], slope, weightSlope);
    }

    /// <summary>
    /// The knot span of a value; at the end of the stretch the one before it, so that a kink belongs to both sides.
    /// </summary>
    private int SpanOf(double u)
    {
        var (low, high) = (Degree, Points.Length);
        // The last knot not above u, or below u at the end of the stretch.
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (Knots[middle] < u || (Knots[middle] == u && u < To)) low = middle;
            else high = middle;
        }

        return low;
    }
}
