using System.Collections.Immutable;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading;

/// <summary>A run of entities, in ENTITIES or in a block.</summary>
internal static class EntitiesReading
{
    public static ImmutableArray<DxfEntity> Read(GroupCursor cursor, ReadContext context)
    {
        var entities = ImmutableArray.CreateBuilder<DxfEntity>();
        while (!SectionEnd.IsAt(cursor) && cursor.Current is { Type: not ("BLOCK" or "ENDBLK") })
        {
            var group = cursor.Take();
            // The end mark of the attributes that followed an INSERT.
            if (group.Type == "SEQEND")
                continue;
            if (cursor.Current is null)
                throw cursor.Truncated();
            try
            {
                entities.Add(EntityReading.Read(group, cursor, context));
            }
            catch (DxfException exception) when (!context.LimitReached && cursor.Current is not null)
            {
                context.Fault(exception);
            }
        }

        return entities.ToImmutable();
    }
}
