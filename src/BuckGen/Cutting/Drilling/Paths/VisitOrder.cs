using BuckGen.Geometry;

namespace BuckGen.Cutting.Drilling.Paths;

/// <summary>
/// An order of visiting places, with the start first. All it does is turn a stretch round, and every such step can be taken back.
/// </summary>
internal sealed class VisitOrder
{
    private readonly Vec2[] places;
    private readonly int[] order;
    private readonly int[] positions;
    private readonly Stack<(int First, int Last)> steps = new();

    /// <summary>Starts from an order given as numbers of places.</summary>
    public VisitOrder(Vec2[] places, int[] order)
    {
        (this.places, this.order) = (places, order);
        positions = new int[order.Length];
        for (var i = 0; i < order.Length; i++) positions[order[i]] = i;
    }

    /// <summary>Number of places, the start counted.</summary>
    public int Count => order.Length;

    /// <summary>Position of the last place.</summary>
    public int End => order.Length - 1;

    /// <summary>The place at a position.</summary>
    public int this[int position] => order[position];

    /// <summary>The position of a place.</summary>
    public int PositionOf(int place) => positions[place];

    /// <summary>Distance between two places, mm.</summary>
    public double Distance(int a, int b) => places[a].DistanceTo(places[b]);

    /// <summary>Distance between the places at a position and the next, mm; 0 after the last, since the way ends there.</summary>
    public double DistanceAfter(int position) => position == End ? 0 : Distance(order[position], order[position + 1]);

    /// <summary>Turns the stretch between two positions round, both included.</summary>
    public void Reverse(int first, int last)
    {
        if (first >= last) return;
        Turn(first, last);
        steps.Push((first, last));
    }

    /// <summary>Moves a stretch to after a position outside it; it keeps its direction.</summary>
    /// <returns>Where the stretch begins now.</returns>
    public int Move(int first, int last, int after)
    {
        var length = last - first + 1;
        var (from, to) = after > last ? (first, after) : (after + 1, last);
        var moved = after > last ? after - length + 1 : after + 1;
        Reverse(from, to);
        Reverse(moved, moved + length - 1);
        if (after > last) Reverse(from, moved - 1);
        else Reverse(moved + length, to);
        return moved;
    }

    /// <summary>Makes the steps so far final.</summary>
    public void Commit() => steps.Clear();

    /// <summary>Takes back every step since the last <see cref="Commit"/>.</summary>
    public void Undo()
    {
        while (steps.TryPop(out var step)) Turn(step.First, step.Last);
    }

    /// <summary>The order as it stands.</summary>
    public int[] ToArray() => [.. order];

    private void Turn(int first, int last)
    {
        Array.Reverse(order, first, last - first + 1);
        for (var i = first; i <= last; i++) positions[order[i]] = i;
    }
}
