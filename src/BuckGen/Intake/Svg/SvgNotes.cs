using System.Collections.Immutable;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>Gathers what is worth telling; findings of one kind become one note with a count and the first places.</summary>
internal sealed class SvgNotes
{
    private const int PlacesNamed = 3;
    private const int KindsNamed = 6;
    private readonly List<SvgFinding> order = [];
    private readonly Dictionary<SvgFinding, (int Count, string Places)> tallies = [];
    private readonly List<ReadNote> single = [];

    /// <summary>What was counted, in brackets, to be put into an error message; empty when nothing was.</summary>
    public string Summary =>
        order.Count == 0 ? ""
            : $" ({string.Join(", ", order.Take(KindsNamed).Select(f => $"{f.What}: {tallies[f].Count}"))}"
                + $"{(order.Count > KindsNamed ? ", …" : "")})";

    /// <summary>What to do about a drawing without a shape, as the end of a sentence.</summary>
    public string Remedy => Has("text-ignored") ? "convert the text to outlines (paths) in the drawing program"
        : Has("image-ignored") ? "trace the picture first" : "draw the outline as a filled or stroked path";

    /// <summary>Adds a note of its own.</summary>
    public void Add(string kind, string message) => single.Add(new(kind, message));

    /// <summary>Counts a finding.</summary>
    /// <param name="finding">What it is.</param>
    /// <param name="place">Where it stands.</param>
    public void Count(SvgFinding finding, string place)
    {
        if (!tallies.TryGetValue(finding, out var known))
        {
            order.Add(finding);
            known = (0, "");
        }

        tallies[finding] = (known.Count + 1, known.Count switch
        {
            0 => place,
            < PlacesNamed => $"{known.Places}, {place}",
            PlacesNamed => known.Places + ", …",
            _ => known.Places,
        });
    }

    private bool Has(string kind) => order.Exists(f => f.Kind == kind);

    /// <summary>All notes in the order in which they came up.</summary>
    public ImmutableArray<ReadNote> ToImmutable() =>
        [.. single, .. order
            .Select(f => new ReadNote(f.Kind, $"{f.What}: {tallies[f].Count} ({tallies[f].Places}). {f.Remedy}"))];
}
