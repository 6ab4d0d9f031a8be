namespace BuckGen.Geometry.Offsetting;

/// <summary>The wedge that a mitre adds outside a corner.</summary>
/// <param name="corners">The wedge's corners, counter-clockwise and convex.</param>
internal sealed class InsideMitre(Vec2[] corners) : ForbiddenZone
{
    public override Bounds Bounds { get; } = corners.Aggregate(Bounds.Nothing, (b, p) => b.With(p));

    public override bool IsConvex => true;

    public override bool Contains(Vec2 p)
    {
        for (var i = 0; i < corners.Length; i++)
        {
            var edge = corners[(i + 1) % corners.Length] - corners[i];
            if (edge.Cross(p - corners[i]) <= Precision.Depth * edge.Length) return false;
        }

        return true;
    }

    public override void AddCrossings(Carrier piece, ref ParameterList found)
    {
        for (var i = 0; i < corners.Length; i++)
            Intersections.WithLine(piece, corners[i], corners[(i + 1) % corners.Length] - corners[i], ref found);
    }
}
