using BuckGen.Dxf.Tags;

namespace BuckGen.Dxf.Writing.R2000;

/// <summary>The head that nearly all table rows share.</summary>
internal static class TableRow
{
    public static void Row(
        this IDxfTagSink sink, string type, string handle, string owner, string subclass, string name, int flags = 0)
    {
        sink.Write(0, type);
        sink.Write(5, handle);
        sink.Write(330, owner);
        sink.Write(100, "AcDbSymbolTableRecord");
        sink.Write(100, subclass);
        sink.Write(2, name);
        sink.Write(70, flags);
    }
}
