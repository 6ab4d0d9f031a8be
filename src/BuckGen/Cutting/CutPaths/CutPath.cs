using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Lettering;

namespace BuckGen.Cutting.CutPaths;

/// <summary>One path of a machine: lines and arcs, closed or open.</summary>
/// <param name="Layer">What is done along it.</param>
/// <param name="Segments">Lines and arcs, each starting where the one before ends.</param>
/// <param name="Closed">True when the last piece ends where the first starts.</param>
public sealed record CutPath(CutLayer Layer, ImmutableArray<Segment> Segments, bool Closed)
{
    /// <summary>Length of the path, mm.</summary>
    public double Length => Segments.Sum(s => s.Length);

    /// <summary>A closed path along a loop.</summary>
    public static CutPath FromLoop(CutLayer layer, Loop loop)
    {
        ArgumentNullException.ThrowIfNull(loop);
        return new(layer, loop.Segments, true);
    }

    /// <summary>An open path along a pen stroke.</summary>
    public static CutPath FromStroke(CutLayer layer, Stroke stroke)
    {
        ArgumentNullException.ThrowIfNull(stroke);
        var v = stroke.Vertices;
        return new(layer,
            [.. Enumerable.Range(0, v.Length - 1)
                .Select(i => new Segment(new(v[i].X, v[i].Y), new(v[i + 1].X, v[i + 1].Y), v[i].Bulge))],
            false);
    }

    /// <summary>The path moved or turned.</summary>
    public CutPath Transformed(Affine map)
    {
        ArgumentNullException.ThrowIfNull(map);
        return this with
        {
            Segments = [
                .. Segments.Select(s => new Segment(map.Apply(s.Start), map.Apply(s.End), map.Mirrors ? -s.Bulge : s.Bulge))],
        };
    }

    /// <summary>Circles are distinguished from other loops to this distance, mm; cut files round to the same.</summary>
    private const double CircleTolerance = 1e-4;

    /// <summary>The circle the path runs round; null when it is not a circle.</summary>
    internal (Vec2 Centre, double Radius)? AsCircle() => AsLoop()?.AsCircle(CircleTolerance);

    /// <summary>The loop the path runs along; null for an open path.</summary>
    public Loop? AsLoop() => Closed ? Loop.FromSegments(Segments) : null;
}
