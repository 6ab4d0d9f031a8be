using BuckGen.Geometry;

namespace BuckGen.Design.Venting;

/// <summary>Where a row begins that has no corner to begin at.</summary>
/// <remarks>
/// At the point of the loop farthest from the loop's own middle. Of equally far ones it takes the one farthest from the middle of
/// the whole outline. Of those still alike it takes the first counter-clockwise from the drawing's x direction. The first two
/// turn with the outline and depend on neither drawing direction nor start point. Only a loop that is its own image under a turn
/// comes to the third.
/// </remarks>
internal static class RowStart
{
    /// <summary>Distances that differ by less count as alike, mm.</summary>
    private const double Alike = 1e-3;

    /// <summary>The way along the loop to its start, mm.</summary>
    /// <param name="measure">The loop.</param>
    /// <param name="middle">The middle of the whole outline.</param>
    public static double Find(LoopMeasure measure, Vec2 middle)
    {
        var own = EdgeCentroid.Compute([measure.Loop]);
        var places = Candidates(measure, own, middle).OrderBy(p => p.Along).ToList();
        places = Best(places.Where((p, i) => IsPeak(i)).ToList(), p => p.DistanceTo(own));
        places = Best(places, p => p.DistanceTo(middle));
        return places.MinBy(p => Direction(p.Place, own)).Along;

        // Beside a smooth farthest point others are as good as equal; only the peak itself counts.
        bool IsPeak(int i)
        {
            var (before, after) = (places[(i + places.Count - 1) % places.Count].Place, places[(i + 1) % places.Count].Place);
            return places[i].Place.DistanceTo(own) >= Math.Max(before.DistanceTo(own), after.DistanceTo(own)) - 1e-9;
        }
    }

    /// <summary>
    /// How far counter-clockwise from the drawing's x direction a place lies, seen from a middle; rounded, to compare by.
    /// </summary>
    public static double Direction(Vec2 place, Vec2 middle) =>
        Math.Round((Math.Atan2(place.Y - middle.Y, place.X - middle.X) + 2 * Math.PI + 1e-9) % (2 * Math.PI), 6);

    /// <summary>Corners, and where a circle round a middle touches an arc from outside.</summary>
    private static IEnumerable<(double Along, Vec2 Place)> Candidates(LoopMeasure measure, Vec2 own, Vec2 middle)
    {
        for (var i = 0; i < measure.Loop.Segments.Length; i++)
        {
            var piece = measure.Loop.Segments[i];
            yield return (measure.StartOf(i), piece.Start);
            if (!piece.IsArc) continue;
            var centre = piece.Centre;
            foreach (var away in (Vec2[])[centre - own, centre - middle, new(1, 0)])
                if (away.Length > Alike && piece.ParameterOf(centre + away) is > 0 and < 1 and var t)
                    yield return (measure.StartOf(i) + t * piece.Length, piece.PointAt(t));
        }
    }

    private static List<(double Along, Vec2 Place)> Best(List<(double Along, Vec2 Place)> places, Func<Vec2, double> distance)
    {
        var longest = places.Max(p => distance(p.Place));
        return places.FindAll(p => distance(p.Place) >= longest - Alike);
    }
}
