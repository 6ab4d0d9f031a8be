using System.Collections.Immutable;
using System.Globalization;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>SPLINE: 71 the degree, 40 the knots, 41 the weights, 10 control points, 11 fit points.</summary>
internal static class SplineReading
{
    // Far above what any program draws; it keeps a damaged file from asking for endless work.
    private const int MaxDegree = 25;

    public static DxfEntity Read(TagGroup group, ReadContext context)
    {
        var spline = new DxfSpline(group.Integer(71, 3), Numbers(group, 40), PointList.Read(group, 10, context))
        {
            Weights = Weights(group),
            FitPoints = PointList.Read(group, 11, context),
            Closed = group.Flag(70, 1),
            Periodic = group.Flag(70, 2),
        };
        context.CountVertices(spline.ControlPoints.Length + spline.Knots.Length + spline.FitPoints.Length, group);
        CountCheck.Compare(group, 72, spline.Knots.Length, "knots", context);
        CountCheck.Compare(group, 73, spline.ControlPoints.Length, "control points", context);
        CountCheck.Compare(group, 74, spline.FitPoints.Length, "fit points", context);
        if (Fault(spline) is { } fault)
            throw group.Fault($"{fault} (layer {Excerpt.Shorten(group.Text(8) ?? "0")}); redraw or explode the curve");
        return spline;
    }

    /// <summary>What makes the curve impossible to evaluate, or null when it is sound.</summary>
    public static string? Fault(DxfSpline spline)
    {
        var (degree, knots, points) = (spline.Degree, spline.Knots, spline.ControlPoints.Length);
        if (degree is < 1 or > MaxDegree)
            return $"the degree is {degree}; it must be from 1 to {MaxDegree}";
        if (points == 0)
            return spline.FitPoints.Length >= 2 ? null : "the curve has neither control points nor two fit points";
        if (points < degree + 1)
            return $"the curve has {points} control points; degree {degree} needs at least {degree + 1}";
        if (knots.Length != points + degree + 1)
            return $"the curve has {knots.Length} knots; {points} control points of degree {degree} need {points + degree + 1}";
        for (var i = 1; i < knots.Length; i++)
        {
            if (knots[i] < knots[i - 1])
                return Shown($"the knots decrease from {knots[i - 1]} to {knots[i]}; they must not decrease");
        }

        if (knots[degree] >= knots[points])
            return "the knots leave no room for the curve";
        if (spline.Weights.Length != 0 && spline.Weights.Length != points)
            return $"the curve has {spline.Weights.Length} weights for {points} control points";
        return spline.Weights.Any(weight => weight <= 0) ? "a weight is zero or negative" : null;
    }

    private static string Shown(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    // Some programs write -1 for "no weight".
    private static ImmutableArray<double> Weights(TagGroup group)
    {
        var weights = Numbers(group, 41);
        return weights.All(weight => weight == -1) ? [] : weights;
    }

    private static ImmutableArray<double> Numbers(TagGroup group, int code) =>
        [.. group.Tags.Where(tag => tag.Code == code).Select(group.Number)];
}
