using BuckGen.Geometry;

namespace BuckGen.Cutting.Drilling.Paths;

/// <summary>
/// For each place the few others nearest to it: a number to each side, so that a place in a clump also knows the next clump.
/// </summary>
internal static class NearPlaces
{
    /// <summary>Numbers of the near places, nearest first; equally near ones in the order of their numbers.</summary>
    /// <param name="places">All places.</param>
    /// <param name="aSide">How many are kept in each quarter of the plane around a place.</param>
    public static int[][] Find(Vec2[] places, int aSide)
    {
        var near = new int[places.Length][];
        var quarters = Enumerable.Range(0, 4).Select(_ => new Shortlist(aSide)).ToArray();
        for (var i = 0; i < places.Length; i++)
        {
            for (var j = 0; j < places.Length; j++)
            {
                if (j == i) continue;
                var way = places[j] - places[i];
                quarters[(way.X >= 0 ? 0 : 1) + (way.Y >= 0 ? 0 : 2)].Offer(j, way.LengthSquared);
            }

            near[i] = [.. quarters.SelectMany(q => q.Take()).OrderBy(n => n.Distance).ThenBy(n => n.Place).Select(n => n.Place)];
        }

        return near;
    }

    /// <summary>The nearest of the places offered to it.</summary>
    private sealed class Shortlist(int length)
    {
        private readonly (double Distance, int Place)[] best = new (double, int)[length];
        private int count;

        public void Offer(int place, double distance)
        {
            if (count == length && distance >= best[^1].Distance) return;
            var at = count < length ? count++ : length - 1;
            for (; at > 0 && best[at - 1].Distance > distance; at--) best[at] = best[at - 1];
            best[at] = (distance, place);
        }

        /// <summary>What is on the list, which is empty afterwards.</summary>
        public (double Distance, int Place)[] Take()
        {
            var taken = best[..count];
            count = 0;
            return taken;
        }
    }
}
