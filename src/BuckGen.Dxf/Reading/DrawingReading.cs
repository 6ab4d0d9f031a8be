using System.Collections.Immutable;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;
using BuckGen.Dxf.Tags;

namespace BuckGen.Dxf.Reading;

/// <summary>The whole file: sections in any order, then EOF.</summary>
internal static class DrawingReading
{
    private static readonly string[] NewInR13 = ["LWPOLYLINE", "SPLINE", "ELLIPSE", "HATCH", "MTEXT"];

    public static DxfDrawing Read(IEnumerable<DxfTag> tags, ReadContext context)
    {
        using var cursor = new GroupCursor(tags);
        var (drawing, content, hasEntities) = (new DxfDrawing(), new Content(), false);
        while (cursor.Current is { Type: not "EOF" })
        {
            var head = cursor.Take();
            if (head.Type != "SECTION")
                throw head.Fault("a SECTION should begin here; a line is missing or damaged above, export the file again");
            // The first one: header variables that follow in the same group use code 2 as well.
            var name = head.Tags.FirstOrDefault(tag => tag.Code == 2).Value?.ToUpperInvariant();
            hasEntities |= name == "ENTITIES";
            context.ThrowIfCancelled();
            drawing = Section(name, head, cursor, drawing, content, context);
            Finish(name, head, cursor, context);
        }

        context.ThrowIfFaulty();
        if (!hasEntities)
            throw new DxfException("the file has no ENTITIES section, so there is no drawing in it; export it again");
        if (cursor.Current is null && context.CountOf(DxfNoteKind.MissingEndOfFile) == 0)
            context.Note(DxfNoteKind.MissingEndOfFile, "the file ends without the EOF marker, after a complete section", 0);
        drawing = drawing with
        {
            Layers = content.Layers.ToImmutable(),
            Blocks = content.Blocks.ToImmutable(),
            Entities = content.Entities.ToImmutable()
        };
        NoteNewerEntities(drawing, context);
        return drawing with { Notes = context.Notes };
    }

    private static DxfDrawing Section(string? name, TagGroup head, GroupCursor cursor, DxfDrawing drawing, Content content,
        ReadContext context)
    {
        switch (name)
        {
            case "HEADER":
                return HeaderReading.Read(head, drawing);
            case "TABLES":
                content.Layers.AddRange(TablesReading.Read(cursor));
                break;
            case "BLOCKS":
                content.Blocks.AddRange(BlocksReading.Read(cursor, context));
                break;
            case "ENTITIES":
                content.Entities.AddRange(EntitiesReading.Read(cursor, context, mayEndFile: true));
                break;
        }

        return drawing;
    }

    private static void Finish(string? name, TagGroup head, GroupCursor cursor, ReadContext context)
    {
        // Its last entity was whole, and that the file ends there was noted with it.
        if (name == "ENTITIES" && cursor.Current is null)
            return;
        // Also skips the sections that are not read.
        while (!SectionEnd.IsAt(cursor))
            cursor.Take();
        if (cursor.Current!.Type == "ENDSEC")
            cursor.Take();
        else
            context.Note(DxfNoteKind.MissingSectionEnd, $"the section {name} is not closed by ENDSEC", head.Line);
    }

    private static void NoteNewerEntities(DxfDrawing drawing, ReadContext context)
    {
        if (drawing.Version is not { } version || string.CompareOrdinal(version, "AC1012") >= 0)
            return;
        var newer = drawing.Entities.FirstOrDefault(entity => NewInR13.Contains(entity.Type));
        if (newer is not null)
        {
            context.Note(
                DxfNoteKind.NewerThanVersion,
                $"{newer.Type} does not exist in {version}, the version that the file names; it was read all the same",
                newer.Line);
        }
    }

    /// <summary>What the sections hold; a kind of section may occur several times.</summary>
    private sealed class Content
    {
        public ImmutableArray<DxfLayer>.Builder Layers { get; } = ImmutableArray.CreateBuilder<DxfLayer>();

        public ImmutableArray<DxfBlock>.Builder Blocks { get; } = ImmutableArray.CreateBuilder<DxfBlock>();

        public ImmutableArray<DxfEntity>.Builder Entities { get; } = ImmutableArray.CreateBuilder<DxfEntity>();
    }
}
