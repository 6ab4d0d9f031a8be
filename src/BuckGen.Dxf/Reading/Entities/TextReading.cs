using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>TEXT, MTEXT, ATTRIB, ATTDEF: 1 the words (MTEXT puts earlier parts into 3), 10 the place.</summary>
internal static class TextReading
{
    public static DxfEntity Read(TagGroup group, ReadContext context)
    {
        var isLong = group.Type == "MTEXT";
        var parts = group.Tags.Where(tag => tag.Code == 1 || (isLong && tag.Code == 3)).Select(tag => tag.Value);
        return new DxfText(group.Type, UnicodeEscapes.Resolve(string.Concat(parts)), group.OptionalPoint(10, context));
    }
}
