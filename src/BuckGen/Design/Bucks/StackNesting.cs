using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Bucks;

/// <summary>
/// The law of a drafted stack: no layer has more wood than the one below, or, where the walls lean the wrong way, than the one
/// above. It holds for both kinds of buck, for a cavity shrinks toward its floor.
/// </summary>
internal static class StackNesting
{
    /// <summary>Refuses a stack in which a drafted layer reaches beyond its larger neighbour.</summary>
    /// <param name="layers">The layers, lowest first; plates under the drafted ones are left out of it.</param>
    /// <param name="draft">A draft angle in degrees; its sign gives the way the walls lean.</param>
    /// <param name="tolerance">Each outline may deviate by the chord error.</param>
    /// <exception cref="OffsetFailedException">A layer reaches beyond its neighbour; the message names the height and the
    /// place.</exception>
    public static void Require(IReadOnlyList<LayerBlank> layers, double draft, Tolerance tolerance)
    {
        var walls = layers.Where(l => l.Role == LayerRole.Wall).ToArray();
        for (var i = 1; i < walls.Length; i++)
        {
            var (larger, smaller) = draft >= 0 ? (walls[i - 1], walls[i]) : (walls[i], walls[i - 1]);
            if (Overhang(larger.Wood, smaller.Wood, 2 * tolerance.Chord) is not { } place) continue;
            throw new OffsetFailedException(FormattableString.Invariant(
                $"at a height of {walls[i].Bottom:0.###} mm layer {smaller.Number} reaches beyond layer {larger.Number} at ")
                + FormattableString.Invariant($"{place}, so one of the two is wrong; redraw the outline near that place"));
        }
    }

    /// <summary>A point of the smaller wood beyond the larger one, farther than the tolerance from any edge.</summary>
    private static Vec2? Overhang(Region larger, Region smaller, double tolerance) =>
        // An edge of the smaller over air, or an edge of the larger, of a hole that should not be there, beside wood.
        First(smaller, larger, stray: inside => !inside, tolerance) ?? First(larger, smaller, stray: inside => inside, tolerance);

    private static Vec2? First(Region edges, Region other, Predicate<bool> stray, double tolerance)
    {
        var (inside, near) = (new RegionInterior(other), new SegmentIndex(other.Segments));
        foreach (var segment in edges.Segments)
            foreach (var t in (ReadOnlySpan<double>)[0, 0.5])
                if (segment.PointAt(t) is var p && near.DistanceWithin(p, tolerance) > tolerance && stray(inside.Contains(p)))
                    return p;
        return null;
    }
}
