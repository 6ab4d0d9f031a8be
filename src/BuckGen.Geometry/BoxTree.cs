using System.Collections;

namespace BuckGen.Geometry;

/// <summary>Finds those of many upright rectangles that meet another. Immutable; asking allocates nothing.</summary>
/// <remarks>
/// A tree without pointers: neighbours in the order are gathered by <see cref="Fan"/>, level over level. The order is that given,
/// as long as each rectangle lies near the one before, as the pieces of a loop do. Else it is that of Hilbert's curve through
/// their middles.
/// </remarks>
internal sealed class BoxTree
{
    private const int Fan = 4;

    // How far, in its own sizes, a rectangle may lie from the one before on average.
    private const double NearEnough = 8;

    private readonly Bounds[] boxes;
    private readonly int[] levelStarts;
    private readonly int[]? order;
    private readonly int count;

    /// <param name="items">The rectangles; they are known by their numbers.</param>
    public BoxTree(ReadOnlySpan<Bounds> items)
    {
        count = items.Length;
        order = AreInOrder(items) ? null : HilbertOrder.Of(items);
        levelStarts = Starts(count);
        boxes = new Bounds[levelStarts[^1]];
        for (var i = 0; i < count; i++) boxes[i] = items[order is null ? i : order[i]];
        for (var level = 1; level + 1 < levelStarts.Length; level++)
        {
            var (below, here, above) = (levelStarts[level - 1], levelStarts[level], levelStarts[level + 1]);
            for (var i = here; i < above; i++)
            {
                var first = below + (i - here) * Fan;
                var box = boxes[first];
                for (var k = first + 1; k < Math.Min(first + Fan, here); k++) box = box.With(boxes[k]);
                boxes[i] = box;
            }
        }
    }

    /// <summary>The numbers of the rectangles that share a point with this one.</summary>
    public Hits Query(Bounds area) => new(this, area);

    /// <summary>A tree over what is round each of several things.</summary>
    public static BoxTree Over<T>(IReadOnlyList<T> items, Func<T, Bounds> boundsOf)
    {
        var bounds = new Bounds[items.Count];
        for (var i = 0; i < bounds.Length; i++) bounds[i] = boundsOf(items[i]);
        return new(bounds);
    }

    private static bool AreInOrder(ReadOnlySpan<Bounds> items)
    {
        var (jumps, sizes) = (0.0, 0.0);
        for (var i = 1; i < items.Length; i++)
        {
            var (a, b) = (items[i - 1].Centre, items[i].Centre);
            jumps += Math.Abs(a.X - b.X) + Math.Abs(a.Y - b.Y);
            sizes += items[i].Width + items[i].Height;
        }

        return items.Length <= Fan || jumps <= NearEnough * sizes;
    }

    private static int[] Starts(int count)
    {
        var starts = new List<int> { 0 };
        for (var width = count; ; width = (width + Fan - 1) / Fan)
        {
            starts.Add(starts[^1] + width);
            if (width <= 1) return [.. starts];
        }
    }

    /// <summary>A walk over the tree that says at each step whether to go deeper.</summary>
    internal struct Walk(BoxTree tree)
    {
        private int level = tree.levelStarts.Length - 2;
        private int number;

        /// <summary>True when the walk is over.</summary>
        public bool IsDone { get; private set; } = tree.count == 0;

        /// <summary>The rectangle that the walk has come to.</summary>
        public readonly ref readonly Bounds Box => ref tree.boxes[tree.levelStarts[level] + number];

        /// <summary>True when it is one of those given, false when it is round several of them.</summary>
        public readonly bool IsItem => level == 0;

        /// <summary>The number of the rectangle.</summary>
        public readonly int Item => tree.order is { } order ? order[number] : number;

        /// <summary>To the first of those inside.</summary>
        public void Enter()
        {
            level--;
            number *= Fan;
        }

        /// <summary>To the next one that is not inside.</summary>
        public void Pass()
        {
            while (true)
            {
                if (level == tree.levelStarts.Length - 2)
                {
                    IsDone = true;
                    return;
                }

                number++;
                if (number % Fan != 0 && tree.levelStarts[level] + number < tree.levelStarts[level + 1]) return;
                number = (number - 1) / Fan;
                level++;
            }
        }
    }

    /// <summary>The numbers of the rectangles that meet one.</summary>
    internal struct Hits(BoxTree tree, Bounds area) : IEnumerable<int>, IEnumerator<int>
    {
        private Walk walk = new(tree);
        private bool started;

        /// <summary>The number found last.</summary>
        public int Current { get; private set; }

        /// <summary>For foreach.</summary>
        public readonly Hits GetEnumerator() => this;

        /// <summary>To the next number.</summary>
        public bool MoveNext()
        {
            if (started && !walk.IsDone) walk.Pass();
            started = true;
            while (!walk.IsDone)
            {
                if (!walk.Box.Intersects(area)) walk.Pass();
                else if (!walk.IsItem) walk.Enter();
                else
                {
                    Current = walk.Item;
                    return true;
                }
            }

            return false;
        }

        readonly IEnumerator<int> IEnumerable<int>.GetEnumerator() => this;

        readonly IEnumerator IEnumerable.GetEnumerator() => this;

        readonly object IEnumerator.Current => Current;

        readonly void IEnumerator.Reset() => throw new NotSupportedException();

        readonly void IDisposable.Dispose()
        {
        }
    }
}
