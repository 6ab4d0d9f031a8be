namespace BuckGen.Geometry.Offsetting;

/// <summary>Finds points near a place, by squares of a grid.</summary>
internal sealed class EndGrid
{
    private readonly double reach;
    private readonly List<Vec2> points;
    private readonly Dictionary<(long, long), List<int>> squares = [];

    /// <param name="points">The points; they are known by their numbers.</param>
    /// <param name="reach">Maximum distance that counts as near, mm.</param>
    public EndGrid(IEnumerable<Vec2> points, double reach)
    {
        (this.reach, this.points) = (reach, [.. points]);
        for (var i = 0; i < this.points.Count; i++)
        {
            var key = Key(this.points[i]);
            if (!squares.TryGetValue(key, out var here)) squares[key] = here = [];
            here.Add(i);
        }
    }

    /// <summary>The numbers of the points within the reach of a place, with their distances.</summary>
    public IEnumerable<(int Number, double Distance)> Near(Vec2 place)
    {
        var (column, row) = Key(place);
        for (var x = column - 1; x <= column + 1; x++)
        {
            for (var y = row - 1; y <= row + 1; y++)
            {
                if (!squares.TryGetValue((x, y), out var here)) continue;
                foreach (var i in here)
                    if (points[i].DistanceTo(place) is var distance && distance <= reach) yield return (i, distance);
            }
        }
    }

    // Squares a little wider than the reach, so that rounding keeps every near point within the next square.
    private (long X, long Y) Key(Vec2 p) => ((long)Math.Floor(p.X / (1.5 * reach)), (long)Math.Floor(p.Y / (1.5 * reach)));
}
