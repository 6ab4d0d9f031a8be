using System.Collections.Immutable;
using BuckGen.Cutting.CutPaths;
using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Writing;

namespace BuckGen.Cutting.CutFiles;

/// <summary>
/// Writes a cut drawing as DXF: one closed polyline or circle a contour, arcs as arcs, one layer a kind of work.
/// </summary>
public static class DxfCutFile
{
    /// <summary>The bytes of the file, checked by reading them back.</summary>
    /// <param name="drawing">The drawing, with at least one path.</param>
    /// <param name="version">R12 or R2000.</param>
    /// <exception cref="CutFileException">What was read back is not what was drawn.</exception>
    public static ImmutableArray<byte> Write(CutDrawing drawing, DxfVersion version)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        var layers = drawing.Paths.Select(p => p.Layer).Distinct().Order().Select(l => new DxfLayer(l.Name(), l.ColourNumber()));
        var document = new DxfDrawing { Layers = [.. layers], Entities = [.. drawing.Paths.Select(ToEntity)] };
        using var stream = new MemoryStream();
        DxfWriter.Write(document, version, stream);
        var bytes = stream.ToArray();
        CutFileCheck.Verify(bytes, drawing);
        return [.. bytes];
    }

    private static DxfEntity ToEntity(CutPath path)
    {
        var layer = path.Layer.Name();
        if (path.AsCircle() is { } circle)
            return new DxfCircle(new(circle.Centre.X, circle.Centre.Y), circle.Radius) { Layer = layer };
        var vertices = path.Segments.Select(s => new DxfVertex(s.Start.X, s.Start.Y, s.Bulge));
        if (!path.Closed) vertices = vertices.Append(new(path.Segments[^1].End.X, path.Segments[^1].End.Y));
        return new DxfPolyline([.. vertices], path.Closed) { Layer = layer };
    }
}
