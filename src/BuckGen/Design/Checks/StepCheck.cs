using BuckGen.Design.Bucks;
using BuckGen.Findings;

namespace BuckGen.Design.Checks;

/// <summary>Do the steps between layers show through the sheet when they are left?</summary>
internal sealed class StepCheck : IDesignCheck
{
    public string Name => "step";

    public IEnumerable<Finding> Run(DesignView design)
    {
        if (design.Blank is not { } blank) yield break;
        var walls = design.Layers.Where(l => l.Role == LayerRole.Wall);
        // Of a straight side the thickest layer has the widest step; of another, the one where it leans most.
        var thickest = design.Shape.Side.StraightDraft is null ? walls.MaxBy(Shift)! : walls.MaxBy(l => l.Top - l.Bottom)!;
        var step = design.Shape.Side.StraightDraft is { } draft
            ? (thickest.Top - thickest.Bottom) * Math.Tan(draft * Math.PI / 180)
            : Shift(thickest);
        var maxStep = design.Checks.MaxStep * blank.MeanThickness;
        if (step <= maxStep) yield break;
        yield return new("steps-telegraph", Severity.Note,
            FormattableString.Invariant(
                $"The steps between layers are up to {step:0.##} mm wide, the formed sheet is {blank.MeanThickness:0.##} ")
                + "mm thick: left as they are, they show through.",
            design.Spec.Steps == Steps.Inside ? "Fill them flush with the edges."
                : "Sand them down to the marked lines, or use thinner layers.")
        {
            Height = thickest.Top,
            Value = step,
            Limit = maxStep,
            Source = "common practice, no source",
        };

        double Shift(LayerBlank layer) => Math.Abs(
            design.Shape.OffsetAt(design.Shape.Above(layer.Bottom)) - design.Shape.OffsetAt(design.Shape.Below(layer.Top)));
    }
}
