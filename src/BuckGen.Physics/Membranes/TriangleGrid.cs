using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>
/// A spatial hash of triangles: each is entered in every cell that its bounding box, grown by half a cell, meets.
/// </summary>
internal sealed class TriangleGrid
{
    /// <summary>A triangle that covers more cells than this is not the flank of a web: the sheet is about to burst.</summary>
    private const int MaxCells = 4096;

    // Several cells may share a bucket; the distance check excludes what does not belong.
    private readonly int[] heads = new int[1 << 14];
    private readonly List<(MeshTriangle Triangle, int Next)> entries = [];
    private double cellSize;

    /// <summary>Empties the grid and sets the size of its cells, mm.</summary>
    public void Clear(double size)
    {
        cellSize = size;
        Array.Fill(heads, -1);
        entries.Clear();
    }

    /// <summary>Inserts a triangle.</summary>
    public void Insert(MeshTriangle triangle, Vec3 a, Vec3 b, Vec3 c)
    {
        var (fromX, toX) = CellRange(a.X, b.X, c.X);
        var (fromY, toY) = CellRange(a.Y, b.Y, c.Y);
        var (fromZ, toZ) = CellRange(a.Z, b.Z, c.Z);
        if ((toX - fromX + 1.0) * (toY - fromY + 1.0) * (toZ - fromZ + 1.0) > MaxCells) return;
        for (var x = fromX; x <= toX; x++)
        {
            for (var y = fromY; y <= toY; y++)
            {
                for (var z = fromZ; z <= toZ; z++)
                {
                    ref var head = ref heads[BucketOf(x, y, z)];
                    entries.Add((triangle, head));
                    head = entries.Count - 1;
                }
            }
        }
    }

    /// <summary>The first entry near a point; -1 for none.</summary>
    public int FirstNear(Vec3 position) => heads[BucketOf(CellIndex(position.X), CellIndex(position.Y), CellIndex(position.Z))];

    /// <summary>An entry and the number of the next one; -1 for none.</summary>
    public (MeshTriangle Triangle, int Next) this[int entry] => entries[entry];

    private (int From, int To) CellRange(double a, double b, double c) =>
        (CellIndex(Math.Min(a, Math.Min(b, c)) - cellSize / 2), CellIndex(Math.Max(a, Math.Max(b, c)) + cellSize / 2));

    private int CellIndex(double value) => (int)Math.Floor(value / cellSize);

    private int BucketOf(int x, int y, int z) => (x * 73856093 ^ y * 19349663 ^ z * 83492791) & (heads.Length - 1);
}
