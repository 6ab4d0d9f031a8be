using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Design.Checks;

/// <summary>Are the corners of the plan sharper than the sheet is thick?</summary>
internal sealed class CornerCheck : IDesignCheck
{
    public string Name => "corner";

    public IEnumerable<Finding> Run(DesignView design)
    {
        if (design.Sheet is not { } sheet) yield break;
        var minRadius = design.Checks.MinCorner * sheet.Gauge;
        // A cavity is sharpest at its floor, a male buck at its face.
        var plan = design.Shape.At(design.IsMale ? design.Shape.Face : design.Shape.Foot);
        var sharp = plan.Loops.SelectMany(l => TightTurn.Find(l, minRadius)).Where(t => t.Radius < minRadius).ToArray();
        if (sharp.Length == 0) yield break;
        yield return new("corner-sharp", Severity.Note,
            FormattableString.Invariant(
                $"{sharp.Length} corner{(sharp.Length == 1 ? " of the plan is" : "s of the plan are")} sharper than ")
                + FormattableString.Invariant($"{minRadius:0.##} mm, the sheet is {sheet.Gauge:0.##} mm thick, the sharpest ")
                + FormattableString.Invariant($"{sharp.Min(s => s.Radius):0.##} mm; it thins there."),
            FormattableString.Invariant($"Sand them round to {minRadius:0.##} mm or more."))
        {
            Place = sharp.MinBy(s => s.Radius).Place,
            Value = sharp.Min(s => s.Radius),
            Limit = minRadius,
            Source = "design guidelines of a former: radius at least the starting thickness",
        };
    }
}
