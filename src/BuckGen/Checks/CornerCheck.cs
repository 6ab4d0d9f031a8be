using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Checks;

/// <summary>Are the corners of the plan sharper than the sheet is thick?</summary>
internal sealed class CornerCheck : IDesignCheck
{
    /// <summary>Joints that turn less than this are smooth, radians.</summary>
    private const double Smooth = 0.2;

    public IEnumerable<Finding> Look(DesignView design)
    {
        if (design.Spec.Sheet is not { } sheet) yield break;
        // A cavity is sharpest at its floor, a male buck at its face.
        var plan = design.Shape.At(design.IsMale ? design.Shape.Face : design.Shape.Foot);
        var sharp = plan.Loops.SelectMany(l => Sharp(l, sheet.Gauge)).ToArray();
        if (sharp.Length == 0) yield break;
        yield return new("corner-sharp", Severity.Note,
            FormattableString.Invariant($"{sharp.Length} corner{(sharp.Length == 1 ? " of the plan is" : "s of the plan are")} sharper than the sheet is thick ({sheet.Gauge:0.##} mm), the sharpest {sharp.Min(s => s.Radius):0.##} mm; the sheet thins there."),
            "Sand them round to the thickness of the sheet or more.")
        {
            Place = sharp.MinBy(s => s.Radius).Place, Value = sharp.Min(s => s.Radius), Limit = sheet.Gauge, Source = "design guidelines of a former: radius at least the starting thickness",
        };
    }

    private static IEnumerable<(Vec2 Place, double Radius)> Sharp(Loop loop, double least)
    {
        var segments = loop.Segments;
        for (var i = 0; i < segments.Length; i++)
        {
            var (s, next) = (segments[i], segments[(i + 1) % segments.Length]);
            if (s.IsArc && s.Radius < least && Math.Abs(s.Sweep) > Smooth) yield return (s.PointAt(0.5), s.Radius);
            if (Math.Abs(s.DirectionAt(1).AngleTo(next.DirectionAt(0))) > Smooth) yield return (s.End, 0);
        }
    }
}
