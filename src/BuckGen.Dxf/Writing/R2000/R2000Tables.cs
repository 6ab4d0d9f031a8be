using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Writing.Planning;

namespace BuckGen.Dxf.Writing.R2000;

/// <summary>TABLES of an AC1015 file. Readers want all nine, in this order, even where they are empty.</summary>
internal static class R2000Tables
{
    public static void Write(WritePlan plan, IDxfTagSink sink)
    {
        Table(sink, "VPORT", Handle.ViewportTable, 1, s => ViewportRow.Write(plan.Extents, s));
        Table(sink, "LTYPE", Handle.LineTypeTable, 3, LineTypes);
        Table(sink, "LAYER", Handle.LayerTable, plan.Layers.Length, s => Layers(plan, s));
        Table(sink, "STYLE", Handle.StyleTable, 1, Style);
        Table(sink, "VIEW", Handle.ViewTable, 0, _ => { });
        Table(sink, "UCS", Handle.CoordinateSystemTable, 0, _ => { });
        Table(sink, "APPID", Handle.ApplicationTable, 1, Application);
        Table(sink, "DIMSTYLE", Handle.DimensionStyleTable, 1, DimensionStyle);
        Table(sink, "BLOCK_RECORD", Handle.BlockRecordTable, 2, BlockRecords);
    }

    private static void Table(IDxfTagSink sink, string name, string handle, int rows, Action<IDxfTagSink> content)
    {
        sink.Write(0, "TABLE");
        sink.Write(2, name);
        sink.Write(5, handle);
        sink.Write(330, Handle.None);
        sink.Write(100, "AcDbSymbolTable");
        sink.Write(70, rows);
        if (name == "DIMSTYLE")
        {
            // This table alone has a subclass of its own, which counts the rows again.
            sink.Write(100, "AcDbDimStyleTable");
            sink.Write(71, rows);
        }

        content(sink);
        sink.Write(0, "ENDTAB");
    }

    private static void LineTypes(IDxfTagSink sink)
    {
        LineType(sink, Handle.ByBlock, "ByBlock", "");
        LineType(sink, Handle.ByLayer, "ByLayer", "");
        LineType(sink, Handle.Continuous, "Continuous", "Solid line");
    }

    private static void LineType(IDxfTagSink sink, string handle, string name, string description)
    {
        sink.Row("LTYPE", handle, Handle.LineTypeTable, "AcDbLinetypeTableRecord", name);
        sink.Write(3, description);
        sink.Write(72, 65);
        sink.Write(73, 0);
        sink.Write(40, 0.0);
    }

    private static void Layers(WritePlan plan, IDxfTagSink sink)
    {
        for (var i = 0; i < plan.Layers.Length; i++)
        {
            var layer = plan.Layers[i];
            sink.Row("LAYER", Handle.OfLayer(i), Handle.LayerTable, "AcDbLayerTableRecord", layer.Name, layer.Frozen ? 1 : 0);
            sink.Write(62, layer.ColourAndState());
            sink.Write(6, "Continuous");
            if (!layer.Plotted)
                sink.Write(290, 0);
            sink.Write(370, -3);
            sink.Write(390, Handle.NormalPlotStyle);
        }
    }

    private static void Style(IDxfTagSink sink)
    {
        sink.Row("STYLE", Handle.Style, Handle.StyleTable, "AcDbTextStyleTableRecord", "Standard");
        sink.Write(40, 0.0);
        sink.Write(41, 1.0);
        sink.Write(50, 0.0);
        sink.Write(71, 0);
        sink.Write(42, 2.5);
        sink.Write(3, "txt");
        sink.Write(4, "");
    }

    private static void Application(IDxfTagSink sink) =>
        sink.Row("APPID", Handle.Application, Handle.ApplicationTable, "AcDbRegAppTableRecord", "ACAD");

    private static void DimensionStyle(IDxfTagSink sink)
    {
        // The handle of a dimension style stands under 105, because 5 once meant something else there.
        sink.Write(0, "DIMSTYLE");
        sink.Write(105, Handle.DimensionStyle);
        sink.Write(330, Handle.DimensionStyleTable);
        sink.Write(100, "AcDbSymbolTableRecord");
        sink.Write(100, "AcDbDimStyleTableRecord");
        sink.Write(2, "Standard");
        sink.Write(70, 0);
        sink.Write(340, Handle.Style);
    }

    private static void BlockRecords(IDxfTagSink sink)
    {
        BlockRecord(sink, Handle.ModelRecord, "*Model_Space", Handle.ModelLayout);
        BlockRecord(sink, Handle.PaperRecord, "*Paper_Space", Handle.PaperLayout);
    }

    private static void BlockRecord(IDxfTagSink sink, string handle, string name, string layout)
    {
        sink.Write(0, "BLOCK_RECORD");
        sink.Write(5, handle);
        sink.Write(330, Handle.BlockRecordTable);
        sink.Write(100, "AcDbSymbolTableRecord");
        sink.Write(100, "AcDbBlockTableRecord");
        sink.Write(2, name);
        sink.Write(340, layout);
    }
}
