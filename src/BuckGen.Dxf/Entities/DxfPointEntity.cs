namespace BuckGen.Dxf.Entities;

/// <summary>A single point, as in a drill map.</summary>
/// <param name="Position">Where it is, in drawing units.</param>
public sealed record DxfPointEntity(DxfPoint Position) : DxfEntity
{
    /// <inheritdoc/>
    public override string Type => "POINT";
}
