using BuckGen.Bucks;
using BuckGen.Findings;
using BuckGen.Forming;

namespace BuckGen.Checks;

/// <summary>What a design check may look at.</summary>
/// <param name="Spec">What was asked for.</param>
/// <param name="Shape">The drafted solid.</param>
/// <param name="Plan">The sheets chosen.</param>
/// <param name="Layers">The layers, lowest first.</param>
/// <param name="Blank">The blank; null when the plastic sheet is not known.</param>
internal sealed record DesignView(BuckSpec Spec, DraftedShape Shape, StackPlan Plan, IReadOnlyList<LayerBlank> Layers, Blank? Blank)
{
    /// <summary>True for a raised buck.</summary>
    public bool IsMale => Spec.Kind == BuckKind.Male;

    /// <summary>Height of the whole stack, mm.</summary>
    public double Height => Layers.Count == 0 ? 0 : Layers[^1].Top;
}

/// <summary>One question asked of every design before wood is cut.</summary>
internal interface IDesignCheck
{
    /// <summary>The findings; none when all is well.</summary>
    IEnumerable<Finding> Look(DesignView design);
}
