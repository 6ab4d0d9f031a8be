using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Output.Models.Meshing;

namespace BuckGen.Output.Models;

/// <summary>Solid models of a buck, to look at or to print. Dowel holes, vents and marks are left out.</summary>
public static class BuckModel
{
    /// <summary>Maximum distance, mm, between an arc of a plan and the chords that stand for it in a model.</summary>
    public const double ChordError = SolidBuilder.ChordError;

    /// <summary>
    /// Farthest, mm, that the wall of the smooth model may stand aside from the drafted wall. It does so only where corners or
    /// whole pieces of the outline come and go on the way up. Elsewhere a wall that is straight on the slope is straight in the
    /// model, within <see cref="ChordError"/>.
    /// </summary>
    public const double MaxDeviation = DraftedShape.SampleStep;

    /// <summary>
    /// The stack as it is cut: layers with straight walls, base and plenum included, as one body where they touch.
    /// </summary>
    /// <param name="design">The design; without layers the mesh is empty.</param>
    public static SolidMesh Stepped(BuckDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return SolidBuilder.Build(design.Layers.SelectMany(Straight));
    }

    /// <summary>
    /// The buck when its steps are sanded or filled: the plates under it as they are cut, the wall with its draft.
    /// </summary>
    /// <param name="design">The design, as <see cref="BuckDesign"/> makes it.</param>
    /// <exception cref="ArgumentException">The design was assembled in code, so its wall is not known.</exception>
    public static SolidMesh Smooth(BuckDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        if (design.Solid is not { } solid)
            throw new ArgumentException("The wall of a design assembled in code is not known.", nameof(design));
        var plates = design.Layers.Where(l => l.Role != LayerRole.Wall).SelectMany(Straight);
        return SolidBuilder.Build([.. plates, .. WallLevels.Compute(solid.Finished, design.Plan)]);
    }

    private static IEnumerable<Level> Straight(Layer layer)
    {
        var plan = layer.Region;
        yield return new(layer.Bottom, plan);
        yield return new(layer.Top, plan);
    }
}
