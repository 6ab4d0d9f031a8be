using BuckGen.Geometry;
using BuckGen.Output.Models.Meshing;

namespace BuckGen.Tests.Output.Models;

/// <summary>What is wrong with a mesh, judged from its triangles alone.</summary>
internal static class MeshFaults
{
    public static IEnumerable<string> Find(SolidMesh mesh)
    {
        var edges = new HashSet<(int, int)>();
        foreach (var t in mesh.Triangles)
            foreach (var edge in Edges(t))
                if (!edges.Add(edge))
                    yield return $"two triangles run along {mesh.Points[edge.From]} - {mesh.Points[edge.To]} the same way";
        foreach (var (from, to) in edges)
            if (!edges.Contains((to, from))) yield return $"open along {mesh.Points[from]} - {mesh.Points[to]}";
        foreach (var (a, b, c) in mesh.Triangles)
            if (!(Area(mesh.Points[a], mesh.Points[b], mesh.Points[c]) > 0)) yield return $"no area at {mesh.Points[a]}";
        var places =
            mesh.Triangles.Select(t =>
                ((Vec3[])[mesh.Points[t.A], mesh.Points[t.B], mesh.Points[t.C]]).OrderBy(p => (p.X, p.Y, p.Z)).ToArray());
        foreach (var leaf in places.GroupBy(p => (p[0], p[1], p[2])).Where(g => g.Count() > 1))
            yield return $"two triangles in one place at {leaf.Key}";
        // Round every corner its triangles make one fan: then the surface does not touch itself there.
        var fans = mesh.Triangles
            .SelectMany(t => Edges(t)
                .Zip(Edges(t).Skip(2).Concat(Edges(t)), (e, before) => (Corner: e.From, Out: e.To, In: before.From)))
            .GroupBy(w => w.Corner);
        foreach (var fan in fans)
        {
            var next = fan.ToDictionary(w => w.Out, w => w.In);
            var (start, steps) = (fan.First().Out, 0);
            for (var at = start; steps == 0 || at != start; at = next[at]) steps++;
            if (steps != next.Count) yield return $"two fans at {mesh.Points[fan.Key]}";
        }
    }

    /// <summary>Corners less edges plus triangles, for each connected surface: 2 for a ball, 0 for a ring.</summary>
    public static int[] EulerCharacteristics(SolidMesh mesh)
    {
        var groups = Enumerable.Range(0, mesh.Points.Length).ToArray();
        int Find(int n)
        {
            while (groups[n] != n) n = groups[n] = groups[groups[n]];
            return n;
        }

        foreach (var (a, b, c) in mesh.Triangles)
        {
            groups[Find(a)] = Find(b);
            groups[Find(b)] = Find(c);
        }

        var corners = Enumerable.Range(0, mesh.Points.Length).ToLookup(Find);
        var triangles = mesh.Triangles.ToLookup(t => Find(t.A));
        // Two triangles share an edge, so there are three edges to every two triangles.
        return [.. corners.Select(g => g.Count() - triangles[g.Key].Count() * 3 / 2 + triangles[g.Key].Count()).Order()];
    }

    private static IEnumerable<(int From, int To)> Edges(MeshTriangle t) => [(t.A, t.B), (t.B, t.C), (t.C, t.A)];

    /// <summary>Area of a triangle, mm².</summary>
    public static double Area(Vec3 a, Vec3 b, Vec3 c)
    {
        var normal = (b - a).Cross(c - a);
        return normal.Length / 2;
    }
}
