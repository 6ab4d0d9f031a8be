using System.Collections.Immutable;

namespace BuckGen.Dxf.Entities;

/// <summary>
/// A B-spline curve in drawing coordinates, to be evaluated from <c>Knots[Degree]</c> to <c>Knots[ControlPoints.Length]</c>.
/// The reader has checked that the knots never fall, that their number matches the degree and the control points, and that
/// weights are positive. With no control points the curve is given by <see cref="FitPoints"/> only.
/// </summary>
/// <param name="Degree">Degree, 1 or more.</param>
/// <param name="Knots">Knot values; empty for a curve given by fit points.</param>
/// <param name="ControlPoints">Control points, in drawing units.</param>
public sealed record DxfSpline(int Degree, ImmutableArray<double> Knots, ImmutableArray<DxfPoint> ControlPoints) : DxfEntity
{
    /// <inheritdoc/>
    public override string Type => "SPLINE";

    /// <summary>One weight for each control point; empty when all are 1.</summary>
    public ImmutableArray<double> Weights { get; init; } = [];

    /// <summary>Points that the drawer asked the curve to pass through, in drawing units.</summary>
    public ImmutableArray<DxfPoint> FitPoints { get; init; } = [];

    /// <summary>The file's closed flag. It does not change the curve that control points and knots give.</summary>
    public bool Closed { get; init; }

    /// <summary>The file's periodic flag. It does not change the curve that control points and knots give.</summary>
    public bool Periodic { get; init; }
}
