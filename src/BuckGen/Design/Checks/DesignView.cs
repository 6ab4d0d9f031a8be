using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Geometry;

namespace BuckGen.Design.Checks;

/// <summary>What a design check can read. Lengths in mm.</summary>
public sealed class DesignView
{
    internal DesignView(
        StackSpec spec, SheetSpec? sheet, FormerSpec former, CheckSpec checks, DraftedShape shape, StackPlan plan,
        IReadOnlyList<LayerBlank> layers, Blank? blank) =>
        (Spec, Sheet, Former, Checks, Shape, Plan, Layers, Blank) = (spec, sheet, former, checks, shape, plan,
            [.. layers], blank);

    /// <summary>What was asked for.</summary>
    public StackSpec Spec { get; }

    /// <summary>The plastic sheet; null when it is not known.</summary>
    public SheetSpec? Sheet { get; }

    /// <summary>The former.</summary>
    public FormerSpec Former { get; }

    /// <summary>The limits.</summary>
    public CheckSpec Checks { get; }

    /// <summary>The stocks chosen.</summary>
    public StackPlan Plan { get; }

    /// <summary>The layers, lowest first.</summary>
    public IReadOnlyList<LayerBlank> Layers { get; }

    /// <summary>The blank; null when the plastic sheet is not known.</summary>
    public Blank? Blank { get; }

    /// <summary>True for a raised buck.</summary>
    public bool IsMale => Spec.Kind == BuckKind.Male;

    /// <summary>Height of the whole stack.</summary>
    public double Height => Layers.Count == 0 ? 0 : Layers[^1].Top;

    /// <summary>Height at which the drafted walls begin, above the bottom of the stack.</summary>
    public double Foot => Shape.Foot;

    /// <summary>Height at which they end.</summary>
    public double Face => Shape.Face;

    /// <summary>The outline of the smooth, drafted solid at a height; for a cavity, that of the cavity.</summary>
    /// <param name="height">From <see cref="Foot"/> to <see cref="Face"/>.</param>
    public Region OutlineAt(double height) => Shape.At(height);

    /// <summary>The limits that depend on kind and plastic.</summary>
    internal PlasticLimits Limits => new(Spec.Kind, Sheet?.Plastic, Former.PlugGap is not null, Checks);

    /// <summary>The drafted solid.</summary>
    internal DraftedShape Shape { get; }
}
