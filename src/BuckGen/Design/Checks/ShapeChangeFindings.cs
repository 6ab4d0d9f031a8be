using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Checks;

/// <summary>Says in plain words what the draft does to the outline's parts, and at which height.</summary>
internal static class ShapeChangeFindings
{
    /// <summary>One finding a change, and one that says when there are too many to find their heights exactly.</summary>
    /// <param name="changes">The changes.</param>
    /// <param name="resolution">How exactly heights are found, mm.</param>
    /// <param name="reference">Height at which the outline is to size, mm.</param>
    /// <param name="kind">Male or female.</param>
    public static IEnumerable<Finding> Find(
        IReadOnlyCollection<RegionChange> changes, double resolution, double reference, BuckKind kind)
    {
        foreach (var change in changes) yield return Describe(change, reference, kind);
        if (changes.Count(c => c.Within > resolution) is > 0 and var rough)
            yield return new("changes-rough", Severity.Note,
                FormattableString.Invariant(
                    $"The shape changes in too many places to find every height exactly: the heights of {rough} changes ")
                    + FormattableString.Invariant(
                        $"are known only to {changes.Max(c => c.Within):0.##} mm instead of {resolution:0.##} mm."),
                "Simplify the outline, or check the layers themselves.")
            {
                Value = changes.Max(c => c.Within),
                Limit = resolution,
            };
    }

    private static Finding Describe(RegionChange change, double reference, BuckKind kind)
    {
        var male = kind == BuckKind.Male;
        var height = FormattableString.Invariant($"{change.At:F2} mm above the bottom of the stack");
        var beyond = change.At < reference ? "below" : "above";
        var part = male ? "island" : "pocket";
        var (id, message, remedy) = change.Kind switch
        {
            RegionChangeKind.IslandsMerge => (
                male ? "islands-merge" : "pockets-merge",
                $"Two {part}s grow together {beyond} {height}.",
                "Set them farther apart or use less draft or depth; otherwise the sheet bridges the groove between them."),
            RegionChangeKind.HoleCloses => (
                male ? "counter-closes" : "post-vanishes",
                $"A {(male ? "counter (hole)" : "standing post")} closes {beyond} {height}.",
                "Make it wider, or use less draft or depth, if it must go all the way."),
            RegionChangeKind.BayCloses => (
                "bay-closes",
                $"A bay in the outline closes at its mouth {beyond} {height} and becomes a pit.",
                "Open the mouth wider, or use less draft or depth; a pit needs its own vent."),
            RegionChangeKind.HoleSplits => (
                male ? "counter-splits" : "post-splits",
                $"A {(male ? "counter (hole)" : "standing post")} is divided at its narrow place {beyond} {height}.",
                "Widen its narrow place, or use less draft or depth."),
            RegionChangeKind.IslandVanishes => (
                male ? "island-vanishes" : "pocket-vanishes",
                $"{(male ? "An island" : "A pocket")} shrinks to nothing {beyond} {height}.",
                "Make it wider, or use less draft or depth, or draw the outline at the other end of the wall."),
            RegionChangeKind.NeckPinches => (
                male ? "neck-pinches" : "pocket-neck-pinches",
                $"A neck of the {part} pinches off {beyond} {height}.",
                "Widen the neck, or use less draft or depth."),
            RegionChangeKind.HolesMerge => (
                male ? "counters-merge" : "posts-merge",
                $"The wall between two {(male ? "counters" : "standing posts")} is gone {beyond} {height}.",
                "Set them farther apart, or use less draft or depth."),
            RegionChangeKind.HoleOpens => (
                male ? "counter-opens" : "post-joins-wall",
                $"The wall between a {(male ? "counter" : "standing post")} and the outside is gone {beyond} {height}.",
                "Make the wall thicker, or use less draft or depth."),
            _ => throw new InvalidOperationException($"Unknown change {change.Kind}."),
        };
        return new(id, Severity.Warning, message, remedy) { Place = change.Place, Height = change.At, Value = change.At };
    }
}
