using BuckGen.Geometry;

namespace BuckGen.Cutting.Drilling.Paths;

/// <summary>
/// Takes a way that no single move shortens and disturbs it in one small place after another. Two neighbouring stretches change
/// places, and the moves repair what they can. The result is kept unless it is longer.
/// </summary>
internal sealed class ShortPath
{
    private const int NearASide = 3;

    // Short stretches repair a row, long ones the order of whole clumps; the short ones are cheaper to try.
    private const int ShortStretch = 20;
    private const int LongStretch = 100;
    private const int ShortOnesALongOne = 3;
    private const int DisturbancesPerPlace = 20;
    private const int MaxDisturbances = 30_000;

    // Multiples of these, taken modulo 1, spread evenly without repeating: they choose where to disturb.
    private static readonly double[] Spread = [0.6180339887498949, 0.4142135623730951, 0.7320508075688772];

    private readonly VisitOrder visits;
    private readonly PathMoves moves;
    private readonly Queue<int> queue = new();
    private readonly bool[] isQueued;
    private readonly List<int> touched = [];

    private ShortPath(Vec2[] places)
    {
        visits = new(places, NearestNeighbour.From(places));
        moves = new(visits, NearPlaces.Find(places, NearASide));
        isQueued = new bool[places.Length];
    }

    /// <summary>Numbers of the places in the order of visiting, from place 0.</summary>
    public static int[] Through(Vec2[] places)
    {
        var path = new ShortPath(places);
        for (var i = 0; i < places.Length; i++) path.Enqueue(path.visits[i]);
        path.Improve();
        path.visits.Commit();
        if (places.Length > 3) path.DisturbAllOver();
        return path.visits.ToArray();
    }

    private void DisturbAllOver()
    {
        var count = Math.Min(MaxDisturbances, DisturbancesPerPlace * visits.Count);
        for (var i = 1; i <= count; i++)
        {
            var longer = Disturb(i);
            if (longer - Improve() > PathMoves.MinGain) visits.Undo();
            else visits.Commit();
        }
    }

    /// <summary>Lets two neighbouring stretches change places.</summary>
    /// <returns>By how much the way got longer, mm.</returns>
    private double Disturb(int number)
    {
        var longest = Math.Min(number % (ShortOnesALongOne + 1) == 0 ? LongStretch : ShortStretch, (visits.Count - 1) / 2);
        var (one, two) = (1 + Choose(number, 1, longest), 1 + Choose(number, 2, longest));
        var first = 1 + Choose(number, 0, visits.Count - one - two);
        var (middle, last) = (first + one, first + one + two - 1);
        foreach (var position in (ReadOnlySpan<int>)[first - 1, first, middle - 1, middle, last]) Enqueue(visits[position]);
        if (last < visits.End) Enqueue(visits[last + 1]);
        var joined = last == visits.End ? 0 : visits.Distance(visits[middle - 1], visits[last + 1]);
        var longer = visits.Distance(visits[first - 1], visits[middle]) + visits.Distance(visits[last], visits[first]) + joined
            - visits.DistanceAfter(first - 1) - visits.DistanceAfter(middle - 1) - visits.DistanceAfter(last);
        visits.Move(first, middle - 1, last);
        return longer;
    }

    private static int Choose(int number, int spread, int count)
    {
        var share = number * Spread[spread];
        return (int)((share - Math.Floor(share)) * count);
    }

    /// <summary>Makes moves until none of the waiting places gains by one.</summary>
    /// <returns>By how much the way got shorter, mm.</returns>
    private double Improve()
    {
        var gained = 0.0;
        while (queue.TryDequeue(out var place))
        {
            isQueued[place] = false;
            touched.Clear();
            gained += moves.Shorten(place, touched);
            foreach (var changed in touched) Enqueue(changed);
        }

        return gained;
    }

    private void Enqueue(int place)
    {
        if (isQueued[place]) return;
        isQueued[place] = true;
        queue.Enqueue(place);
    }
}
