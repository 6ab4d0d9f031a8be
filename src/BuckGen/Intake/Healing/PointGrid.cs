using BuckGen.Geometry;

namespace BuckGen.Intake.Healing;

/// <summary>Points sorted into square cells, to find those near a place without checking the rest.</summary>
/// <param name="reach">How far from a place a point still counts as near, mm.</param>
internal sealed class PointGrid(double reach)
{
    // Cells well larger than the reach, so that most places need only one of them.
    private readonly double size = 8 * reach;
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
        var (low, high) = (CellOf(place - new Vec2(reach, reach)), CellOf(place + new Vec2(reach, reach)));
        for (var x = low.Column; x <= high.Column; x++)
            for (var y = low.Row; y <= high.Row; y++)
                for (var i = newest.GetValueOrDefault((x, y), -1); i >= 0; i = entries[i].Older)
                    if ((entries[i].Point - place).LengthSquared <= reach * reach) yield return entries[i].Id;
    }

    private (long Column, long Row) CellOf(Vec2 p) => ((long)Math.Floor(p.X / size), (long)Math.Floor(p.Y / size));
}
