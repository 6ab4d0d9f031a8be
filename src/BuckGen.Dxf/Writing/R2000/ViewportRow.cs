using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Writing.Planning;

namespace BuckGen.Dxf.Writing.R2000;

/// <summary>The viewport: what is on the screen when the file is opened, namely the whole drawing.</summary>
internal static class ViewportRow
{
    private const double WindowWidthByHeight = 1.5;
    private const double Margin = 1.1;

    public static void Write(Extents extents, IDxfTagSink sink)
    {
        sink.Row("VPORT", Handle.Viewport, Handle.ViewportTable, "AcDbViewportTableRecord", "*Active");
        sink.Flat(10, 0, 0);
        sink.Flat(11, 1, 1);
        sink.Flat(12, (extents.MinX + extents.MaxX) / 2, (extents.MinY + extents.MaxY) / 2);
        sink.Flat(13, 0, 0);
        sink.Flat(14, 10, 10);
        sink.Flat(15, 10, 10);
        sink.Write(16, 0.0);
        sink.Write(26, 0.0);
        sink.Write(36, 1.0);
        sink.Place(17, 0, 0);
        sink.Write(40, ViewHeight(extents));
        sink.Write(41, WindowWidthByHeight);
        sink.Write(42, 50.0);
        sink.Write(43, 0.0);
        sink.Write(44, 0.0);
        sink.Write(50, 0.0);
        sink.Write(51, 0.0);
        sink.Write(71, 0);
        sink.Write(72, 1000);
        sink.Write(73, 1);
        sink.Write(74, 3);
        sink.Write(75, 0);
        sink.Write(76, 0);
        sink.Write(77, 0);
        sink.Write(78, 0);
    }

    // A single point has no size, but the view must.
    private static double ViewHeight(Extents extents)
    {
        var height = Math.Max(extents.Height, extents.Width / WindowWidthByHeight) * Margin;
        return height > 0 ? height : 1;
    }
}
