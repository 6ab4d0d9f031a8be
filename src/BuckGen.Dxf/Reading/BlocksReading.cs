using System.Collections.Immutable;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading;

/// <summary>BLOCKS: each a BLOCK group, entities, and ENDBLK.</summary>
internal static class BlocksReading
{
    public static ImmutableArray<DxfBlock> Read(GroupCursor cursor, ReadContext context)
    {
        var blocks = ImmutableArray.CreateBuilder<DxfBlock>();
        while (!SectionEnd.IsAt(cursor))
        {
            var group = cursor.Take();
            if (group.Type == "BLOCK")
                blocks.Add(Block(group, cursor, context));
        }

        return blocks.ToImmutable();
    }

    private static DxfBlock Block(TagGroup head, GroupCursor cursor, ReadContext context)
    {
        var name = head.Text(2) ?? throw head.Fault("group code 2 (name of the block) is missing");
        return new(UnicodeEscapes.Resolve(name), head.OptionalPoint(10, context), EntitiesReading.Read(cursor, context));
    }
}
