namespace BuckGen.Output.Reports;

/// <summary>What a maker reads about the side of a buck, and about several bucks.</summary>
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

    /// <summary>"1 buck", "5 bucks"; the same for heats and blanks.</summary>
    public static string Count(int count, string one) =>
        FormattableString.Invariant($"{count} {one}{(count == 1 ? "" : "s")}");
}
