using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>
/// Finds the triangles that reach near a place: each is entered in every cell that its box, widened by half a cell, touches.
/// </summary>
internal sealed class FlankGrid
{
    /// <summary>A triangle whose box covers more cells than this is not a flank: the sheet is about to burst.</summary>
    private const int MostCells = 4096;

    // Several cells may share a slot; the distance sorts out what does not belong.
    private readonly int[] heads = new int[1 << 14];
    private readonly List<(MeshTriangle Triangle, int Next)> entries = [];
    private double cell;

    /// <summary>Begins anew with cells of a size, mm.</summary>
    public void Clear(double size)
    {
        cell = size;
        Array.Fill(heads, -1);
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
                    ref var head = ref heads[Slot(x, y, z)];
                    entries.Add((triangle, head));
                    head = entries.Count - 1;
                }
            }
        }
    }

    /// <summary>The first of the entries near a place, -1 for none.</summary>
    public int First(Vec3 place) => heads[Slot(Cell(place.X), Cell(place.Y), Cell(place.Z))];

    /// <summary>An entry and the one after it, -1 for none.</summary>
    public (MeshTriangle Triangle, int Next) this[int entry] => entries[entry];

    private (int From, int To) Range(double a, double b, double c) =>
        (Cell(Math.Min(a, Math.Min(b, c)) - cell / 2), Cell(Math.Max(a, Math.Max(b, c)) + cell / 2));

    private int Cell(double value) => (int)Math.Floor(value / cell);

    private int Slot(int x, int y, int z) => (x * 73856093 ^ y * 19349663 ^ z * 83492791) & (heads.Length - 1);
}
