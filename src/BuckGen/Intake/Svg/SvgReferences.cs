using System.Globalization;
using System.Xml.Linq;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>Follows every use before the libraries do: loops are cut, and what would grow without end is refused.</summary>
/// <param name="byId">The first element of each id.</param>
/// <param name="maxDepth">Maximum depth of nesting through use.</param>
/// <param name="notes">Where loops and dead ends are reported.</param>
internal sealed class SvgReferences(Dictionary<string, XElement> byId, int maxDepth, SvgNotes notes)
{
    // Path data are copied with every use; this many characters of them count as one element.
    private const int CharactersPerElement = 200;

    // What use may make of any file, and how often it may repeat what the file spells out; our own numbers.
    private const double AnyFile = 15_000, Repeats = 2;

    private readonly int maxDepth = maxDepth;
    private readonly Dictionary<XElement, (double Count, int Depth)> known = [];
    private readonly HashSet<XElement> entered = [];
    private readonly List<XElement> dropped = [];

    /// <summary>Cuts loops out of the tree; refuses one that grows beyond the limits.</summary>
    public static void Check(XElement root, string file, SvgReadOptions options, SvgNotes notes)
    {
        var byId = new Dictionary<string, XElement>(StringComparer.Ordinal);
        foreach (var element in root.Descendants())
            if ((string?)element.Attribute("id") is { Length: > 0 } id) byId.TryAdd(id, element);
        // Copies of copies add levels of their own, so twice the depth of the tree itself is allowed.
        var references = new SvgReferences(byId, 2 * options.MaxDepth, notes);
        var (count, depth) = references.Measure(root, 0);
        if (depth > references.maxDepth)
            throw SvgPlace.Error(file, root,
                $"use elements refer to each other over more than {references.maxDepth} levels; unlink the copies");
        var spelt = root.DescendantsAndSelf().Sum(OwnCost);
        var max = Math.Min(options.MaxElements, AnyFile + Repeats * spelt);
        if (count > max)
            throw SvgPlace.Error(file, root, "with every use put in, the drawing grows to "
                + FormattableString.Invariant(
                    $"{(count < 1e9 ? count.ToString("0", CultureInfo.InvariantCulture) : "over 10^9")} elements, ")
                    + FormattableString.Invariant(
                        $"{CharactersPerElement} characters of path data counted as one; the limit for a file that spells ")
                        + FormattableString.Invariant($"out {spelt:0} is {max:0}; leave out copies or simplify it"));
        foreach (var use in references.dropped) use.Remove();
    }

    /// <summary>How many elements there are from here on, every use put in, and over how many levels.</summary>
    private (double Count, int Depth) Measure(XElement element, int level)
    {
        if (known.TryGetValue(element, out var before)) return before;
        var (count, depth) = (OwnCost(element), 0);
        // Deep chains end here and are refused by their depth.
        if (level > maxDepth) return (count, maxDepth + 1);
        entered.Add(element);
        foreach (var next in Nexts(element))
        {
            var (nextCount, nextDepth) = Measure(next, level + 1);
            (count, depth) = (count + nextCount, Math.Max(depth, nextDepth + 1));
        }

        entered.Remove(element);
        return known[element] = (count, depth);
    }

    /// <summary>What an element counts by itself: a use costs the libraries about as much time as five shapes.</summary>
    private static double OwnCost(XElement element)
    {
        var data = ((string?)element.Attribute("d") ?? (string?)element.Attribute("points"))?.Length ?? 0;
        return (element.Name.LocalName == "use" ? 5.0 : 1) + data / CharactersPerElement;
    }

    private IEnumerable<XElement> Nexts(XElement element)
    {
        foreach (var child in element.Elements()) yield return child;
        if (element.Name.LocalName != "use") yield break;
        var id = SvgLeftOut.Target(element)?.TrimStart('#') ?? "";
        if (!byId.TryGetValue(Uri.UnescapeDataString(id), out var target))
        {
            Drop(element, SvgFinding.DeadEnd, id);
        }
        else if (entered.Contains(target))
        {
            Drop(element, SvgFinding.Loop, id);
        }
        else yield return target;
    }

    private void Drop(XElement use, SvgFinding finding, string id)
    {
        notes.Count(finding, $"{SvgPlace.Describe(use)} (#{Excerpt.Shorten(id)})");
        dropped.Add(use);
    }
}
