using BuckGen.Geometry;

namespace BuckGen.Tests.Cutting.Drilling;

/// <summary>
/// A length that no way from the origin through the points can be shorter than: the bound of Held and Karp (1970), usually
/// within 1 % of the shortest way. A way is a spanning tree in which every place has two legs, once a place without cost closes
/// it from its end back to its start. Prices on places that have too many or too few legs make the cheapest tree look like a
/// way; whatever the prices, that tree less the prices paid is no dearer than any way.
/// </summary>
internal static class PathBound
{
    private const int Rounds = 1000;

    public static double Compute(Vec2[] points)
    {
        Vec2[] places = [default, .. points];
        var prices = new double[places.Length];
        var best = 0.0;
        var step = places.Max(p => p.X) / places.Length;
        for (var round = 0; round < Rounds; round++, step *= 0.995)
        {
            var (cost, legs) = CheapestTree(places, prices);
            // The closing place has a leg to the start and one to the cheapest end.
            var end = Enumerable.Range(1, points.Length).MinBy(i => prices[i]);
            legs[0]++;
            legs[end]++;
            best = Math.Max(best, cost + prices[0] + prices[end] - 2 * prices.Sum());
            for (var i = 0; i < prices.Length; i++) prices[i] += step * (legs[i] - 2);
        }

        return best;
    }

    /// <summary>Prim's tree over the places, each leg dearer by the prices of its two ends.</summary>
    private static (double Cost, int[] Legs) CheapestTree(Vec2[] places, double[] prices)
    {
        var legs = new int[places.Length];
        var parents = new int[places.Length];
        var costs = Enumerable.Repeat(double.PositiveInfinity, places.Length).ToArray();
        var open = Enumerable.Range(1, places.Length - 1).ToList();
        var total = 0.0;
        for (var added = 0; open.Count > 0;)
        {
            var next = open[0];
            foreach (var i in open)
            {
                var cost = places[added].DistanceTo(places[i]) + prices[added] + prices[i];
                if (cost < costs[i]) (costs[i], parents[i]) = (cost, added);
                if (costs[i] < costs[next]) next = i;
            }

            open.Remove(next);
            total += costs[next];
            legs[next]++;
            legs[parents[next]]++;
            added = next;
        }

        return (total, legs);
    }
}
