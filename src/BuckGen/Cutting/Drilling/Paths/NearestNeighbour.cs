using BuckGen.Geometry;

namespace BuckGen.Cutting.Drilling.Paths;

/// <summary>A first way through all places: always on to the nearest one not yet visited.</summary>
internal static class NearestNeighbour
{
    /// <summary>Numbers of the places in the order of visiting, from place 0.</summary>
    public static int[] From(Vec2[] places)
    {
        var order = Enumerable.Range(0, places.Length).ToArray();
        for (var i = 0; i + 1 < order.Length; i++)
        {
            var (here, nearest, least) = (places[order[i]], i + 1, double.PositiveInfinity);
            for (var j = i + 1; j < order.Length; j++)
            {
                var distance = (places[order[j]] - here).LengthSquared;
                if (distance < least || (distance == least && order[j] < order[nearest])) (nearest, least) = (j, distance);
            }

            (order[i + 1], order[nearest]) = (order[nearest], order[i + 1]);
        }

        return order;
    }
}
