namespace BuckGen.Dxf.Entities;

/// <summary>
/// The plane an entity was drawn in. Flat entities give their points in a plane of their own whose axes follow from the
/// extrusion by a fixed rule, so that the extrusion alone is stored.
/// </summary>
/// <param name="XAxis">Unit vector of the plane's x axis in drawing coordinates.</param>
/// <param name="YAxis">Unit vector of the plane's y axis in drawing coordinates.</param>
/// <param name="ZAxis">Unit vector the plane faces.</param>
public readonly record struct DxfPlane(DxfPoint XAxis, DxfPoint YAxis, DxfPoint ZAxis)
{
    // Below this the extrusion counts as near the vertical, and the x axis is taken from the y axis instead. Set by the format.
    private const double NearVertical = 1.0 / 64.0;

    /// <summary>The plan view: plane coordinates are drawing coordinates.</summary>
    public static DxfPlane Plan => new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    /// <summary>True when the plane is seen from behind, so that left and right change places.</summary>
    public bool FacesAway => ZAxis.Z < 0;

    /// <summary>Finds the plane of an extrusion.</summary>
    /// <param name="extrusion">Direction of any length; (0, 0, 0) is taken as (0, 0, 1).</param>
    /// <returns>The plane. For (0, 0, -1) its x axis is (-1, 0, 0): a mirror image.</returns>
    public static DxfPlane FromExtrusion(DxfPoint extrusion)
    {
        if (extrusion is { X: 0, Y: 0, Z: >= 0 })
            return Plan;
        var z = Normalised(extrusion);
        var reference = Math.Abs(z.X) < NearVertical && Math.Abs(z.Y) < NearVertical ? Plan.YAxis : Plan.ZAxis;
        var x = Normalised(Cross(reference, z));
        return new DxfPlane(x, Normalised(Cross(z, x)), z);
    }

    /// <summary>Carries a point of the plane into drawing coordinates.</summary>
    /// <param name="point">Point in the plane, its Z the height above it, in drawing units.</param>
    /// <returns>The same point in drawing coordinates.</returns>
    public DxfPoint ToDrawing(DxfPoint point) => new(
        (point.X * XAxis.X) + (point.Y * YAxis.X) + (point.Z * ZAxis.X),
        (point.X * XAxis.Y) + (point.Y * YAxis.Y) + (point.Z * ZAxis.Y),
        (point.X * XAxis.Z) + (point.Y * YAxis.Z) + (point.Z * ZAxis.Z));

    private static DxfPoint Cross(DxfPoint a, DxfPoint b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    private static DxfPoint Normalised(DxfPoint v)
    {
        // Scaled first, so that neither tiny nor huge vectors are lost in the squares.
        var largest = Math.Max(Math.Abs(v.X), Math.Max(Math.Abs(v.Y), Math.Abs(v.Z)));
        var (x, y, z) = (v.X / largest, v.Y / largest, v.Z / largest);
        var length = Math.Sqrt((x * x) + (y * y) + (z * z));
        return new(x / length, y / length, z / length);
    }
}
