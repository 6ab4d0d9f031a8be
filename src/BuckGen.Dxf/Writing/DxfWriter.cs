using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Writing.Planning;
using BuckGen.Dxf.Writing.R12;
using BuckGen.Dxf.Writing.R2000;

namespace BuckGen.Dxf.Writing;

/// <summary>
/// Writes flat drawings of lines, arcs, circles, points and polylines. The same drawing gives the same bytes on every machine and
/// at every time. Whatever cannot be written faithfully is refused, never left out.
/// </summary>
public static class DxfWriter
{
    /// <summary>Writes a drawing as tags.</summary>
    /// <param name="drawing"> What to write. Units are <see cref="DxfDrawing.InsertionUnits"/>, or millimetres where that is
    /// null. Layers that entities name but the table lacks are added in white. Bulges above 1 are split in two and vertices that
    /// repeat a place are dropped. Block definitions are not written: they show nothing without an INSERT, and that is refused.
    /// </param>
    /// <param name="version">The form to write.</param>
    /// <param name="sink">Where the tags go.</param>
    /// <exception cref="DxfException"> The drawing is empty, or holds something that the format has no place for. That is another
    /// type of entity, or a hidden, spatial or zero-size one. It may also be a number that is not finite or too large, or a layer
    /// name other than 1 to 31 of <c>A-Z 0-9 $ _ -</c>. </exception>
    public static void Write(DxfDrawing drawing, DxfVersion version, IDxfTagSink sink)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(sink);
        var plan = WritePlan.FromDrawing(drawing);
        switch (version)
        {
            case DxfVersion.R12:
                R12File.Write(plan, sink);
                break;
            case DxfVersion.R2000:
                R2000File.Write(plan, sink);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(version), version, "the version must be R12 or R2000");
        }
    }

    /// <summary>Writes a drawing as DXF text.</summary>
    /// <param name="drawing">What to write; see <see cref="Write(DxfDrawing, DxfVersion, IDxfTagSink)"/>.</param>
    /// <param name="version">The form to write.</param>
    /// <param name="stream">Where the text goes. It stays open. Nothing is written when the drawing is refused.</param>
    /// <exception cref="DxfException">The drawing cannot be written.</exception>
    public static void Write(DxfDrawing drawing, DxfVersion version, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        using var whole = new MemoryStream();
        Write(drawing, version, new DxfTextSink(whole));
        whole.WriteTo(stream);
    }
}
