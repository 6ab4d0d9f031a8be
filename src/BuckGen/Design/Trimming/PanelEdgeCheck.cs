using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Polygonal;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace BuckGen.Design.Trimming;

/// <summary>Do the openings lie within the panel's wood?</summary>
internal static class PanelEdgeCheck
{
    /// <summary>A place where an opening reaches over the panel's edge; null when all lie within.</summary>
    /// <param name="panel">The panel without its openings.</param>
    /// <param name="openings">The openings.</param>
    /// <param name="tolerance">How finely arcs are followed.</param>
    public static Vec2? ReachesOver(Region panel, Region openings, Tolerance tolerance)
    {
        var (wood, cut) = (PolygonConversion.ToGeometry(panel, tolerance.Chord),
            PolygonConversion.ToGeometry(openings, tolerance.Chord));
        // The chords of arcs that nearly touch may cross. Outlines that touch along a hair leave slivers.
        var beyond =
            OverlayNGRobust.Overlay(GeometryFixer.Fix(cut), GeometryFixer.Fix(wood), SpatialFunction.Difference);
        if (beyond.Area <= tolerance.Chord * tolerance.Chord) return null;
        var place = beyond.InteriorPoint;
        return new(place.X, place.Y);
    }

    /// <summary>The finding about such a place.</summary>
    public static Finding Finding(Vec2 place) =>
        new("panel-edge-cut", Severity.Error,
            FormattableString.Invariant(
                $"The opening for the part reaches over the panel's drawn edge, or over a hole in it, at {place}: it is ")
                + "left out.",
            "Draw the panel larger, or move its outline or hole; both drawings share one origin.")
        {
            Place = place,
            Value = 0,
            Limit = 0,
        };
}
