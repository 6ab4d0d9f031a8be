using System.Collections;
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
    public Nearby Near(Vec2 place) => new(this, place);

    private long Square(double coordinate) => (long)Math.Floor(coordinate / (SquareSize * reach));

    private int ChainOf(long x, long y) => (int)((ulong)(x * 73_856_093 ^ y * 19_349_663) & (ulong)(heads.Length - 1));

    /// <summary>The points near a place, found one after the other without allocation.</summary>
    internal struct Nearby : IEnumerable<(int Number, double Distance)>, IEnumerator<(int Number, double Distance)>
    {
        private readonly EndGrid grid;
        private readonly Vec2 place;
        private readonly long firstY, lastX, lastY;
        private long x, y;
        private int next;

        public Nearby(EndGrid grid, Vec2 place)
        {
            (this.grid, this.place) = (grid, place);
            // A hair wider, so that rounding keeps every near point within the squares.
            var wide = grid.reach * 1.5;
            (x, lastX) = (grid.Square(place.X - wide), grid.Square(place.X + wide));
            (firstY, lastY) = (grid.Square(place.Y - wide), grid.Square(place.Y + wide));
            y = firstY;
            next = grid.heads[grid.ChainOf(x, y)];
        }

        /// <summary>The number found last, and how far away it lies.</summary>
        public (int Number, double Distance) Current { get; private set; }

        readonly object IEnumerator.Current => Current;

        /// <summary>For foreach.</summary>
        public readonly Nearby GetEnumerator() => this;

        /// <summary>To the next number.</summary>
        public bool MoveNext()
        {
            while (true)
            {
                for (; next >= 0; next = grid.next[next])
                {
                    var point = grid.points[next];
                    // Squares share chains.
                    if (grid.Square(point.X) != x || grid.Square(point.Y) != y) continue;
                    if (point.DistanceTo(place) is var distance && distance > grid.reach) continue;
                    Current = (next, distance);
                    next = grid.next[next];
                    return true;
                }

                if (y < lastY) y++;
                else if (x < lastX) (x, y) = (x + 1, firstY);
                else return false;
                next = grid.heads[grid.ChainOf(x, y)];
            }
        }

        readonly IEnumerator<(int Number, double Distance)> IEnumerable<(int Number, double Distance)>.GetEnumerator() => this;

        readonly IEnumerator IEnumerable.GetEnumerator() => this;

        readonly void IEnumerator.Reset() => throw new NotSupportedException();

        readonly void IDisposable.Dispose()
        {
        }
    }
}
