using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>POLYLINE: a head, a VERTEX group for each corner, and SEQEND.</summary>
internal static class PolylineReading
{
    private const int Closed = 1;
    private const int CurveFit = 2;
    private const int SplineFit = 4;
    private const int Spatial = 8;
    private const int MeshOrPolyface = 16 | 64;
    private const int FrameVertex = 16;

    /// <summary>Takes the vertices that follow a head which is already taken.</summary>
    public static DxfEntity Read(TagGroup head, GroupCursor cursor, ReadContext context)
    {
        var groups = Members(head, cursor, context);
        var flags = head.Integer(70, 0);
        var kind = (flags & MeshOrPolyface) != 0 ? DxfPolylineKind.Mesh
            : (flags & Spatial) != 0 ? DxfPolylineKind.Spatial
            : DxfPolylineKind.Flat;
        var shown = groups.Where(vertex => kind == DxfPolylineKind.Mesh || !vertex.Flag(70, FrameVertex));
        var elevation = head.Length(30, 0, context);
        return new DxfPolyline([.. shown.Select(vertex => Vertex(vertex, kind, elevation, context))], (flags & Closed) != 0)
        {
            Lightweight = false,
            Kind = kind,
            CurveFit = (flags & (CurveFit | SplineFit)) != 0,
            HasWidth = HasWidth(head) || groups.Any(HasWidth),
        };
    }

    private static List<TagGroup> Members(TagGroup head, GroupCursor cursor, ReadContext context)
    {
        var vertices = new List<TagGroup>();
        while (cursor.Current?.Type == "VERTEX")
        {
            vertices.Add(cursor.Take());
            context.CountVertices(1, head);
        }

        var end = cursor.Current ?? throw cursor.Truncated();
        if (end.Type == "SEQEND")
            cursor.Take();
        else
            context.Note(DxfNoteKind.MissingSequenceEnd,
                $"the POLYLINE has no SEQEND; it ends before {Excerpt.Shorten(end.Type)}", head.Line);
        return vertices;
    }

    private static DxfVertex Vertex(TagGroup group, DxfPolylineKind kind, double elevation, ReadContext context)
    {
        // Faces of a polyface mesh are vertices without a place.
        var point = kind == DxfPolylineKind.Mesh ? group.OptionalPoint(10, context) : group.Point(10, context);
        return kind == DxfPolylineKind.Flat
            ? new(point.X, point.Y, group.Length(42, 0, context), elevation)
            : new(point.X, point.Y, 0, point.Z);
    }

    private static bool HasWidth(TagGroup group) => group.Number(40, 0) != 0 || group.Number(41, 0) != 0;
}
