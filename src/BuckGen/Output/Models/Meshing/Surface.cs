namespace BuckGen.Output.Models.Meshing;

/// <summary>A corner of the surface: a point of the plan at one of the solid's heights.</summary>
/// <param name="Level">Number of the height, 0 for the lowest.</param>
/// <param name="Point">The point of the plan.</param>
internal readonly record struct SurfacePoint(int Level, GridPoint Point) : IComparable<SurfacePoint>
{
    /// <summary>By height, then by the point.</summary>
    public int CompareTo(SurfacePoint other) =>
        Level != other.Level ? Level.CompareTo(other.Level) : Point.CompareTo(other.Point);
}

/// <summary>A triangle of the surface, counter-clockwise seen from outside.</summary>
/// <param name="A">First corner.</param>
/// <param name="B">Second corner.</param>
/// <param name="C">Third corner.</param>
internal readonly record struct SurfaceTriangle(SurfacePoint A, SurfacePoint B, SurfacePoint C);

/// <summary>The surface of a solid from one contour to the next above it.</summary>
/// <remarks>
/// <para>
/// Where only one of the two contours has wood, the plan is covered with triangles. A corner on the lower contour stands at the
/// lower height and one on the upper contour at the upper height. So the triangles between two outlines are the slope between
/// them; at one height they are the flat of a step. Seen from above such triangles lie side by side, so they can't cut each
/// other. Which loop follows which need not be known: a loop without successor is closed by a flat face at its own height.
/// </para>
/// <para>
/// Where the contours meet, the wall is upright. Corners on both belong to the upper height in the triangles of the plan. A wall
/// closes what that leaves open along the lower contour: a rectangle where both ends of an edge are on both contours, a triangle
/// where one is.
/// </para>
/// </remarks>
internal static class Surface
{
    /// <summary>The triangles between two contours.</summary>
    /// <param name="lower">The contour below.</param>
    /// <param name="lowerLevel">Number of its height.</param>
    /// <param name="upper">The contour above.</param>
    /// <param name="upperLevel">Number of its height; the same when both lie at one height.</param>
    public static IEnumerable<SurfaceTriangle> Between(Contour lower, int lowerLevel, Contour upper, int upperLevel)
    {
        foreach (var (a, b, c, facesUp) in PlanDifference.Triangles(lower, upper))
            yield return facesUp ? new(Slope(a), Slope(b), Slope(c)) : new(Slope(a), Slope(c), Slope(b));
        if (lowerLevel == upperLevel) yield break;
        foreach (var (from, to) in lower.Edges)
        {
            if (upper.HasCorner(to)) yield return new(Low(from), Low(to), High(to));
            if (upper.HasCorner(from)) yield return new(Low(from), Slope(to), High(from));
        }

        SurfacePoint Low(GridPoint p) => new(lowerLevel, p);
        SurfacePoint High(GridPoint p) => new(upperLevel, p);
        SurfacePoint Slope(GridPoint p) => upper.HasCorner(p) ? High(p) : Low(p);
    }
}
