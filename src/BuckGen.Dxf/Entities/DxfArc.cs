namespace BuckGen.Dxf.Entities;

/// <summary>A circular arc that runs counter-clockwise from the start angle to the end angle.</summary>
/// <param name="Centre">Centre, in drawing units.</param>
/// <param name="Radius">Radius, in drawing units; the reader keeps zero and negative values as they are.</param>
/// <param name="StartAngle">Degrees, counter-clockwise from the x axis, of any size.</param>
/// <param name="EndAngle">Degrees, counter-clockwise from the x axis, of any size; below the start means one turn
/// further.</param>
public sealed record DxfArc(DxfPoint Centre, double Radius, double StartAngle, double EndAngle) : DxfEntity
{
    /// <inheritdoc/>
    public override string Type => "ARC";
}
