using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Facing;

namespace BuckGen.Design.Checks;

/// <summary>Do raised parts stand so close that the sheet folds between them?</summary>
internal sealed class WebCheck : IDesignCheck
{
    /// <summary>Rounding of a place on an edge, mm.</summary>
    private const double OnEdge = 1e-3;

    public string Name => "web";

    public IEnumerable<Finding> Run(DesignView design)
    {
        if (!design.IsMale) yield break;
        var (foot, depth) = (design.Shape.At(design.Shape.Foot), design.Plan.Depth);
        // One part alone has no other beside it.
        if (foot.Islands.Length < 2) yield break;
        var minGap = design.Checks.WebGap * depth;
        var gaps = FacingEdges.Within(foot, minGap)
            .Where(p => p.Width < minGap && !p.ThroughWood && double.IsInfinity(p.Detour)).ToArray();
        if (gaps.Length == 0) yield break;
        // A gap may be narrow all along; what counts is which parts stand too close.
        var pairs = PairsOf(foot, gaps);
        var (which, high) = pairs == 1 ? ("Two parts", FormattableString.Invariant($"{depth:0.#} mm high"))
            : (FormattableString.Invariant($"{pairs} pairs of parts stand too close. The closest,"),
                FormattableString.Invariant($"{depth:0.#} mm high,"));
        yield return new("web-between", Severity.Warning,
            FormattableString.Invariant($"{which} {high} stand {gaps[0].Width:0.##} mm apart at their foot: the ")
                + "sheet folds between them or does not reach the bottom; "
                + FormattableString.Invariant($"{minGap:0.#} mm is the minimum, 1.75 times the height is better."),
            "Move them apart in the drawing, make them lower (depth), or form them on several bucks ([groups]).")
        {
            Place = gaps[0].Middle,
            Height = design.Shape.Foot,
            Value = gaps[0].Width,
            Limit = minGap,
            Source = "guides of resin suppliers (from memory)",
        };
    }

    /// <summary>How many pairs of islands have such a gap between them.</summary>
    private static int PairsOf(Region foot, IEnumerable<NarrowPlace> gaps)
    {
        var edges = foot.Islands
            .SelectMany((island, i) => island.Loops.SelectMany(l => l.Segments).Select(s => (Island: i, Edge: s))).ToArray();
        var tree = BoxTree.FromItems(edges, e => e.Edge.Bounds);
        return gaps.Select(g => (A: IslandAt(g.A), B: IslandAt(g.B)))
            .Select(p => (Math.Min(p.A, p.B), Math.Max(p.A, p.B))).Distinct().Count();

        // The ends of a gap lie on edges.
        int IslandAt(Vec2 place) => edges[tree.Query(Bounds.FromCorners(place, place).Grown(OnEdge)).MinBy(i =>
            edges[i].Edge.DistanceTo(place))].Island;
    }
}
