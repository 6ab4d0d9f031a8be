using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Writing.Planning;

namespace BuckGen.Dxf.Writing.R2000;

/// <summary>The entities as AC1015 has them.</summary>
internal static class R2000Entities
{
    public static void Write(DxfEntity entity, string handle, IDxfTagSink sink)
    {
        switch (entity)
        {
            case DxfLine line:
                Head("LINE", "AcDbLine", entity, handle, sink);
                sink.Place(10, line.Start.X, line.Start.Y);
                sink.Place(11, line.End.X, line.End.Y);
                break;
            case DxfCircle circle:
                Head("CIRCLE", "AcDbCircle", entity, handle, sink);
                sink.Place(10, circle.Centre.X, circle.Centre.Y);
                sink.Write(40, circle.Radius);
                break;
            case DxfArc arc:
                Head("ARC", "AcDbCircle", entity, handle, sink);
                sink.Place(10, arc.Centre.X, arc.Centre.Y);
                sink.Write(40, arc.Radius);
                sink.Write(100, "AcDbArc");
                sink.Write(50, Angle.Normalised(arc.StartAngle));
                sink.Write(51, Angle.Normalised(arc.EndAngle));
                break;
            case DxfPointEntity point:
                Head("POINT", "AcDbPoint", entity, handle, sink);
                sink.Place(10, point.Position.X, point.Position.Y);
                break;
            case DxfPolyline polyline:
                Polyline(polyline, handle, sink);
                break;
        }
    }

    private static void Polyline(DxfPolyline polyline, string handle, IDxfTagSink sink)
    {
        Head("LWPOLYLINE", "AcDbPolyline", polyline, handle, sink);
        sink.Write(90, polyline.Vertices.Length);
        sink.Write(70, polyline.Closed ? 1 : 0);
        foreach (var vertex in polyline.Vertices)
        {
            sink.Flat(10, vertex.X, vertex.Y);
            if (vertex.Bulge != 0)
                sink.Write(42, vertex.Bulge);
        }
    }

    private static void Head(string type, string subclass, DxfEntity entity, string handle, IDxfTagSink sink)
    {
        sink.Write(0, type);
        sink.Write(5, handle);
        sink.Write(330, Handle.ModelRecord);
        sink.Write(100, "AcDbEntity");
        sink.Write(8, entity.Layer);
        sink.Colour(entity);
        sink.Write(100, subclass);
    }
}
