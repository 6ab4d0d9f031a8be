using System.Collections.Immutable;
using BuckGen.Dxf;

namespace BuckGen.Outlines.Dxf;

/// <summary>Counts what a drawing holds beside outlines, by type and layer.</summary>
internal sealed class LeftOut
{
    private readonly List<(string Kind, string What, string Remedy)> order = [];
    private readonly Dictionary<(string, string), int> counts = [];
    private readonly List<ReadNote> single = [];

    /// <summary>Counts one more.</summary>
    /// <param name="kind">Short stable word for programs.</param>
    /// <param name="entity">The entity.</param>
    /// <param name="layer">The layer it is on, and why it is not seen where that is the reason.</param>
    /// <param name="remedy">A sentence on what to do, or empty.</param>
    public void Add(string kind, DxfEntity entity, string layer, string remedy = "") =>
        AddWords(kind, $"{entity.Type} on layer {layer}", remedy);

    /// <summary>Counts one more thing, in words of its own.</summary>
    public void AddWords(string kind, string what, string remedy)
    {
        if (!counts.TryAdd((kind, what), 1)) counts[(kind, what)]++;
        else order.Add((kind, what, remedy));
    }

    /// <summary>Tells something that needs a sentence of its own.</summary>
    public void Tell(string kind, string message) => single.Add(new(kind, message));

    /// <summary>One note for each kind and remedy, then the single ones.</summary>
    public ImmutableArray<ReadNote> Notes => [.. order.GroupBy(o => (o.Kind, o.Remedy)).Select(group => new ReadNote(
        group.Key.Kind,
        $"left out: {string.Join(", ", group.Select(o => $"{counts[(o.Kind, o.What)]} {o.What}"))}.{(group.Key.Remedy.Length == 0 ? "" : $" {group.Key.Remedy}")}")), .. single];
}
