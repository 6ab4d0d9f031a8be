using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Output.Models.Meshing;

/// <summary>Distinguishes edges between the same two corners by a corner of its own in the middle of each.</summary>
/// <remarks>
/// Two bodies that touch along an edge and are one again at both of its ends have such edges. Sewn right as they are, a reader
/// who knows only the corners' numbers would count four triangles on one edge.
/// </remarks>
internal static class DuplicateEdges
{
    /// <summary>The mesh without twins.</summary>
    /// <param name="points">The corners.</param>
    /// <param name="corners">The number of each corner of each triangle, three a triangle.</param>
    /// <param name="seams">Which edge is sewn to which; edge n leads from corner n to the next of its triangle.</param>
    public static SolidMesh Split(ImmutableArray<Vec3> points, int[] corners, IReadOnlyList<(int Edge, int Other)> seams)
    {
        var twins = seams.GroupBy(s => (Math.Min(corners[s.Edge], corners[s.Other]), Math.Max(corners[s.Edge], corners[s.Other])))
            .Where(g => g.Count() > 1).SelectMany(g => g).ToArray();
        var all = points.ToBuilder();
        var middles = new Dictionary<int, int>();
        foreach (var (edge, other) in twins)
        {
            middles[edge] = middles[other] = all.Count;
            all.Add(Mean(points[corners[edge]], points[corners[other]]));
        }

        var triangles = ImmutableArray.CreateBuilder<MeshTriangle>(corners.Length / 3);
        for (var first = 0; first < corners.Length; first += 3)
        {
            var (a, b, c) = (corners[first], corners[first + 1], corners[first + 2]);
            int[] rim = [.. Enumerable.Range(first, 3)
                .SelectMany(e => middles.TryGetValue(e, out var middle) ? [corners[e], middle] : (int[])[corners[e]])];
            if (rim.Length == 3)
            {
                triangles.Add(new(a, b, c));
                continue;
            }

            // All round a corner inside, so that no triangle is without area whichever edges were divided.
            for (var i = 0; i < rim.Length; i++) triangles.Add(new(rim[i], rim[(i + 1) % rim.Length], all.Count));
            all.Add(Mean(points[a], points[b], points[c]));
        }

        return new(all.ToImmutable(), triangles.ToImmutable());
    }

    private static Vec3 Mean(params ReadOnlySpan<Vec3> points)
    {
        var sum = default(Vec3);
        foreach (var p in points) sum += p;
        return new(sum.X / points.Length, sum.Y / points.Length, sum.Z / points.Length);
    }
}
