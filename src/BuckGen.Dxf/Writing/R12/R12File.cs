using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Writing.Planning;

namespace BuckGen.Dxf.Writing.R12;

/// <summary>The whole AC1009 file: no handles, no subclasses, and only the tables that readers ask for.</summary>
internal static class R12File
{
    private const string Continuous = "CONTINUOUS";

    public static void Write(WritePlan plan, IDxfTagSink sink)
    {
        // R12 has no variable for units, so a comment says them for whoever looks.
        sink.Write(999, $"UNITS: {DxfUnits.Name(plan.Units)}");
        sink.Section("HEADER", s => Header(plan, s));
        sink.Section("TABLES", s => Tables(plan, s));
        sink.Section("BLOCKS", _ => { });
        sink.Section("ENTITIES", s =>
        {
            foreach (var entity in plan.Entities)
                R12Entities.Write(entity, s);
        });
        sink.Write(0, "EOF");
    }

    private static void Header(WritePlan plan, IDxfTagSink sink)
    {
        sink.Variable("$ACADVER", 1, "AC1009");
        sink.PlacingVariables(plan.Extents);
        sink.Variable("$INSUNITS", 70, plan.Units);
        sink.Variable("$MEASUREMENT", 70, plan.Measurement);
    }

    private static void Tables(WritePlan plan, IDxfTagSink sink)
    {
        Table(sink, "LTYPE", 1);
        LineType(sink);
        sink.Write(0, "ENDTAB");
        Table(sink, "LAYER", plan.Layers.Length);
        foreach (var layer in plan.Layers)
            Layer(layer, sink);
        sink.Write(0, "ENDTAB");
        Table(sink, "STYLE", 1);
        Style(sink);
        sink.Write(0, "ENDTAB");
    }

    private static void Table(IDxfTagSink sink, string name, int rows)
    {
        sink.Write(0, "TABLE");
        sink.Write(2, name);
        sink.Write(70, rows);
    }

    private static void LineType(IDxfTagSink sink)
    {
        sink.Write(0, "LTYPE");
        sink.Write(2, Continuous);
        sink.Write(70, 0);
        sink.Write(3, "Solid line");
        sink.Write(72, 65);
        sink.Write(73, 0);
        sink.Write(40, 0.0);
    }

    private static void Layer(DxfLayer layer, IDxfTagSink sink)
    {
        sink.Write(0, "LAYER");
        sink.Write(2, layer.Name);
        sink.Write(70, layer.Frozen ? 1 : 0);
        sink.Write(62, layer.ColourAndState());
        sink.Write(6, Continuous);
    }

    private static void Style(IDxfTagSink sink)
    {
        sink.Write(0, "STYLE");
        sink.Write(2, "STANDARD");
        sink.Write(70, 0);
        sink.Write(40, 0.0);
        sink.Write(41, 1.0);
        sink.Write(50, 0.0);
        sink.Write(71, 0);
        sink.Write(42, 2.5);
        sink.Write(3, "txt");
        sink.Write(4, "");
    }
}
