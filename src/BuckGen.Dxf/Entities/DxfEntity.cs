namespace BuckGen.Dxf.Entities;

/// <summary>
/// What all entities share. Coordinates are those of the file. For ARC, CIRCLE, LWPOLYLINE, two-dimensional POLYLINE, INSERT and
/// text they lie in the plane that <see cref="Extrusion"/> turns (see <see cref="DxfPlane"/>). For LINE, POINT, ELLIPSE, SPLINE
/// and three-dimensional POLYLINE they are those of the drawing.
/// </summary>
public abstract record DxfEntity
{
    /// <summary>Type name as in the file, such as <c>LINE</c>.</summary>
    public abstract string Type { get; }

    /// <summary>Name of the layer; <c>0</c> where the file names none.</summary>
    public string Layer { get; init; } = "0";

    /// <summary>Line of the entity's <c>0</c> group in the file, from 1; 0 for an entity made in code.</summary>
    public int Line { get; init; }

    /// <summary>True when the entity itself is switched off (group 60 is 1).</summary>
    public bool Invisible { get; init; }

    /// <summary>True when the entity lies on a paper sheet and not in the model (group 67 is 1).</summary>
    public bool PaperSpace { get; init; }

    /// <summary>The direction that the entity's plane faces, of any length; (0, 0, 1) for plan drawings.</summary>
    public DxfPoint Extrusion { get; init; } = DxfPoint.UnitZ;

    /// <summary>Colour index 0 to 256; null when the entity takes its layer's colour.</summary>
    public int? Colour { get; init; }
}
