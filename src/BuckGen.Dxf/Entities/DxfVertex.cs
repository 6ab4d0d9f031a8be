namespace BuckGen.Dxf.Entities;

/// <summary>A corner of a polyline and the piece that leaves it.</summary>
/// <param name="X">First coordinate, in drawing units.</param>
/// <param name="Y">Second coordinate, in drawing units.</param>
/// <param name="Bulge">
/// Tangent of a quarter of the angle that the arc to the next corner spans; positive turns left (counter-clockwise), 0 is
/// straight.
/// </param>
/// <param name="Z">Height, in drawing units; the elevation of the polyline unless it is three-dimensional.</param>
public readonly record struct DxfVertex(double X, double Y, double Bulge = 0, double Z = 0);
