namespace BuckGen.Dxf.Entities;

/// <summary>A straight line.</summary>
/// <param name="Start">First end, in drawing units.</param>
/// <param name="End">Second end, in drawing units.</param>
public sealed record DxfLine(DxfPoint Start, DxfPoint End) : DxfEntity
{
    /// <inheritdoc/>
    public override string Type => "LINE";
}
