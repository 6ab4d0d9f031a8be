using System.Collections.Immutable;
using BuckGen.Dxf.Entities;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Dxf;

/// <summary>Counts what a drawing holds beside outlines, by type and layer.</summary>
internal sealed class LeftOut
{
    /// <summary>At most this many things of a kind are named one by one.</summary>
    private const int MaxNamed = 5;

    /// <summary>
    /// A layer name that was shortened already, with the reason why the layer is hidden, is not shortened again.
    /// </summary>
    private const int MaxLength = 80;

    private readonly List<(string Kind, string What, string Remedy)> order = [];
    private readonly Dictionary<(string, string), int> counts = [];
    private readonly List<ReadNote> single = [];

    /// <summary>Counts one more.</summary>
    /// <param name="kind">Short stable word for programs.</param>
    /// <param name="entity">The entity.</param>
    /// <param name="layer">The layer it is on, and why it is not seen where that is the reason.</param>
    /// <param name="remedy">A sentence on what to do, or empty.</param>
    public void Add(string kind, DxfEntity entity, string layer, string remedy = "") =>
        AddWords(kind, $"{Excerpt.Shorten(entity.Type)} on layer {(layer.Length > MaxLength ? Excerpt.Shorten(layer) : layer)}",
            remedy);

    /// <summary>Counts one more thing, in words of its own.</summary>
    public void AddWords(string kind, string what, string remedy)
    {
        if (!counts.TryAdd((kind, what), 1)) counts[(kind, what)]++;
        else order.Add((kind, what, remedy));
    }

    /// <summary>Reports something that needs a sentence of its own.</summary>
    public void Report(string kind, string message) => single.Add(new(kind, message));

    /// <summary>One note for each kind and remedy, then the single ones.</summary>
    public ImmutableArray<ReadNote> Notes =>
        [.. order.GroupBy(o => (o.Kind, o.Remedy)).Select(group => Gathered(group.Key.Kind, group.Key.Remedy, [.. group])),
            .. single.GroupBy(n => n.Kind).SelectMany(First)];

    private ReadNote Gathered(string kind, string remedy, ImmutableArray<(string Kind, string What, string Remedy)> group)
    {
        var named = string.Join(", ", group.Take(MaxNamed).Select(o => $"{counts[(o.Kind, o.What)]} {o.What}"));
        var rest = group.Skip(MaxNamed).Sum(o => counts[(o.Kind, o.What)]);
        return new(kind,
            "left out: "
            + $"{named}{(rest == 0 ? "" : $" and {rest} more on {group.Length - MaxNamed} other layers or of other types")}."
            + $"{(remedy.Length == 0 ? "" : $" {remedy}")}");
    }

    private static IEnumerable<ReadNote> First(IGrouping<string, ReadNote> kind)
    {
        var all = kind.Count();
        return all <= MaxNamed ? kind : kind.Take(MaxNamed).Append(new(kind.Key, $"The same holds for {all - MaxNamed} more."));
    }
}
