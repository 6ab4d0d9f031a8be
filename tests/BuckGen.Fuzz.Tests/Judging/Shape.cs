using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Judging;

/// <summary>
/// Loops in the plane, judged from first principles; nothing here comes from the code under test but the corners.
/// </summary>
internal sealed class Shape
{
    /// <summary>
    /// Points often lie in line with corners, where a ray meets two edges at once; so little aside they do not.
    /// </summary>
    private static readonly Vec2 OffTheLine = new(3.1e-8, 1.7e-8);

    private readonly Edge[][] loops;

    public Shape(IEnumerable<IReadOnlyList<(Vec2 Point, double Bulge)>> corners)
    {
        loops = [.. corners
            .Select(c => c.Select((corner, i) => new Edge(corner.Point, c[(i + 1) % c.Count].Point, corner.Bulge)).ToArray())];
        Edges = [.. loops.SelectMany(l => l)];
        Box = Edges.Length == 0 ? default
            : new(Edges.Min(e => e.Box.MinX), Edges.Min(e => e.Box.MinY), Edges.Max(e => e.Box.MaxX), Edges.Max(e => e.Box.MaxY));
    }

    public Edge[] Edges { get; }

    public IReadOnlyList<IReadOnlyList<Edge>> Loops => loops;

    public Bounds Box { get; }

    public bool IsEmpty => Edges.Length == 0;

    /// <summary>Area, mm²: loops that run counter-clockwise less those that run clockwise.</summary>
    public double Area => loops.Sum(AreaOf);

    public double Perimeter => Edges.Sum(e => e.Length);

    public static Shape FromRegion(Region region) => FromLoops(region.Loops);

    public static Shape FromLoops(IEnumerable<Loop> loops) =>
        new(loops.Select(l => l.Segments.Select(s => (s.Start, s.Bulge)).ToArray()));

    /// <summary>How often the loops wind round a point; 1 in the material of a sound region, 0 elsewhere.</summary>
    public int WindingAround(Vec2 p)
    {
        var (winding, beside) = (0, p + OffTheLine);
        foreach (ref readonly var edge in Edges.AsSpan()) winding += edge.WindingAround(beside);
        return winding;
    }

    /// <summary>True inside an odd number of loops, whichever way they run.</summary>
    public bool Contains(Vec2 p) => WindingAround(p) % 2 != 0;

    /// <summary>From a point to the nearest edge, mm; infinite when there is none.</summary>
    public double DistanceTo(Vec2 p)
    {
        var nearest = double.PositiveInfinity;
        foreach (ref readonly var edge in Edges.AsSpan())
            if (ToBox(edge.Box, p) < nearest) nearest = Math.Min(nearest, edge.DistanceTo(p));
        return nearest;
    }

    /// <summary>How deep a point lies in the material, mm; negative outside.</summary>
    public double DepthAt(Vec2 p) => Contains(p) ? DistanceTo(p) : -DistanceTo(p);

    private static double AreaOf(Edge[] loop) => loop.Sum(e => e.AreaFrom(loop[0].Start));

    private static double ToBox(Bounds box, Vec2 p)
    {
        var (x, y) = (Math.Max(Math.Max(box.MinX - p.X, p.X - box.MaxX), 0),
            Math.Max(Math.Max(box.MinY - p.Y, p.Y - box.MaxY), 0));
        return Math.Sqrt(x * x + y * y);
    }
}
