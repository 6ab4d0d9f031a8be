using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Writing.Planning;

namespace BuckGen.Dxf.Writing.R12;

/// <summary>The entities as AC1009 has them.</summary>
internal static class R12Entities
{
    public static void Write(DxfEntity entity, IDxfTagSink sink)
    {
        switch (entity)
        {
            case DxfLine line:
                Head("LINE", entity, sink);
                sink.Place(10, line.Start.X, line.Start.Y);
                sink.Place(11, line.End.X, line.End.Y);
                break;
            case DxfCircle circle:
                Head("CIRCLE", entity, sink);
                sink.Place(10, circle.Centre.X, circle.Centre.Y);
                sink.Write(40, circle.Radius);
                break;
            case DxfArc arc:
                Head("ARC", entity, sink);
                sink.Place(10, arc.Centre.X, arc.Centre.Y);
                sink.Write(40, arc.Radius);
                sink.Write(50, Angle.Normalised(arc.StartAngle));
                sink.Write(51, Angle.Normalised(arc.EndAngle));
                break;
            case DxfPointEntity point:
                Head("POINT", entity, sink);
                sink.Place(10, point.Position.X, point.Position.Y);
                break;
            case DxfPolyline polyline:
                Polyline(polyline, sink);
                break;
        }
    }

    private static void Polyline(DxfPolyline polyline, IDxfTagSink sink)
    {
        Head("POLYLINE", polyline, sink);
        sink.Write(66, 1);
        sink.Place(10, 0, 0);
        sink.Write(70, polyline.Closed ? 1 : 0);
        foreach (var vertex in polyline.Vertices)
        {
            Head("VERTEX", polyline, sink);
            sink.Place(10, vertex.X, vertex.Y);
            if (vertex.Bulge != 0)
                sink.Write(42, vertex.Bulge);
        }

        Head("SEQEND", polyline, sink);
    }

    private static void Head(string type, DxfEntity entity, IDxfTagSink sink)
    {
        sink.Write(0, type);
        sink.Write(8, entity.Layer);
        sink.Colour(entity);
    }
}
