using BuckGen.Geometry;

namespace BuckGen.Design.Venting;

/// <summary>Places in square cells, so that the search for near ones need not check them all.</summary>
/// <param name="cell">Side of a cell, mm: the usual distance of a query.</param>
internal sealed class PlaceGrid(double cell)
{
    private readonly Dictionary<(int X, int Y), List<int>> cells = [];
    private readonly List<Vec2> places = [];

    /// <summary>Adds a place; they are numbered from 0 as they come.</summary>
    public void Add(Vec2 p)
    {
        var key = Cell(p);
        if (!cells.TryGetValue(key, out var here)) cells[key] = here = [];
        here.Add(places.Count);
        places.Add(p);
    }

    /// <summary>True when a place lies nearer than a distance, mm.</summary>
    public bool HasWithin(Vec2 p, double distance) => Within(p, distance).Any();

    /// <summary>The numbers of the places nearer than a distance, mm, in no order.</summary>
    public IEnumerable<int> Within(Vec2 p, double distance)
    {
        var (low, high) = (Cell(p - new Vec2(distance, distance)), Cell(p + new Vec2(distance, distance)));
        for (var x = low.X; x <= high.X; x++)
            for (var y = low.Y; y <= high.Y; y++)
                if (cells.TryGetValue((x, y), out var here))
                    foreach (var i in here)
                        if (places[i].DistanceTo(p) < distance) yield return i;
    }

    /// <summary>The numbers of the places in a rectangle, edges included, in no order.</summary>
    public IEnumerable<int> Inside(Bounds bounds)
    {
        var (low, high) = (Cell(bounds.LowerLeft), Cell(new(bounds.MaxX, bounds.MaxY)));
        // A large rectangle has more cells than there are places.
        var found = (high.X - low.X + 1.0) * (high.Y - low.Y + 1.0) > places.Count
            ? Enumerable.Range(0, places.Count)
            : Enumerable.Range(low.X, high.X - low.X + 1)
            .SelectMany(x => Enumerable.Range(low.Y, high.Y - low.Y + 1).SelectMany(y => cells.GetValueOrDefault((x, y)) ?? []));
        return found.Where(i => bounds.Contains(places[i]));
    }

    private (int X, int Y) Cell(Vec2 p) => ((int)Math.Floor(p.X / cell), (int)Math.Floor(p.Y / cell));
}
