using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>Meshes of the sheet inside a rectangular clamp frame.</summary>
public static class FrameMesh
{
    /// <summary>
    /// A rectangle of nearly square cells, each cut into four triangles by its diagonals. The mesh is symmetric about both centre
    /// lines and can be refined by <see cref="Bisection"/>.
    /// </summary>
    /// <param name="frame">The rectangle inside the frame, mm.</param>
    /// <param name="maxCellSize">Longest side of a cell, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rectangle is empty, or there would be more than a million
    /// cells.</exception>
    public static TriangleMesh CrissCross(Bounds frame, double maxCellSize)
    {
        Bound.Check(frame.Width, 1e-6, 1e6, "width of the frame", " mm");
        Bound.Check(frame.Height, 1e-6, 1e6, "height of the frame", " mm");
        Bound.Check(maxCellSize, Math.Sqrt(frame.Width * frame.Height / 1e6), 1e6, "size of a cell", " mm");
        var (columns, rows) = (CellCount(frame.Width, maxCellSize), CellCount(frame.Height, maxCellSize));
        var nodes = ImmutableArray.CreateBuilder<Vec2>();
        var triangles = ImmutableArray.CreateBuilder<MeshTriangle>(4 * columns * rows);
        // A row of corners, then a row of centres, so that neighbours are close in memory.
        int Corner(int column, int row) => row * (2 * columns + 1) + column;
        int Middle(int column, int row) => row * (2 * columns + 1) + columns + 1 + column;
        for (var row = 0; row <= rows; row++)
        {
            for (var column = 0; column <= columns; column++) nodes.Add(At(column, row));
            for (var column = 0; column < columns && row < rows; column++) nodes.Add(At(column + 0.5, row + 0.5));
        }
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                var (a, b, c, d) =
                    (Corner(column, row), Corner(column + 1, row), Corner(column + 1, row + 1), Corner(column, row + 1));
                var middle = Middle(column, row);
                triangles.AddRange(new(a, b, middle), new(b, c, middle), new(c, d, middle), new(d, a, middle));
            }
        }
        return new(nodes.ToImmutable(), triangles.MoveToImmutable());

        // Relative to the centre, so that mirror images are exact.
        Vec2 At(double column, double row) => new(
            frame.Centre.X + (column - columns / 2.0) / columns * frame.Width,
            frame.Centre.Y + (row - rows / 2.0) / rows * frame.Height);
    }

    private static int CellCount(double length, double maxCellSize) =>
        Math.Max(1, (int)Math.Ceiling(length / maxCellSize - 1e-9));
}
