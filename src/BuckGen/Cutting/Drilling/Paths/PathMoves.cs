namespace BuckGen.Cutting.Drilling.Paths;

/// <summary>
/// The two moves that shorten a way. 2-opt: two legs are exchanged by turning the stretch between them round. Or-opt: up to three
/// places are taken out and put in elsewhere, either way round. Only moves that join a place to one near it are tried.
/// </summary>
internal sealed class PathMoves(VisitOrder visits, int[][] near)
{
    /// <summary>Shortenings below this are rounding, mm.</summary>
    public const double MinGain = 1e-7;

    private const int MaxStretch = 3;

    /// <summary>Tries to join a place to a nearer one.</summary>
    /// <param name="place">The place.</param>
    /// <param name="touched">Gets the places whose legs changed.</param>
    /// <returns>By how much the way got shorter, mm; 0 when no move helps.</returns>
    public double Shorten(int place, ICollection<int> touched)
    {
        var gain = ExchangeAfter(place, touched);
        if (gain == 0) gain = ExchangeBefore(place, touched);
        for (var length = 1; gain == 0 && length <= MaxStretch; length++)
        {
            var at = visits.PositionOf(place);
            gain = MoveStretch(at, at + length - 1, place, touched);
            if (gain == 0 && length > 1) gain = MoveStretch(at - length + 1, at, place, touched);
        }

        return gain;
    }

    /// <summary>Joins the place to another instead of the one after it; the two that came after them are joined too.</summary>
    private double ExchangeAfter(int place, ICollection<int> touched)
    {
        var at = visits.PositionOf(place);
        // The last place has no leg to give up, but every leg it can take the place of may be longer than the new one.
        var limit = at == visits.End ? double.PositiveInfinity : visits.DistanceAfter(at);
        foreach (var other in near[place])
        {
            var leg = visits.Distance(place, other);
            if (leg >= limit) break;
            var otherAt = visits.PositionOf(other);
            var (first, last) = (Math.Min(at, otherAt) + 1, Math.Max(at, otherAt));
            var closing = last == visits.End ? 0 : visits.Distance(visits[first], visits[last + 1]);
            var gain = visits.DistanceAfter(at) + visits.DistanceAfter(otherAt) - leg - closing;
            if (gain > MinGain) return Turn(first, last, gain, touched);
        }

        return 0;
    }

    /// <summary>Joins the place to another instead of the one before it; the two that came before them are joined too.</summary>
    private double ExchangeBefore(int place, ICollection<int> touched)
    {
        var at = visits.PositionOf(place);
        if (at == 0) return 0;
        foreach (var other in near[place])
        {
            var leg = visits.Distance(place, other);
            if (leg >= visits.DistanceAfter(at - 1)) break;
            var otherAt = visits.PositionOf(other);
            if (otherAt == 0) continue;
            var (first, last) = (Math.Min(at, otherAt), Math.Max(at, otherAt) - 1);
            var closing = visits.Distance(visits[first - 1], visits[last]);
            var gain = visits.DistanceAfter(at - 1) + visits.DistanceAfter(otherAt - 1) - leg - closing;
            if (gain > MinGain) return Turn(first, last, gain, touched);
        }

        return 0;
    }

    private double Turn(int first, int last, double gain, ICollection<int> touched)
    {
        Touch(first - 1, touched);
        Touch(last, touched);
        visits.Reverse(first, last);
        return gain;
    }

    /// <summary>Moves a stretch so that its end <paramref name="place"/> comes to lie beside a place near it.</summary>
    private double MoveStretch(int first, int last, int place, ICollection<int> touched)
    {
        if (first < 1 || last > visits.End) return 0;
        var far = visits[first] == place ? visits[last] : visits[first];
        var joining = last == visits.End ? 0 : visits.Distance(visits[first - 1], visits[last + 1]);
        var freed = visits.DistanceAfter(first - 1) + visits.DistanceAfter(last) - joining;
        foreach (var other in near[place])
        {
            var leg = visits.Distance(place, other);
            if (leg >= freed - MinGain) break;
            var otherAt = visits.PositionOf(other);
            if (otherAt >= first && otherAt <= last) continue;
            foreach (var after in (ReadOnlySpan<int>)[otherAt, otherAt - 1])
            {
                if (after < 0 || (after >= first - 1 && after <= last)) continue;
                var beyond = after == otherAt ? otherAt + 1 : after;
                var opened = visits.DistanceAfter(after);
                var gain = freed - leg - (beyond > visits.End ? 0 : visits.Distance(far, visits[beyond])) + opened;
                if (gain <= MinGain) continue;
                PutIn(first, last, after, after == otherAt ? place : far, touched);
                return gain;
            }
        }

        return 0;
    }

    private void PutIn(int first, int last, int after, int leading, ICollection<int> touched)
    {
        Touch(first - 1, touched);
        Touch(last, touched);
        Touch(after, touched);
        var moved = visits.Move(first, last, after);
        if (visits[moved] != leading) visits.Reverse(moved, moved + last - first);
    }

    private void Touch(int position, ICollection<int> touched)
    {
        touched.Add(visits[position]);
        if (position < visits.End) touched.Add(visits[position + 1]);
    }
}
