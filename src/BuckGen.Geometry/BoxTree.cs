using System.Collections;

namespace BuckGen.Geometry;

/// <summary>Finds those of many upright rectangles that meet another. Immutable; asking allocates nothing.</summary>
/// <remarks>
/// Neighbours in the order are gathered by <see cref="Fan"/>, level over level. The order is that given, as long as each
/// rectangle lies near the one before, as the pieces of a loop do. Else it is that of Hilbert's curve through their middles. The
/// tree is stored as a walk over it: behind each rectangle stands what is inside, and where the walk goes on past that.
/// </remarks>
internal sealed class BoxTree
{
    private const int Fan = 4;

    // How far, in its own sizes, a rectangle may lie from the one before on average.
    private const double NearEnough = 8;

    private const int NoItem = -1;

    private readonly Node[] nodes;

    /// <param name="items">The rectangles; they are known by their numbers.</param>
    public BoxTree(ReadOnlySpan<Bounds> items)
    {
        var order = AreInOrder(items) ? null : HilbertOrder.FromBoxes(items);
        var (height, all) = (0, items.Length);
        for (var width = items.Length; width > 1; height++) all += width = (width + Fan - 1) / Fan;
        nodes = new Node[all];
        if (all > 0) Store(items, order, height, 0, 0);
    }

    /// <summary>The numbers of the rectangles that share a point with this one.</summary>
    public Hits Query(Bounds area) => new(this, area);

    /// <summary>A tree over what is round each of several things.</summary>
    public static BoxTree FromItems<T>(IReadOnlyList<T> items, Func<T, Bounds> boundsOf)
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

    /// <summary>Stores one rectangle of a level with all inside it; returns where the walk goes on past it.</summary>
    private int Store(ReadOnlySpan<Bounds> items, int[]? order, int level, int number, int at)
    {
        if (level == 0)
        {
            var item = order is null ? number : order[number];
            nodes[at] = new(items[item], at + 1, item);
            return at + 1;
        }

        // How many items one rectangle of the level below holds.
        var span = 1;
        for (var i = 1; i < level; i++) span *= Fan;
        var (box, next) = (Bounds.Nothing, at + 1);
        for (var k = number * Fan; k < (number + 1) * Fan && (long)k * span < items.Length; k++)
        {
            var child = next;
            next = Store(items, order, level - 1, k, child);
            box = box.With(nodes[child].Box);
        }

        nodes[at] = new(box, next, NoItem);
        return next;
    }

    private readonly record struct Node(Bounds Box, int Next, int Item);

    /// <summary>A walk over the tree that says at each step whether to go deeper.</summary>
    internal struct Walk(BoxTree tree)
    {
        private int at;

        /// <summary>True when the walk is over.</summary>
        public readonly bool IsDone => at >= tree.nodes.Length;

        /// <summary>The rectangle that the walk has come to.</summary>
        public readonly Bounds Box => tree.nodes[at].Box;

        /// <summary>True when it is one of those given, false when it is round several of them.</summary>
        public readonly bool IsItem => tree.nodes[at].Item != NoItem;

        /// <summary>The number of the rectangle.</summary>
        public readonly int Item => tree.nodes[at].Item;

        /// <summary>To the first of those inside.</summary>
        public void Enter() => at++;

        /// <summary>To the next one that is not inside.</summary>
        public void Pass() => at = tree.nodes[at].Next;
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
