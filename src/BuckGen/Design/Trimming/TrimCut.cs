using BuckGen.Design.Bucks;

namespace BuckGen.Design.Trimming;

/// <summary>What cuts the part off its flange.</summary>
public enum TrimTool
{
    /// <summary>Nothing: the flange stays.</summary>
    None,

    /// <summary>A knife or saw that lies flat on the ring of the jig.</summary>
    Ring,

    /// <summary>A saw or knife set to a height.</summary>
    Saw,
}

/// <summary>Where the finished part ends.</summary>
/// <remarks>
/// Heights are counted from the plane in which the flange touched the wood. The part stands on its flange when it is cut. Over a
/// male buck the underside of the flange touched the wood, in a cavity the upper side did; the other side is a gauge away.
/// </remarks>
/// <param name="Tool">What cuts it.</param>
/// <param name="Height">
/// Height of the part's edge over the plane of the flange, mm; below 0 by the gauge where the flange of a cavity's part stays.
/// </param>
public sealed record TrimCut(TrimTool Tool, double Height)
{
    /// <summary>The face of the flange that touched the wood, from which the height is measured.</summary>
    public FlangeFace HeightFrom { get; init; }

    /// <summary>The cut by the ring, or at a height, or none.</summary>
    /// <param name="stack">Kind and stock.</param>
    /// <param name="gauge">Thickness of the flange, mm; it is hardly drawn.</param>
    /// <param name="jig">The jig; null for none.</param>
    /// <param name="cutHeight">Height of a cut without a ring, over the underside of the flange, mm; null for none.</param>
    internal static TrimCut Create(StackSpec stack, double gauge, JigSpec? jig, double? cutHeight)
    {
        var from = stack.Kind == BuckKind.Male ? FlangeFace.Underside : FlangeFace.Upper;
        double OverWood(double height, FlangeFace measuredFrom) => height
            + (measuredFrom == FlangeFace.Upper ? gauge : 0) - (from == FlangeFace.Upper ? gauge : 0);
        TrimCut At(TrimTool tool, double height, FlangeFace measuredFrom) =>
            new(tool, OverWood(height, measuredFrom)) { HeightFrom = from };
        if (cutHeight is { } height) return At(TrimTool.Saw, height, FlangeFace.Underside);
        if (jig is null) return At(TrimTool.None, 0, FlangeFace.Underside);
        var plan = TrimJig.PlanOf(jig, stack);
        return At(TrimTool.Ring, plan.Depth, TrimJig.FaceUnder(plan, jig));
    }
}
