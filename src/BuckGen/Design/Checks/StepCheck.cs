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
        var thickest = design.Layers.Where(l => l.Role == LayerRole.Wall).MaxBy(l => l.Top - l.Bottom)!;
        var step = (thickest.Top - thickest.Bottom) * Math.Tan(design.Spec.Draft * Math.PI / 180);
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
    }
}
