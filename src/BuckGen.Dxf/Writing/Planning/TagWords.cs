using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tags;

namespace BuckGen.Dxf.Writing.Planning;

/// <summary>Groups of tags that occur again and again.</summary>
internal static class TagWords
{
    public static void Section(this IDxfTagSink sink, string name, Action<IDxfTagSink> content)
    {
        sink.Write(0, "SECTION");
        sink.Write(2, name);
        content(sink);
        sink.Write(0, "ENDSEC");
    }

    /// <summary>A point in the drawing plane, with its zero height.</summary>
    public static void Place(this IDxfTagSink sink, int code, double x, double y)
    {
        sink.Flat(code, x, y);
        sink.Write(code + 20, 0.0);
    }

    /// <summary>A point of two coordinates only.</summary>
    public static void Flat(this IDxfTagSink sink, int code, double x, double y)
    {
        sink.Write(code, x);
        sink.Write(code + 10, y);
    }

    public static void Variable(this IDxfTagSink sink, string name, int code, string value)
    {
        sink.Write(9, name);
        sink.Write(code, value);
    }

    public static void Variable(this IDxfTagSink sink, string name, int code, int value)
    {
        sink.Write(9, name);
        sink.Write(code, value);
    }

    public static void Variable(this IDxfTagSink sink, string name, double value)
    {
        sink.Write(9, name);
        sink.Write(40, value);
    }

    /// <summary>Where the drawing is, in the header of every form.</summary>
    public static void PlacingVariables(this IDxfTagSink sink, Extents extents)
    {
        sink.Write(9, "$INSBASE");
        sink.Place(10, 0, 0);
        sink.Write(9, "$EXTMIN");
        sink.Place(10, extents.MinX, extents.MinY);
        sink.Write(9, "$EXTMAX");
        sink.Place(10, extents.MaxX, extents.MaxY);
    }

    public static void Colour(this IDxfTagSink sink, DxfEntity entity)
    {
        if (entity.Colour is { } colour)
            sink.Write(62, colour);
    }

    /// <summary>A layer's colour: negative says off.</summary>
    public static int ColourAndState(this DxfLayer layer) => layer.Off ? -layer.Colour : layer.Colour;
}
