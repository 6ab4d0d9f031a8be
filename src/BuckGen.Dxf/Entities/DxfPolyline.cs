using System.Collections.Immutable;

namespace BuckGen.Dxf.Entities;

/// <summary>A chain of lines and arcs: LWPOLYLINE, or POLYLINE with its vertices.</summary>
/// <param name="Vertices">Corners in order. May be empty or a single one, as in the file.</param>
/// <param name="Closed">True when a piece leads from the last corner back to the first.</param>
public sealed record DxfPolyline(ImmutableArray<DxfVertex> Vertices, bool Closed) : DxfEntity
{
    /// <inheritdoc/>
    public override string Type => Lightweight ? "LWPOLYLINE" : "POLYLINE";

    /// <summary>True for LWPOLYLINE, false for POLYLINE. The writer takes the form its version knows.</summary>
    public bool Lightweight { get; init; } = true;

    /// <summary>Whether this is a flat outline, a spatial one or a mesh.</summary>
    public DxfPolylineKind Kind { get; init; }

    /// <summary>
    /// True when a curve was fitted through the polyline. The vertices are those of the fitted curve; its control frame is left
    /// out.
    /// </summary>
    public bool CurveFit { get; init; }

    /// <summary>True when the file gives the line a width. The vertices are its centre line.</summary>
    public bool HasWidth { get; init; }
}
