using System.Numerics;

namespace BuckGen.Geometry.Offsetting;

/// <summary>Finds points near a place, by squares of a grid.</summary>
internal sealed class EndGrid
{
    // Squares much wider than the reach, so that most places need one square only.
    private const double SquareSize = 32;

    private readonly double reach;
    private readonly Vec2[] points;

    /// <summary>The first point of each chain of squares, and the next of the same chain; -1 ends it.</summary>
    private readonly int[] heads, next;

    /// <param name="points">The points; they are known by their numbers.</param>
    /// <param name="reach">Maximum distance that counts as near, mm.</param>
    public EndGrid(IEnumerable<Vec2> points, double reach)
    {
        (this.reach, this.points) = (reach, [.. points]);
        heads = new int[(int)BitOperations.RoundUpToPowerOf2((uint)this.points.Length + 1)];
        next = new int[this.points.Length];
        Array.Fill(heads, -1);
        // From the last to the first, so that a chain gives them in order.
        for (var i = this.points.Length - 1; i >= 0; i--)
        {
            var chain = ChainOf(Square(this.points[i].X), Square(this.points[i].Y));
            (next[i], heads[chain]) = (heads[chain], i);
        }
    }

    /// <summary>The numbers of the points within the reach of a place, with their distances.</summary>
    public IEnumerable<(int Number, double Distance)> Near(Vec2 place)
    {
        // A hair wider, so that rounding keeps every near point within the squares.
        var wide = reach * 1.5;
        var (firstX, lastX) = (Square(place.X - wide), Square(place.X + wide));
        var (firstY, lastY) = (Square(place.Y - wide), Square(place.Y + wide));
        for (var x = firstX; x <= lastX; x++)
        {
            for (var y = firstY; y <= lastY; y++)
            {
                for (var i = heads[ChainOf(x, y)]; i >= 0; i = next[i])
                {
                    // Squares share chains.
                    if (Square(points[i].X) != x || Square(points[i].Y) != y) continue;
                    if (points[i].DistanceTo(place) is var distance && distance <= reach) yield return (i, distance);
                }
            }
        }
    }

    private long Square(double coordinate) => (long)Math.Floor(coordinate / (SquareSize * reach));

    private int ChainOf(long x, long y) => (int)((ulong)(x * 73_856_093 ^ y * 19_349_663) & (ulong)(heads.Length - 1));
}
