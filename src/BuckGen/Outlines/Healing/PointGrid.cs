using BuckGen.Geometry;

namespace BuckGen.Outlines.Healing;

/// <summary>Points sorted into square cells, to find those near a place without looking at the rest.</summary>
/// <param name="reach">The largest distance ever asked for, mm; also the size of a cell.</param>
internal sealed class PointGrid(double reach)
{
    private readonly Dictionary<(long, long), int> newest = [];
    private readonly List<(Vec2 Point, int Id, int Older)> entries = [];

    /// <summary>Adds a point under a number of the caller's choice.</summary>
    public void Add(Vec2 point, int id)
    {
        var cell = CellOf(point);
        entries.Add((point, id, newest.GetValueOrDefault(cell, -1)));
        newest[cell] = entries.Count - 1;
    }

    /// <summary>The numbers of the points within the reach of a place.</summary>
    public IEnumerable<int> Near(Vec2 place)
    {
        var (column, row) = CellOf(place);
        for (var x = column - 1; x <= column + 1; x++)
            for (var y = row - 1; y <= row + 1; y++)
                for (var i = newest.GetValueOrDefault((x, y), -1); i >= 0; i = entries[i].Older)
                    if ((entries[i].Point - place).LengthSquared <= reach * reach) yield return entries[i].Id;
    }

    private (long, long) CellOf(Vec2 p) => ((long)Math.Floor(p.X / reach), (long)Math.Floor(p.Y / reach));
}
