using BuckGen.Geometry;

namespace BuckGen.Models.Meshing;

/// <summary>Builds the surface of a solid from its plans.</summary>
internal static class SolidBuilder
{
    /// <summary>The closed surface.</summary>
    /// <param name="levels">The plans from the bottom to the top, heights never falling.</param>
    public static SolidMesh Build(IEnumerable<Level> levels)
    {
        var all = levels.ToList();
        if (all.TrueForAll(l => l.Plan.IsEmpty)) return new([], []);
        // There is nothing below the lowest plan and above the highest.
        List<Level> closed = [new(all[0].Height, Region.Empty), .. all, new(all[^1].Height, Region.Empty)];
        var heights = closed.Select(l => l.Height).Distinct().ToArray();
        var bounds = all.Aggregate(Bounds.Nothing, (b, l) => b.With(l.Plan.Bounds));
        var origin = new Vec2(Math.Floor(bounds.MinX), Math.Floor(bounds.MinY));
        var contours = Noding.Contours([.. closed.Select(l => l.Plan).Distinct(ReferenceEqualityComparer.Instance).Cast<Region>()], origin);
        var triangles = closed.Zip(closed.Skip(1)).AsParallel().AsOrdered()
            .SelectMany(pair => Surface.Between(
                contours[pair.First.Plan], Array.IndexOf(heights, pair.First.Height), contours[pair.Second.Plan], Array.IndexOf(heights, pair.Second.Height)))
            .ToArray();
        return Sewing.Sew(triangles, p => new(p.Point.InPlan(origin).X, p.Point.InPlan(origin).Y, heights[p.Level]));
    }
}
