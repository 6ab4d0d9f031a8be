using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Facing;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Checks;

/// <summary>
/// Slots that the draft fills and arms that it removes along their whole length at once. No part is joined or divided then, so a
/// count of parts does not show it.
/// </summary>
internal static class SlotFindings
{
    /// <summary>A slot or arm is reported when the way round it is this many times longer than it is wide.</summary>
    private const double LongEnough = 4;

    /// <summary>Shorter ways round are the outline's own roughness, mm (our definition, no source).</summary>
    private const double Rough = 2;

    /// <summary>The findings.</summary>
    /// <param name="outline">The outline at its reference plane.</param>
    /// <param name="shape">The drafted outline.</param>
    /// <param name="changes">What is already reported.</param>
    /// <param name="spec">Kind and draft.</param>
    public static IEnumerable<Finding> Find(
        Region outline, DraftedShape shape, IReadOnlyList<RegionChange> changes, StackSpec spec)
    {
        // The outline may be to size between the two ends of the wall; then it is larger at one and smaller at the other.
        foreach (var end in (double[])[shape.Foot, shape.Face])
            foreach (var finding in TowardEnd(outline, shape, end, changes, spec)) yield return finding;
    }

    private static IEnumerable<Finding> TowardEnd(
        Region outline, DraftedShape shape, double end, IReadOnlyList<RegionChange> changes, StackSpec spec)
    {
        var farthest = shape.OffsetAt(end);
        if (farthest == 0) yield break;
        var reported = new List<(Vec2 Place, double Width)>();
        foreach (var place in FacingEdges.Within(outline, 2 * Math.Abs(farthest), width => LongEnough * width + Rough))
        {
            if (place.ThroughWood == farthest > 0 || double.IsInfinity(place.Detour)) continue;
            if (changes.Any(c => c.Place.DistanceTo(place.Middle) < place.Detour / 2)) continue;
            if (reported.Exists(t => t.Place.DistanceTo(place.Middle) < Math.Max(place.Detour / 2, 2 * t.Width))) continue;
            reported.Add((place.Middle, place.Width));
            var height = shape.HeightOf(Math.Sign(farthest) * place.Width / 2, end);
            yield return Describe(place, height, farthest > 0, end < shape.ReferenceHeight, spec);
        }
    }

    private static Finding Describe(NarrowPlace place, double height, bool fills, bool below, StackSpec spec)
    {
        var (id, what) = (spec.Kind == BuckKind.Male, fills) switch
        {
            (true, true) => ("slot-closes", "A slot"),
            (true, false) => ("arm-vanishes", "An arm"),
            (false, true) => ("rib-vanishes", "A rib between parts of the pocket"),
            (false, false) => ("pocket-arm-vanishes", "An arm of the pocket"),
        };
        var beyond = below ? "below" : "above";
        return new(id, Severity.Warning,
            FormattableString.Invariant(
                $"{what} {place.Width:0.00} mm wide is gone {beyond} {height:F2} mm above the bottom of the stack."),
            "Make it wider, or use less draft or depth.")
        {
            Place = place.Middle,
            Height = height,
            Value = place.Width,
        };
    }
}
