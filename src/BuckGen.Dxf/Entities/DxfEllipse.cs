namespace BuckGen.Dxf.Entities;

/// <summary>An ellipse or a part of one, in drawing coordinates; the extrusion only says where its minor axis lies.</summary>
/// <param name="Centre">Centre, in drawing units.</param>
/// <param name="MajorAxis">From the centre to the end of the major axis, in drawing units.</param>
/// <param name="Ratio">Minor axis by major axis; above 1 in some files.</param>
/// <param name="StartParameter">Radians, counted from the major axis about the extrusion.</param>
/// <param name="EndParameter">Radians; smaller than the start means one turn further.</param>
public sealed record DxfEllipse(
    DxfPoint Centre, DxfPoint MajorAxis, double Ratio, double StartParameter, double EndParameter) : DxfEntity
{
    /// <inheritdoc/>
    public override string Type => "ELLIPSE";
}
