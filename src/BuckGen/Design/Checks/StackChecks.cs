using BuckGen.Design.Bucks;
using BuckGen.Findings;

namespace BuckGen.Design.Checks;

/// <summary>Checks of the stack as a whole: whether it reaches its depth and whether wood is left all the way.</summary>
internal static class StackChecks
{
    /// <summary>The findings about depth and height.</summary>
    public static IEnumerable<Finding> Run(StackPlan plan, StackSpec spec, StackedSolid solid, IReadOnlyList<LayerBlank> layers)
    {
        if (Math.Abs(plan.Miss) > spec.DepthTolerance)
            yield return new("depth-missed", Math.Abs(plan.Miss) > spec.Stock.Min(s => s.Thickness) / 2 ? Severity.Error
                : Severity.Warning,
                FormattableString.Invariant($"The stock gives a depth of {plan.Depth:F2} mm, {Math.Abs(plan.Miss):F2} mm ")
                    + FormattableString.Invariant(
                        $"{(plan.Miss > 0 ? "more" : "less")} than the {plan.Depth - plan.Miss:F2} mm it should have."),
                "Add a thinner stock, or accept the depth.")
            {
                Value = plan.Miss,
                Limit = spec.DepthTolerance,
            };
        if (plan.LikelySpread > 0)
            yield return new("stock-not-measured", plan.LikelySpread > spec.DepthTolerance ? Severity.Warning : Severity.Note,
                FormattableString.Invariant(
                    $"Thicknesses are the catalog's averages: the depth may be anywhere from {plan.DepthRange.Low:0.##} to ")
                    + FormattableString.Invariant(
                        $"{plan.DepthRange.High:0.##} mm, most likely within {plan.LikelySpread:0.##} mm."),
                "Measure your boards and give their thickness.")
            {
                Value = plan.LikelySpread,
                Limit = spec.DepthTolerance,
                Source = "tolerances of the boards in the catalog",
            };
        var walls = layers.Count(l => l.Role == LayerRole.Wall);
        var reached = walls == 0 ? solid.Shape.Foot : layers[^1].Top;
        if (spec.Kind == BuckKind.Male && solid.Shape.At(solid.Shape.Face).IsEmpty)
            yield return new("nothing-left", Severity.Error,
                FormattableString.Invariant(
                    $"The draft leaves no wood at the top: {walls} of {plan.LayerStocks.Length} layers have any, up to ")
                    + FormattableString.Invariant($"{reached:F2} mm."),
                "Use less draft or depth, a larger outline, or let the outline be to size at the face.")
            {
                Height = reached,
                Value = reached - solid.Shape.Foot,
                Limit = plan.Depth,
            };
        if (spec.Kind == BuckKind.Male && solid.Shape.At(solid.Shape.Foot).IsEmpty)
            yield return new("nothing-left", Severity.Error,
                "The draft leaves no wood at the foot: the walls lean the wrong way until nothing is left.",
                "Use a draft above 0 degrees, less depth or a larger outline.")
            {
                Height = solid.Shape.Foot,
                Value = 0,
                Limit = plan.Depth,
            };
        if (spec.Base is null && layers.Count > 0 && layers[0].Wood.Islands.Length > 1)
            yield return new("islands-loose", Severity.Note,
                $"Nothing holds the {layers[0].Wood.Islands.Length} islands of the lowest layer in place.",
                "Add a base, or set them on the platen by the layer drawing.")
            {
                Height = 0,
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
                Height = solid.Shape.Foot,
                Limit = plan.Depth,
            };
    }
}
