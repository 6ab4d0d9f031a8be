namespace BuckGen.Dxf;

/// <summary>The forms in which a drawing can be written. They are never mixed.</summary>
public enum DxfVersion
{
    /// <summary>AC1009 with POLYLINE: the oldest form in use, which nearly every program reads.</summary>
    R12,

    /// <summary>AC1015 with LWPOLYLINE, handles and all sections.</summary>
    R2000,
}
