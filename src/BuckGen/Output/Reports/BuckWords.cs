using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>What a maker reads about a buck.</summary>
internal static class BuckWords
{
    /// <summary>What the mean thickness by areas averages over it.</summary>
    public static string AveragedOver(BuckReport buck) =>
        Blank.AveragedOver(buck.Kind == Words.Format(BuckKind.Female) ? BuckKind.Female : BuckKind.Male);

    /// <summary>Its draft, or the range of its drafts.</summary>
    public static string Draft(BuckReport buck)
    {
        double?[] drafts = [.. buck.Side?.Select(s => s.Draft) ?? []];
        return drafts.Max() is { } max && max > buck.Draft
            ? FormattableString.Invariant($"{buck.Draft:0.##} to {max:0.##} degrees")
            : FormattableString.Invariant($"{buck.Draft:0.##} degrees");
    }
}
