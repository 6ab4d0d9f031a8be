using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Bucks;

/// <summary>Decides whether a piece could be glued on turned or flipped by mistake.</summary>
internal static class TurnCheck
{
    /// <summary>An outline that is off by more than this somewhere, mm, is noticed (common practice, no source).</summary>
    public const double Noticeable = 1;

    /// <summary>True when some way of turning or flipping keeps both the dowels and the outline.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="dowels">Two or three dowel centres.</param>
    public static bool FitsWrongWay(Island piece, ImmutableArray<Vec2> dowels)
    {
        // Three unlike distances leave no wrong way at all.
        if (dowels.Length != 2) return false;
        var (a, b) = (dowels[0], dowels[1]);
        var middle = a.MidpointTo(b);
        ReadOnlySpan<Affine> wrongWays =
            [Affine.Rotation(Math.PI, middle), Affine.Reflection(middle, b - a), Affine.Reflection(middle, (b - a).Left)];
        var edge = new SegmentIndex(piece.Loops.SelectMany(l => l.Segments));
        foreach (var way in wrongWays)
            if (piece.Loops.SelectMany(l => l.Segments).All(s => Unnoticed(s, way, edge))) return true;
        return false;
    }

    private static bool Unnoticed(Segment segment, Affine way, SegmentIndex edge) =>
        edge.DistanceWithin(way.Apply(segment.Start), Noticeable) <= Noticeable
        && edge.DistanceWithin(way.Apply(segment.PointAt(0.5)), Noticeable) <= Noticeable;
}
