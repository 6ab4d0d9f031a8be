using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>Finds the triangles that reach near a place: each is entered in every cell that its box, widened by half a cell, touches.</summary>
internal sealed class FlankGrid
{
    /// <summary>A triangle as long as so many cells is not a flank but a burst on its way.</summary>
    private const int MostCells = 4096;

    private readonly Dictionary<(int, int, int), int> heads = [];
    private readonly List<(MeshTriangle Triangle, int Next)> entries = [];
    private double cell;

    /// <summary>Begins anew with cells of a size, mm.</summary>
    public void Clear(double size)
    {
        cell = size;
        heads.Clear();
        entries.Clear();
    }

    /// <summary>Enters a triangle.</summary>
    public void Add(MeshTriangle triangle, Vec3 a, Vec3 b, Vec3 c)
    {
        var (fromX, toX) = Range(a.X, b.X, c.X);
        var (fromY, toY) = Range(a.Y, b.Y, c.Y);
        var (fromZ, toZ) = Range(a.Z, b.Z, c.Z);
        if ((toX - fromX + 1.0) * (toY - fromY + 1.0) * (toZ - fromZ + 1.0) > MostCells) return;
        for (var x = fromX; x <= toX; x++)
        {
            for (var y = fromY; y <= toY; y++)
            {
                for (var z = fromZ; z <= toZ; z++)
                {
                    entries.Add((triangle, heads.GetValueOrDefault((x, y, z), -1)));
                    heads[(x, y, z)] = entries.Count - 1;
                }
            }
        }
    }

    /// <summary>The triangles near a place.</summary>
    public IEnumerable<MeshTriangle> At(Vec3 place)
    {
        for (var i = heads.GetValueOrDefault((Cell(place.X), Cell(place.Y), Cell(place.Z)), -1); i >= 0; i = entries[i].Next)
            yield return entries[i].Triangle;
    }

    private (int From, int To) Range(double a, double b, double c) =>
        (Cell(Math.Min(a, Math.Min(b, c)) - cell / 2), Cell(Math.Max(a, Math.Max(b, c)) + cell / 2));

    private int Cell(double value) => (int)Math.Floor(value / cell);
}
