using System.Globalization;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Writing;

namespace BuckGen.Dxf.Tests.Support;

/// <summary>Drawings to write, and what came of writing them.</summary>
internal static class Drawings
{
    /// <summary>A panel with one of everything that can be written.</summary>
    public static DxfDrawing Panel { get; } = new()
    {
        Layers = [new("CUT_OUTER", 1), new("CUT_INNER", 5)],
        Entities =
        [
            new DxfCircle(new(30, 30), 10) { Layer = "CUT_INNER" },
            new DxfArc(new(50, 50), 5, 350, 80) { Layer = "CUT_INNER" },
            new DxfLine(new(10, 60), new(40, 60.5)) { Layer = "CUT_INNER", Colour = 3 },
            new DxfPointEntity(new(20, 20)) { Layer = "VENT" },
            new DxfPolyline([new(0, 0), new(100, 0, 0.414214), new(120, 20), new(120, 80), new(0, 80)],
                true) { Layer = "CUT_OUTER" },
        ],
    };

    public static DxfDrawing Create(params DxfEntity[] entities) => new() { Entities = [.. entities] };

    public static IReadOnlyList<DxfTag> Tags(DxfDrawing drawing, DxfVersion version)
    {
        var list = new DxfTagList();
        DxfWriter.Write(drawing, version, list);
        return list.Tags;
    }

    public static byte[] Bytes(DxfDrawing drawing, DxfVersion version)
    {
        using var stream = new MemoryStream();
        DxfWriter.Write(drawing, version, stream);
        return stream.ToArray();
    }

    /// <summary>The tags of the ENTITIES section as one line, such as <c>0=LINE 8=0 10=1.0</c>.</summary>
    public static string EntityTags(DxfDrawing drawing, DxfVersion version)
    {
        var tags = Tags(drawing, version).ToList();
        var start = tags.FindIndex(tag => tag is { Code: 2, Value: "ENTITIES" }) + 1;
        var end = tags.FindIndex(start, tag => tag is { Code: 0, Value: "ENDSEC" });
        return string.Join(' ', tags.GetRange(start, end - start));
    }

    public static DxfException Refused(DxfEntity entity) =>
        Assert.Throws<DxfException>(() => Tags(Create(entity), DxfVersion.R12));

    public static T Under<T>(string culture, Func<T> work)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            return work();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
