using BuckGen.Design;

namespace BuckGen.Output.Pictures;

/// <summary>The side of a buck in a few words.</summary>
internal static class SideText
{
    /// <summary>Its draft, or the range of its drafts.</summary>
    public static string Draft(BuckDesign design)
    {
        var (min, max) = (design.Spec.Draft, design.Spec.Draft);
        if (design.Solid?.Shape.Side is { StraightDraft: null } side) max = side.Pieces.Where(p => !p.IsLedge).Max(p => p.Draft);
        return FormattableString.Invariant($"{min:0.##} ")
            + (max > min ? FormattableString.Invariant($"to {max:0.##} degrees of draft") : "degrees of draft");
    }
}
