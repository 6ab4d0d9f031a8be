namespace BuckGen.Dxf.Entities;

/// <summary>A full circle.</summary>
/// <param name="Centre">Centre, in drawing units.</param>
/// <param name="Radius">Radius, in drawing units; the reader keeps zero and negative values as they are.</param>
public sealed record DxfCircle(DxfPoint Centre, double Radius) : DxfEntity
{
    /// <inheritdoc/>
    public override string Type => "CIRCLE";
}
