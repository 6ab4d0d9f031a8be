using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Checks;

/// <summary>Are the corners of the plan sharper than the sheet is thick?</summary>
internal sealed class CornerCheck : IDesignCheck
{
    public IEnumerable<Finding> Look(DesignView design)
    {
        if (design.Spec.Sheet is not { } sheet) yield break;
        // A cavity is sharpest at its floor, a male buck at its face.
        var plan = design.Shape.At(design.IsMale ? design.Shape.Face : design.Shape.Foot);
        var sharp = plan.Loops.SelectMany(l => TightTurn.Of(l, sheet.Gauge)).ToArray();
        if (sharp.Length == 0) yield break;
        yield return new("corner-sharp", Severity.Note,
            FormattableString.Invariant($"{sharp.Length} corner{(sharp.Length == 1 ? " of the plan is" : "s of the plan are")} sharper than the sheet is thick ({sheet.Gauge:0.##} mm), the sharpest {sharp.Min(s => s.Radius):0.##} mm; the sheet thins there."),
            "Sand them round to the thickness of the sheet or more.")
        {
            Place = sharp.MinBy(s => s.Radius).Place, Value = sharp.Min(s => s.Radius), Limit = sheet.Gauge, Source = "design guidelines of a former: radius at least the starting thickness",
        };
    }
}
