using BuckGen.Geometry;

namespace BuckGen.Intake.Healing;

/// <summary>A stretch on which two lines or two arcs lie on each other.</summary>
/// <param name="Place">A point of it.</param>
/// <param name="Straight">Its length where it is straight, mm; 0 for arcs, whose overlap is not measured.</param>
/// <param name="SameWay">True when both pieces run along it in one direction.</param>
internal readonly record struct SharedStretch(Vec2 Place, double Straight, bool SameWay)
{
    /// <summary>The stretch; null when the pieces do no more than meet.</summary>
    public static SharedStretch? Find(Segment a, Segment b, Tolerance tolerance)
    {
        if (!a.IsArc && !b.IsArc)
            return OverlappingLines.Common(a, b, tolerance) is { } common
                ? new(common.PointAt(0.5), common.Length, a.Chord.Dot(b.Chord) > 0) : null;
        if (!a.IsArc || !b.IsArc || !tolerance.AreCoincident(a.Centre, b.Centre)
            || Math.Abs(a.Radius - b.Radius) > tolerance.Coincident) return null;
        var place = PlaceInside(a, b) ?? PlaceInside(b, a);
        return place is { } shared ? new(shared, 0, a.Bulge > 0 == b.Bulge > 0) : null;

        Vec2? PlaceInside(Segment arc, Segment other)
        {
            var margin = 2 * tolerance.Coincident / other.Length;
            foreach (var p in (ReadOnlySpan<Vec2>)[arc.PointAt(0.5), arc.Start, arc.End])
                if (other.ParameterOf(p) is var t && t > margin && t < 1 - margin) return p;
            return null;
        }
    }
}
