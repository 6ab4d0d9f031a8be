using System.Collections.Immutable;

namespace BuckGen.Outlines.Svg;

/// <summary>Gathers what is worth telling; findings of one kind become one note with a count and the first places.</summary>
internal sealed class SvgNotes
{
    private const int PlacesNamed = 3;
    private readonly List<(SvgFinding Finding, List<string> Places)> tallies = [];
    private readonly Dictionary<SvgFinding, List<string>> places = [];
    private readonly List<ReadNote> single = [];

    /// <summary>What was counted, in brackets, to be put into an error message; empty when nothing was.</summary>
    public string Summary =>
        tallies.Count == 0 ? "" : $" ({string.Join(", ", tallies.Select(t => $"{t.Finding.What}: {t.Places.Count}"))})";

    /// <summary>Adds a note of its own.</summary>
    public void Add(string kind, string message) => single.Add(new(kind, message));

    /// <summary>Counts a finding.</summary>
    /// <param name="finding">What it is.</param>
    /// <param name="place">Where it stands.</param>
    public void Count(SvgFinding finding, string place)
    {
        if (!places.TryGetValue(finding, out var known)) tallies.Add((finding, known = places[finding] = []));
        known.Add(place);
    }

    /// <summary>All notes in the order in which they came up.</summary>
    public ImmutableArray<ReadNote> ToImmutable() =>
        [.. single, .. tallies.Select(t => new ReadNote(t.Finding.Kind, Told(t.Finding, t.Places)))];

    private static string Told(SvgFinding finding, List<string> places)
    {
        var named = string.Join(", ", places.Take(PlacesNamed)) + (places.Count > PlacesNamed ? ", …" : "");
        return $"{finding.What}: {places.Count} ({named}). {finding.Remedy}";
    }
}
