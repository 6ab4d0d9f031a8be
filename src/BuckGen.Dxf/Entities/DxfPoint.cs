namespace BuckGen.Dxf.Entities;

/// <summary>A point or a direction. The default value is the origin. Equality is exact.</summary>
/// <param name="X">First coordinate, in drawing units.</param>
/// <param name="Y">Second coordinate, in drawing units.</param>
/// <param name="Z">Third coordinate, in drawing units.</param>
public readonly record struct DxfPoint(double X, double Y, double Z = 0)
{
    /// <summary>The direction (0, 0, 1): the extrusion of everything drawn in plan.</summary>
    public static DxfPoint UnitZ => new(0, 0, 1);
}
