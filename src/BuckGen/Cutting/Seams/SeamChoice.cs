namespace BuckGen.Cutting.Seams;

/// <summary>Chooses seams so that a plate is cut in the fewest pieces, of lengths as even as the places allow.</summary>
internal static class SeamChoice
{
    /// <summary>Rounding of a length, mm.</summary>
    private const double Rounding = 1e-9;

    /// <summary>The seams, rising; or where the last one would have to stand and none can.</summary>
    /// <param name="from">Start of the plate, x.</param>
    /// <param name="to">End of the plate, x.</param>
    /// <param name="room">Maximum length of a piece, what a seam reaches beyond it included, mm.</param>
    /// <param name="reach">How far a seam reaches into the next piece, mm.</param>
    /// <param name="places">Where seams may stand, rising.</param>
    public static (List<Seam> Seams, Blocked? Blocked) Choose(
        double from, double to, double room, double reach, IReadOnlyList<Seam> places)
    {
        // A piece that ends as far on as it can leaves the least to the others, so that this takes the fewest pieces.
        var (last, start) = (new List<double>(), from);
        while (to - start > room + Rounding)
        {
            var limit = start + room - reach + Rounding;
            var next = places.LastOrDefault(p => p.At > start && p.At <= limit);
            if (next is null)
                return ([], new(start, start + room - reach,
                    places.FirstOrDefault(p => p.At > limit) is { } beyond ? beyond.At + reach - start : null));
            last.Add(start = next.At);
        }

        // The same from the far end gives the first place of every seam; between both it goes where pieces are even.
        var first = new double[last.Count];
        var end = to - room - Rounding;
        for (var i = last.Count - 1; i >= 0; i--)
        {
            first[i] = places.First(p => p.At >= end).At;
            end = first[i] - room + reach - Rounding;
        }

        var chosen = new List<Seam>();
        start = from;
        for (var i = 0; i < last.Count; i++)
        {
            var wanted = start + (to - start) / (last.Count + 1 - i);
            var limit = Math.Min(last[i], start + room - reach + Rounding);
            chosen.Add(places.Where(p => p.At >= first[i] && p.At <= limit).MinBy(p => Math.Abs(p.At - wanted))!);
            start = chosen[^1].At;
        }

        return (chosen, null);
    }
}

/// <summary>A stretch of a plate in which a seam is needed and none can stand.</summary>
/// <param name="From">Where the piece starts, x or y.</param>
/// <param name="To">Where it must end at the latest.</param>
/// <param name="Needed">Length of the piece that ends at the next free place, mm; null when there is none.</param>
internal sealed record Blocked(double From, double To, double? Needed);
