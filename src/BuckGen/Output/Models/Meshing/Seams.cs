using BuckGen.Geometry;

namespace BuckGen.Output.Models.Meshing;

/// <summary>Finds for every edge of every triangle the one it is sewn to.</summary>
internal static class Seams
{
    /// <summary>The edge after an edge round its triangle.</summary>
    public static int Next(int edge) => edge % 3 == 2 ? edge - 2 : edge + 1;

    /// <summary>All seams: an edge and the one that leads the other way.</summary>
    /// <param name="corners">Three corners a triangle; edge n leads from corner n to the next of its triangle.</param>
    /// <param name="place">Where a corner lies, mm.</param>
    /// <exception cref="InvalidOperationException">An edge stays open; the message says where.</exception>
    public static IEnumerable<(int Edge, int Other)> Find(SurfacePoint[] corners, Func<SurfacePoint, Vec3> place)
    {
        foreach (var group in Enumerable.Range(0, corners.Length).GroupBy(Key))
        {
            var (there, back) = (group.Where(IsForward).ToArray(), group.Where(e => !IsForward(e)).ToArray());
            if (there.Length != back.Length)
                throw new InvalidOperationException(
                    $"The model is open along an edge from {place(group.Key.Item1)} to {place(group.Key.Item2)}.");
            if (there.Length == 1) yield return (there[0], back[0]);
            else foreach (var seam in Paired(there, back)) yield return seam;
        }

        bool IsForward(int edge) => corners[edge].CompareTo(corners[Next(edge)]) < 0;

        (SurfacePoint, SurfacePoint) Key(int edge) =>
            IsForward(edge) ? (corners[edge], corners[Next(edge)]) : (corners[Next(edge)], corners[edge]);

        // Round the edge, seen along it, wood and air take turns: wood begins behind a triangle that runs back and ends at one
        // that runs there. Sewn are the two sides of the same wood, so bodies that only touch come apart.
        IEnumerable<(int Edge, int Other)> Paired(int[] there, int[] back)
        {
            var angles = there.Concat(back).ToDictionary(e => e, Angle);
            var free = back.ToList();
            foreach (var edge in there.OrderBy(e => angles[e]))
            {
                var other = free
                    .MinBy(b => angles[edge] > angles[b] ? angles[edge] - angles[b] : angles[edge] - angles[b] + 2 * Math.PI);
                free.Remove(other);
                yield return (edge, other);
            }
        }

        // The direction from the edge to the triangle's third corner, counter-clockwise seen with the edge coming towards one.
        double Angle(int edge)
        {
            var (from, to) = Key(edge);
            var (o, e, p) = (place(from), place(to), place(corners[Next(Next(edge))]));
            var (along, reach) = (e - o, p - o);
            // Two directions square to the edge and to each other; any will do, as long as all triangles of the edge use the
            // same.
            var u = Math.Abs(along.Z) > Math.Abs(along.X) + Math.Abs(along.Y)
                ? new Vec3(along.Z, 0, -along.X)
                : new Vec3(-along.Y, along.X, 0);
            var v = along.Cross(u);
            return Math.Atan2(reach.Dot(v) / v.Length, reach.Dot(u) / u.Length);
        }
    }
}
