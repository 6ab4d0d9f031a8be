using System.Collections.Immutable;

namespace BuckGen.Bucks;

/// <summary>The limits that a design is held against, and what its maker does not want to hear again.</summary>
public sealed record CheckSpec
{
    /// <summary>
    /// Least gap between raised parts, times the depth. One depth at least, better 1.75 (guides of resin suppliers, from memory).
    /// </summary>
    public double WebGap { get; init; } = 1;

    /// <summary>Narrowest neck of wood, mm. Details under 1 mm are fragile, a laser cutter's advice; 3 mm is common practice (no source).</summary>
    public double LeastNeck { get; init; } = 3;

    /// <summary>
    /// Least draft of a male buck, degrees. Published minima run from 1.5 (a former's advice) to 5 (a copolyester maker); 3 is in a
    /// former's design guidelines.
    /// </summary>
    public double LeastDraftMale { get; init; } = 3;

    /// <summary>Least draft of a cavity, degrees. Published minima run from 0 (SPE Thermoforming Quarterly 25(1), 2006) to 2 (a former's guidelines).</summary>
    public double LeastDraftFemale { get; init; } = 2;

    /// <summary>Greatest depth of a cavity over its width. Source: a former's advice, 75 per cent of the smaller dimension.</summary>
    public double DeepestFemale { get; init; } = 0.75;

    /// <summary>Greatest height of a male buck over its width. About 1 without a plug or a bubble (Throne, from memory).</summary>
    public double DeepestMale { get; init; } = 1;

    /// <summary>Greatest formed area over flat area before tearing is near. Common practice, no source.</summary>
    public double LargestDraw { get; init; } = 3;

    /// <summary>Findings that are kept as notes, each with the maker's reason.</summary>
    public ImmutableArray<Silence> Silenced { get; init; } = [];

    internal void Validate()
    {
        BuckSpec.Require(WebGap is >= 0 and <= 10, "least gap against webs", WebGap, " times the depth", "from 0 to 10");
        BuckSpec.Require(LeastNeck is >= 0 and <= 100, "narrowest neck", LeastNeck, " mm", "from 0 to 100 mm");
        BuckSpec.Require(LeastDraftMale is >= 0 and <= 45, "least draft of a male buck", LeastDraftMale, " degrees", "from 0 to 45 degrees");
        BuckSpec.Require(LeastDraftFemale is >= 0 and <= 45, "least draft of a cavity", LeastDraftFemale, " degrees", "from 0 to 45 degrees");
        BuckSpec.Require(DeepestFemale is > 0 and <= 10, "greatest depth of a cavity over its width", DeepestFemale, "", "above 0 and at most 10");
        BuckSpec.Require(DeepestMale is > 0 and <= 10, "greatest height of a buck over its width", DeepestMale, "", "above 0 and at most 10");
        BuckSpec.Require(LargestDraw is >= 1 and <= 20, "greatest draw ratio", LargestDraw, "", "from 1 to 20");
        foreach (var silence in Silenced)
            if (string.IsNullOrWhiteSpace(silence.Id) || string.IsNullOrWhiteSpace(silence.Reason))
                throw new SpecException("A silenced finding needs its id and a reason.");
    }
}

/// <summary>A finding the maker knows of and accepts.</summary>
/// <param name="Id">The finding's word, such as "web-between".</param>
/// <param name="Reason">Why it is accepted; shown with the finding.</param>
public sealed record Silence(string Id, string Reason);
