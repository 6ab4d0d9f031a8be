using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Venting;

/// <summary>A level place that the sheet comes down on last, shut in by walls.</summary>
/// <param name="Layer">The layer on whose top face it lies.</param>
/// <param name="Air">The air over it: its outer edge and holes are walls, or the edge of the plate.</param>
/// <param name="Walls">The wood that stands on the floor.</param>
/// <param name="DeepestPoint">The one place where air stays last, when the rest of the floor is a slope; null for a level
/// floor.</param>
internal sealed record AirFloor(LayerBlank Layer, Island Air, FloorWalls Walls, Vec2? DeepestPoint = null)
{
    /// <summary>Distance to the nearest wall, mm; 0 under a wall, infinite when none lies within the reach.</summary>
    public double ToWall(Vec2 p, double reach) => Walls.Interior.Contains(p) ? 0 : Walls.Edges.DistanceWithin(p, reach);

    /// <summary>True when no wall stands between two places: a vent at one then draws air from the other.</summary>
    public bool Sees(Vec2 a, Vec2 b)
    {
        Span<double> space = stackalloc double[2];
        foreach (var wall in Walls.Edges.Intersecting(Bounds.FromCorners(a, b)))
        {
            var meetings = new ParameterList(space);
            Intersections.WithLine(new(wall), a, b - a, ref meetings);
            foreach (var t in meetings.Sorted)
                if ((wall.PointAt(t) - a).Dot(wall.PointAt(t) - b) < 0) return false;
        }

        return true;
    }
}
