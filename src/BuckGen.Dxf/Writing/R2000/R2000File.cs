using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Writing.Planning;

namespace BuckGen.Dxf.Writing.R2000;

/// <summary>The whole AC1015 file: all sections, each object with its handle, owner and subclass marks.</summary>
internal static class R2000File
{
    public static void Write(WritePlan plan, IDxfTagSink sink)
    {
        sink.Section("HEADER", s => R2000Header.Write(plan, s));
        sink.Section("CLASSES", Classes);
        sink.Section("TABLES", s => R2000Tables.Write(plan, s));
        sink.Section("BLOCKS", R2000Blocks.Write);
        sink.Section("ENTITIES", s => Entities(plan, s));
        sink.Section("OBJECTS", R2000Objects.Write);
        sink.Write(0, "EOF");
    }

    private static void Entities(WritePlan plan, IDxfTagSink sink)
    {
        for (var i = 0; i < plan.Entities.Length; i++)
            R2000Entities.Write(plan.Entities[i], Handle.OfEntity(plan, i), sink);
    }

    // The object types that are not built into AC1015.
    private static void Classes(IDxfTagSink sink)
    {
        Class(sink, "ACDBDICTIONARYWDFLT", "AcDbDictionaryWithDefault");
        Class(sink, "ACDBPLACEHOLDER", "AcDbPlaceHolder");
        Class(sink, "LAYOUT", "AcDbLayout");
    }

    private static void Class(IDxfTagSink sink, string name, string subclass)
    {
        sink.Write(0, "CLASS");
        sink.Write(1, name);
        sink.Write(2, subclass);
        sink.Write(3, "ObjectDBX Classes");
        sink.Write(90, 0);
        sink.Write(280, 0);
        sink.Write(281, 0);
    }
}
