namespace BuckGen.Geometry.Facing;

/// <summary>What a line, an arc or a corner of an edge shows to one side of it.</summary>
/// <param name="Line">The line; null for an arc or a corner.</param>
/// <param name="Centre">Centre of the arc, or the corner.</param>
/// <param name="Radius">
/// Where the points lie: centre plus this many mm along their normal; negative when the normals run to the centre, 0 for a
/// corner.
/// </param>
/// <param name="Normals">The directions that lead squarely away from it on this side.</param>
/// <param name="IsBridged">
/// True for a shallow corner that does not stick out on this side: the curve that its lines follow has these normals, it has
/// none.
/// </param>
internal readonly record struct Face(Segment? Line, Vec2 Centre, double Radius, DirectionRange Normals, bool IsBridged)
{
    /// <summary>Corners flatter than this, radians, are left to the pieces beside them.</summary>
    private const double Flat = 1e-6;

    /// <summary>What the piece itself shows.</summary>
    public static Face OfPiece(EdgePiece piece, bool wood)
    {
        var (segment, normals) = (piece.Segment, wood ? piece.Normals : piece.Normals.Opposite);
        if (!segment.IsArc) return new(segment, default, 0, normals, false);
        var inward = segment.Bulge > 0 == wood;
        return new(null, segment.Centre, inward ? -segment.Radius : segment.Radius, normals, false);
    }

    /// <summary>What the corner at the start of a piece shows; null when it shows nothing.</summary>
    public static Face? OfCorner(EdgePiece piece, bool wood)
    {
        var size = Math.Abs(piece.Turn);
        var bridged = piece.Turn > 0 == wood;
        if (size < Flat || (bridged && size > AngleTolerances.Facet)) return null;
        return new(null, piece.Segment.Start, 0, wood ? piece.NormalsOfCorner : piece.NormalsOfCorner.Opposite, bridged);
    }

    /// <summary>The point whose normal is nearest to a direction.</summary>
    public Vec2 PointFor(double angle) => Centre + DirectionRange.Towards(Normals.Nearest(angle)) * Radius;

    /// <summary>
    /// The angle by which a way from a point of this face is not square to it; null when it is too large to count.
    /// </summary>
    public double? Misfit(Vec2 point, Vec2 way)
    {
        var angle = DirectionRange.AngleOf(way);
        if (Line is null && Radius != 0)
        {
            var normal = DirectionRange.AngleOf((point - Centre) * Radius);
            var off = Math.Abs(Math.IEEERemainder(angle - normal, 2 * Math.PI));
            return off <= AngleTolerances.Square ? off : null;
        }

        var outside = Normals.Outside(angle);
        if (outside > AngleTolerances.Square) return null;
        // Beside a bridged corner the two lines run into the circle, the more the farther the way is from square to them.
        return IsBridged ? Math.Abs(Normals.From(angle)) + Normals.Half : outside;
    }
}
