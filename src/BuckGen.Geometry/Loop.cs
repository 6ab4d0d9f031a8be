using System.Collections.Immutable;

namespace BuckGen.Geometry;

/// <summary>A closed path of lines and arcs: the end of each piece is exactly the start of the next. Immutable.</summary>
public sealed class Loop
{
    private Loop(ImmutableArray<Segment> segments)
    {
        Segments = segments;
        var (area, length, bounds) = (0.0, 0.0, Bounds.Nothing);
        var origin = segments[0].Start;
        foreach (var s in segments)
        {
            // Relative to a point of the loop, so that far-away drawings lose no digits.
            area += new Segment(s.Start - origin, s.End - origin, s.Bulge).AreaShare;
            length += s.Length;
            bounds = bounds.With(s.Bounds);
        }

        (SignedArea, Length, Bounds) = (area, length, bounds);
    }

    /// <summary>The pieces in order.</summary>
    public ImmutableArray<Segment> Segments { get; }

    /// <summary>Enclosed area, mm²; positive when the loop runs counter-clockwise.</summary>
    public double SignedArea { get; }

    /// <summary>Length of the path, mm.</summary>
    public double Length { get; }

    /// <summary>The smallest upright rectangle round the loop.</summary>
    public Bounds Bounds { get; }

    /// <summary>A loop through corners joined by lines and arcs.</summary>
    /// <param name="corners">At least two corners, each with the bulge of the piece that leaves it.</param>
    /// <exception cref="ArgumentException">Fewer than two corners, or a coordinate that is not a number.</exception>
    internal static Loop FromCorners(IReadOnlyList<(Vec2 Point, double Bulge)> corners)
    {
        ArgumentNullException.ThrowIfNull(corners);
        if (corners.Count < 2)
            throw new ArgumentException($"A loop needs at least 2 corners, got {corners.Count}.", nameof(corners));
        var segments = ImmutableArray.CreateBuilder<Segment>(corners.Count);
        for (var i = 0; i < corners.Count; i++)
        {
            var (point, bulge) = corners[i];
            if (!point.IsFinite || !double.IsFinite(bulge))
                throw new ArgumentException($"Corner {i} of a loop is not a number.", nameof(corners));
            segments.Add(new(point, corners[(i + 1) % corners.Count].Point, bulge));
        }

        return new(segments.MoveToImmutable());
    }

    /// <summary>A loop of pieces that already meet end to start; each end is set exactly on the next start.</summary>
    /// <param name="segments">At least two pieces in order.</param>
    public static Loop FromSegments(IReadOnlyList<Segment> segments)
    {
        ArgumentNullException.ThrowIfNull(segments);
        return FromCorners([.. segments.Select(s => (s.Start, s.Bulge))]);
    }

    /// <summary>A closed polygon.</summary>
    /// <param name="points">At least three corners; the first is not repeated at the end.</param>
    public static Loop Polygon(params IEnumerable<Vec2> points) => FromCorners([.. points.Select(p => (p, 0.0))]);

    /// <summary>An upright rectangle, counter-clockwise.</summary>
    public static Loop Rectangle(Bounds b) =>
        Polygon(new(b.MinX, b.MinY), new(b.MaxX, b.MinY), new(b.MaxX, b.MaxY), new(b.MinX, b.MaxY));

    /// <summary>A full circle, counter-clockwise, as two half circles.</summary>
    /// <param name="centre">Its centre.</param>
    /// <param name="radius">Radius in mm, above 0.</param>
    public static Loop Circle(Vec2 centre, double radius) =>
        FromCorners([(centre - new Vec2(radius, 0), 1), (centre + new Vec2(radius, 0), 1)]);

    /// <summary>True when the loop runs counter-clockwise.</summary>
    public bool IsCounterClockwise => SignedArea > 0;

    /// <summary>The same loop walked the other way.</summary>
    internal Loop Reversed() => new([.. Segments.Reverse().Select(s => s.Reversed())]);

    /// <summary>The loop moved, turned, scaled evenly or mirrored.</summary>
    /// <param name="map">A map that keeps circles circles.</param>
    public Loop Transformed(Affine map)
    {
        ArgumentNullException.ThrowIfNull(map);
        return FromCorners([.. Segments.Select(s => (map.Apply(s.Start), map.Mirrors ? -s.Bulge : s.Bulge))]);
    }

    /// <summary>How often the loop winds round a point: 0 outside, 1 or -1 inside a simple loop.</summary>
    internal int WindingAround(Vec2 p)
    {
        if (!Bounds.Contains(p)) return 0;
        var winding = 0;
        foreach (var s in Segments) winding += WindingOf(s, p);
        return winding;
    }

    /// <summary>
    /// What one piece adds to the winding round a point; nothing when all of it lies to the left, above or below.
    /// </summary>
    internal static int WindingOf(in Segment s, Vec2 p)
    {
        var winding = 0;
        var side = s.Chord.Cross(p - s.Start);
        if (s.Start.Y <= p.Y)
        {
            if (s.End.Y > p.Y && side > 0) winding++;
        }
        else if (s.End.Y <= p.Y && side < 0) winding--;

        // The polygon of chords is counted above; a point between an arc and its chord counts extra.
        return s.IsArc && IsBetweenArcAndChord(s, p, side) ? winding + Math.Sign(s.Bulge) : winding;
    }

    /// <summary>True when the point lies inside the loop.</summary>
    public bool Contains(Vec2 p) => WindingAround(p) != 0;

    /// <summary>Distance from a point to the nearest place on the path, mm.</summary>
    internal double DistanceTo(Vec2 p) => Segments.Min(s => s.DistanceTo(p));

    /// <summary>The circle this loop is, when all its pieces lie on one within a tolerance; otherwise null.</summary>
    /// <param name="tolerance">Maximum distance of centres and radii, mm.</param>
    internal (Vec2 Centre, double Radius)? AsCircle(double tolerance)
    {
        var first = Segments[0];
        if (!first.IsArc) return null;
        var (centre, radius) = (first.Centre, first.Radius);
        foreach (var s in Segments)
            if (!s.IsArc || s.Bulge > 0 != first.Bulge > 0
                || s.Centre.DistanceTo(centre) > tolerance || Math.Abs(s.Radius - radius) > tolerance) return null;
        return Math.Abs(Math.Abs(Segments.Sum(s => s.Sweep)) - 2 * Math.PI) < 1e-6 ? (centre, radius) : null;
    }

    private static bool IsBetweenArcAndChord(Segment arc, Vec2 p, double side)
    {
        if ((p - arc.Centre).LengthSquared >= arc.Radius * arc.Radius) return false;
        // A point on the chord itself counts as a hair to its right and above, as the crossing rule has it.
        var chord = arc.Chord;
        var decided = side != 0 ? side : chord.Y != 0 ? -chord.Y : chord.X;
        // A counter-clockwise arc bulges to the right of its chord.
        return arc.Bulge > 0 ? decided < 0 : decided > 0;
    }
}
