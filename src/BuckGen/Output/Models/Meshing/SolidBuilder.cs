using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Output.Models.Meshing;

/// <summary>Builds the surface of a solid from its plans.</summary>
internal static class SolidBuilder
{
    /// <summary>Max distance, mm, between an arc of a plan and the chords that stand for it.</summary>
    public const double ChordError = 0.02;

    /// <summary>
    /// Maximum number of edges of the plans at two consecutive heights: the time to cut a face into triangles grows with their
    /// square.
    /// </summary>
    private const int MaxEdges = 40_000;

    /// <summary>Maximum number of lines and arcs in all plans together.</summary>
    private const int MaxPieces = 500_000;

    /// <summary>The closed surface.</summary>
    /// <param name="levels">The plans from the bottom to the top, heights never falling.</param>
    /// <exception cref="SpecException">The plans have too many edges for a model.</exception>
    public static SolidMesh Build(IEnumerable<Level> levels)
    {
        var all = levels.ToList();
        if (all.TrueForAll(l => l.Plan.IsEmpty)) return new([], []);
        // There is nothing below the lowest plan and above the highest.
        if (all.Select(l => l.Plan).Distinct(ReferenceEqualityComparer.Instance).Cast<Region>()
            .Sum(p => p.Segments.Count()) is > MaxPieces and var pieces)
            throw TooLarge(FormattableString.Invariant($"{pieces} lines and arcs"), MaxPieces);
        List<Level> closed = [new(all[0].Height, Region.Empty), .. all, new(all[^1].Height, Region.Empty)];
        var heights = closed.Select(l => l.Height).Distinct().ToArray();
        var bounds = all.Aggregate(Bounds.Nothing, (b, l) => b.With(l.Plan.Bounds));
        var origin = new Vec2(Math.Floor(bounds.MinX), Math.Floor(bounds.MinY));
        var contours =
            Noding.Contours([.. closed.Select(l => l.Plan).Distinct(ReferenceEqualityComparer.Instance).Cast<Region>()], origin);
        var max = closed.Zip(closed.Skip(1)).Where(p => !ReferenceEquals(p.First.Plan, p.Second.Plan))
            .Max(p => contours[p.First.Plan].Edges.Length + contours[p.Second.Plan].Edges.Length);
        if (max > MaxEdges) throw TooLarge(FormattableString.Invariant($"{max} edges between two heights"), MaxEdges);
        var triangles = closed.Zip(closed.Skip(1)).AsParallel().AsOrdered()
            .SelectMany(pair => Surface.Between(
                contours[pair.First.Plan], Array.IndexOf(heights, pair.First.Height), contours[pair.Second.Plan],
                Array.IndexOf(heights, pair.Second.Height)))
            .ToArray();
        return Sewing.Sew(triangles, p => new(p.Point.InPlan(origin).X, p.Point.InPlan(origin).Y, heights[p.Level]));
    }

    private static SpecException TooLarge(string what, int limit) =>
        new(FormattableString.Invariant(
            $"The solid model would have {what}; the limit is {limit}. Leave the model out, or simplify the drawing."));
}
