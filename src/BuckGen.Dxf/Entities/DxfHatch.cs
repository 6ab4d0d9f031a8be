using System.Collections.Immutable;

namespace BuckGen.Dxf.Entities;

/// <summary>A filled area, given by its boundaries.</summary>
/// <param name="Paths">The boundary loops.</param>
public sealed record DxfHatch(ImmutableArray<DxfHatchPath> Paths) : DxfEntity
{
    /// <inheritdoc/>
    public override string Type => "HATCH";
}

/// <summary>One boundary loop of a hatch.</summary>
/// <param name="Edges">
/// One closed <see cref="DxfPolyline"/>, or the pieces of the loop in order: lines, arcs, ellipses and splines, in the plane of
/// the hatch.
/// </param>
public sealed record DxfHatchPath(ImmutableArray<DxfEntity> Edges);
