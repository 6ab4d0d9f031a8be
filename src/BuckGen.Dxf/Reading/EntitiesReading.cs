using System.Collections.Immutable;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading;

/// <summary>A run of entities, in ENTITIES or in a block.</summary>
internal static class EntitiesReading
{
    /// <summary>Reads the entities up to the end of the section, of the block or, where that is accepted, of the file.</summary>
    public static ImmutableArray<DxfEntity> Read(GroupCursor cursor, ReadContext context, bool mayEndFile = false)
    {
        var entities = ImmutableArray.CreateBuilder<DxfEntity>();
        while (!SectionEnd.IsAt(cursor) && cursor.Current is { Type: not ("BLOCK" or "ENDBLK") })
        {
            var group = cursor.Take();
            // The end mark of the attributes that followed an INSERT.
            if (group.Type == "SEQEND")
                continue;
            if (cursor.Current is null)
            {
                if (!mayEndFile)
                    throw cursor.Truncated();
                entities.Add(Last(group, cursor, context));
                break;
            }

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

    /// <summary>The entity that the file ends with. It is taken when nothing of it is missing as far as its data show.</summary>
    private static DxfEntity Last(TagGroup group, GroupCursor cursor, ReadContext context)
    {
        var before = context.CountOf(DxfNoteKind.CountMismatch);
        // Where the last line has no end, its number may have been cut as well.
        if (group.Type == "POLYLINE" || context.CountOf(DxfNoteKind.MissingLastLineEnd) > 0)
            throw cursor.Truncated();
        DxfEntity entity;
        try
        {
            entity = EntityReading.Read(group, cursor, context);
        }
        catch (DxfException) when (!context.LimitReached)
        {
            throw cursor.Truncated();
        }

        if (context.CountOf(DxfNoteKind.CountMismatch) > before)
            throw cursor.Truncated();
        context.Note(DxfNoteKind.MissingEndOfFile,
            $"the file ends after this {Excerpt.Shorten(group.Type)}, without ENDSEC and EOF; check that nothing is missing",
            group.Line);
        return entity;
    }
}
