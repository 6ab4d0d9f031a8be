namespace BuckGen.Output.Reports;

/// <summary>What a maker reads about the side of a buck.</summary>
internal static class BuckWords
{
    /// <summary>Its draft, or the range of its drafts.</summary>
    public static string Draft(BuckReport buck)
    {
        double?[] drafts = [.. buck.Side?.Select(s => s.Draft) ?? []];
        return drafts.Max() is { } max && max > buck.Draft
            ? FormattableString.Invariant($"{buck.Draft:0.##} to {max:0.##} degrees")
            : FormattableString.Invariant($"{buck.Draft:0.##} degrees");
    }
}
