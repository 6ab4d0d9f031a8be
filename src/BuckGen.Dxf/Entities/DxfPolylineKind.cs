namespace BuckGen.Dxf.Entities;

/// <summary>What a POLYLINE entity really is.</summary>
public enum DxfPolylineKind
{
    /// <summary>A flat polyline of lines and arcs.</summary>
    Flat,

    /// <summary>A three-dimensional polyline of straight pieces, in drawing coordinates.</summary>
    Spatial,

    /// <summary>A surface mesh, not an outline: its vertices are given in file order only.</summary>
    Mesh,
}
