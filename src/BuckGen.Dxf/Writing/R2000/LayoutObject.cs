using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Writing.Planning;

namespace BuckGen.Dxf.Writing.R2000;

/// <summary>A LAYOUT: the model's tab, or a paper sheet. Its page set-up is that of an A4 sheet without a printer.</summary>
internal static class LayoutObject
{
    private const double PaperWidth = 210;
    private const double PaperHeight = 297;
    private const int ModelPlot = 1024;

    public static void Write(IDxfTagSink sink, string handle, string name, int tab, string blockRecord)
    {
        R2000Objects.Head(sink, "LAYOUT", handle, Handle.Layouts);
        PageSetup(sink, isModel: tab == 0);
        sink.Write(100, "AcDbLayout");
        sink.Write(1, name);
        sink.Write(70, 1);
        sink.Write(71, tab);
        sink.Flat(10, 0, 0);
        sink.Flat(11, PaperWidth, PaperHeight);
        sink.Place(12, 0, 0);
        sink.Place(14, 0, 0);
        sink.Place(15, PaperWidth, PaperHeight);
        sink.Write(146, 0.0);
        sink.Place(13, 0, 0);
        sink.Place(16, 1, 0);
        sink.Place(17, 0, 1);
        sink.Write(76, 0);
        sink.Write(330, blockRecord);
    }

    private static void PageSetup(IDxfTagSink sink, bool isModel)
    {
        sink.Write(100, "AcDbPlotSettings");
        sink.Write(1, "");
        sink.Write(2, "");
        sink.Write(4, "");
        sink.Write(6, "");
        foreach (var margin in (ReadOnlySpan<int>)[40, 41, 42, 43])
            sink.Write(margin, 0.0);
        sink.Write(44, PaperWidth);
        sink.Write(45, PaperHeight);
        foreach (var origin in (ReadOnlySpan<int>)[46, 47, 48, 49, 140, 141])
            sink.Write(origin, 0.0);
        sink.Write(142, 1.0);
        sink.Write(143, 1.0);
        sink.Write(70, isModel ? ModelPlot : 0);
        sink.Write(72, 1);
        sink.Write(73, 0);
        sink.Write(74, 1);
        sink.Write(7, "");
        sink.Write(75, 16);
        sink.Write(147, 1.0);
        sink.Write(148, 0.0);
        sink.Write(149, 0.0);
    }
}
