using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Writing.Planning;

namespace BuckGen.Dxf.Writing.R2000;

/// <summary>BLOCKS of an AC1015 file: the model and one paper sheet, both empty; entities stand in ENTITIES.</summary>
internal static class R2000Blocks
{
    public static void Write(IDxfTagSink sink)
    {
        Block(sink, "*Model_Space", Handle.ModelRecord, Handle.ModelBlock, Handle.ModelBlockEnd, paper: false);
        Block(sink, "*Paper_Space", Handle.PaperRecord, Handle.PaperBlock, Handle.PaperBlockEnd, paper: true);
    }

    private static void Block(IDxfTagSink sink, string name, string record, string begin, string end, bool paper)
    {
        Head(sink, "BLOCK", begin, record, paper);
        sink.Write(100, "AcDbBlockBegin");
        sink.Write(2, name);
        sink.Write(70, 0);
        sink.Place(10, 0, 0);
        sink.Write(3, name);
        sink.Write(1, "");
        Head(sink, "ENDBLK", end, record, paper);
        sink.Write(100, "AcDbBlockEnd");
    }

    private static void Head(IDxfTagSink sink, string type, string handle, string owner, bool paper)
    {
        sink.Write(0, type);
        sink.Write(5, handle);
        sink.Write(330, owner);
        sink.Write(100, "AcDbEntity");
        if (paper)
            sink.Write(67, 1);
        sink.Write(8, "0");
    }
}
