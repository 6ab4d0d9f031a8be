using BuckGen.Dxf.Tags;

namespace BuckGen.Dxf.Writing.R2000;

/// <summary>OBJECTS of an AC1015 file: the tree of dictionaries that holds layouts and styles together.</summary>
internal static class R2000Objects
{
    public static void Write(IDxfTagSink sink)
    {
        Dictionary(
            sink,
            Handle.RootDictionary,
            Handle.None,
            ("ACAD_GROUP", Handle.Groups),
            ("ACAD_LAYOUT", Handle.Layouts),
            ("ACAD_MLINESTYLE", Handle.MultilineStyles),
            ("ACAD_PLOTSETTINGS", Handle.PlotSettings),
            ("ACAD_PLOTSTYLENAME", Handle.PlotStyles));
        Dictionary(sink, Handle.Groups, Handle.RootDictionary);
        Dictionary(
            sink, Handle.Layouts, Handle.RootDictionary, ("Layout1", Handle.PaperLayout), ("Model", Handle.ModelLayout));
        Dictionary(sink, Handle.MultilineStyles, Handle.RootDictionary, ("STANDARD", Handle.MultilineStyle));
        Dictionary(sink, Handle.PlotSettings, Handle.RootDictionary);
        PlotStyles(sink);
        LayoutObject.Write(sink, Handle.ModelLayout, "Model", tab: 0, Handle.ModelRecord);
        LayoutObject.Write(sink, Handle.PaperLayout, "Layout1", tab: 1, Handle.PaperRecord);
        MultilineStyle(sink);
    }

    private static void Dictionary(
        IDxfTagSink sink, string handle, string owner, params ReadOnlySpan<(string Name, string Handle)> entries)
    {
        Head(sink, "DICTIONARY", handle, owner);
        sink.Write(100, "AcDbDictionary");
        sink.Write(281, 1);
        foreach (var (name, entry) in entries)
        {
            sink.Write(3, name);
            sink.Write(350, entry);
        }
    }

    private static void PlotStyles(IDxfTagSink sink)
    {
        Head(sink, "ACDBDICTIONARYWDFLT", Handle.PlotStyles, Handle.RootDictionary);
        sink.Write(100, "AcDbDictionary");
        sink.Write(281, 1);
        sink.Write(3, "Normal");
        sink.Write(350, Handle.NormalPlotStyle);
        sink.Write(100, "AcDbDictionaryWithDefault");
        sink.Write(340, Handle.NormalPlotStyle);
        Head(sink, "ACDBPLACEHOLDER", Handle.NormalPlotStyle, Handle.PlotStyles);
    }

    private static void MultilineStyle(IDxfTagSink sink)
    {
        Head(sink, "MLINESTYLE", Handle.MultilineStyle, Handle.MultilineStyles);
        sink.Write(100, "AcDbMlineStyle");
        sink.Write(2, "STANDARD");
        sink.Write(70, 0);
        sink.Write(3, "");
        sink.Write(62, 256);
        sink.Write(51, 90.0);
        sink.Write(52, 90.0);
        sink.Write(71, 2);
        MultilineElement(sink, 0.5);
        MultilineElement(sink, -0.5);
    }

    private static void MultilineElement(IDxfTagSink sink, double offset)
    {
        sink.Write(49, offset);
        sink.Write(62, 256);
        sink.Write(6, "ByLayer");
    }

    internal static void Head(IDxfTagSink sink, string type, string handle, string owner)
    {
        sink.Write(0, type);
        sink.Write(5, handle);
        sink.Write(330, owner);
    }
}
