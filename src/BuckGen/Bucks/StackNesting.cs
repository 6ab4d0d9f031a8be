using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Bucks;

/// <summary>
/// The law of a drafted stack: there is never more wood higher up. It holds for both kinds of buck, for a cavity shrinks toward its floor.
/// </summary>
internal static class StackNesting
{
    /// <summary>Refuses a stack in which a drafted layer reaches beyond the one below.</summary>
    /// <param name="layers">The layers, lowest first; plates under the drafted ones are left out of it.</param>
    /// <param name="tolerance">Each outline may deviate by the chord error.</param>
    /// <exception cref="OffsetFailedException">A layer reaches beyond the one below; the message names the height and the place.</exception>
    public static void Require(IReadOnlyList<LayerBlank> layers, Tolerance tolerance)
    {
        var walls = layers.Where(l => l.Role == LayerRole.Wall).ToArray();
        for (var i = 1; i < walls.Length; i++)
        {
            if (Overhang(walls[i - 1].Wood, walls[i].Wood, 2 * tolerance.Chord) is not { } place) continue;
            throw new OffsetFailedException(FormattableString.Invariant(
                $"at a height of {walls[i].Bottom:0.###} mm layer {walls[i].Number} reaches beyond layer {walls[i - 1].Number} at {place}, so one of the two is wrong; redraw the outline near that place"));
        }
    }

    /// <summary>A point of wood above that has no wood under it, farther than the tolerance from any edge that would excuse it.</summary>
    private static Vec2? Overhang(Region lower, Region upper, double tolerance) =>
        // An upper edge over air, or a lower edge, of a hole that should not be there, under wood.
        First(upper, lower, stray: inside => !inside, tolerance) ?? First(lower, upper, stray: inside => inside, tolerance);

    private static Vec2? First(Region edges, Region other, Predicate<bool> stray, double tolerance)
    {
        var (inside, near) = (new RegionInterior(other), new SegmentIndex(other.Segments));
        foreach (var segment in edges.Segments)
            foreach (var t in (ReadOnlySpan<double>)[0, 0.5])
                if (segment.PointAt(t) is var p && near.DistanceWithin(p, tolerance) > tolerance && stray(inside.Contains(p))) return p;
        return null;
    }
}
