using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>LINE: codes 10 and 11 are its ends.</summary>
internal static class LineReading
{
    public static DxfEntity Read(TagGroup group, ReadContext context) =>
        new DxfLine(group.Point(10, context), group.Point(11, context));
}
