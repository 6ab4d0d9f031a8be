using BuckGen.Bucks;
using BuckGen.Findings;

namespace BuckGen.Checks;

/// <summary>Checks of the stack as a whole: whether it reaches its depth and whether wood is left all the way.</summary>
internal static class StackChecks
{
    /// <summary>The findings about depth and height.</summary>
    public static IEnumerable<Finding> Of(StackPlan plan, BuckSpec spec, StackedSolid solid, IReadOnlyList<LayerBlank> layers)
    {
        if (Math.Abs(plan.Miss) > spec.DepthTolerance)
            yield return new("depth-missed", Severity.Warning,
                FormattableString.Invariant(
                    $"The stock gives a depth of {plan.Depth:F2} mm, {Math.Abs(plan.Miss):F2} mm {(plan.Miss > 0 ? "more" : "less")} than the {spec.StackDepth:F2} mm it should have."),
                "Add a thinner sheet to the stock, or accept the depth.")
            {
                Value = plan.Miss, Limit = spec.DepthTolerance,
            };
        var walls = layers.Count(l => l.Role == LayerRole.Wall);
        var reached = walls == 0 ? solid.Shape.Foot : layers[^1].Top;
        if (spec.Kind == BuckKind.Male && solid.Shape.At(solid.Shape.Face).IsEmpty)
            yield return new("nothing-left", Severity.Error,
                FormattableString.Invariant(
                    $"The draft leaves no wood at the top: {walls} of {plan.Sheets.Length} layers have any, up to {reached:F2} mm."),
                "Use less draft or depth, a larger outline, or let the outline be to size at the face.")
            {
                Height = reached, Value = reached - solid.Shape.Foot, Limit = plan.Depth,
            };
        if (spec.Kind == BuckKind.Female && spec.Base is null)
            yield return new("cavity-open", Severity.Note,
                "The cavity goes through the whole stack: it has no floor of its own.",
                "Set the block on a flat plate when forming, or add a base.")
            {
                Height = solid.Shape.Foot,
            };
        if (spec.Kind == BuckKind.Female && solid.Shape.At(solid.Shape.Foot).IsEmpty)
            yield return new("cavity-closes", Severity.Error,
                "The draft closes the cavity before it reaches its floor.",
                "Use less draft or depth, a larger outline, or let the outline be to size at the base.")
            {
                Height = solid.Shape.Foot, Limit = plan.Depth,
            };
    }
}
