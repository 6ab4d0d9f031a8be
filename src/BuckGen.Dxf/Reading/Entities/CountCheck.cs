using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>Counts in a file are hints. What is there is read, and a difference is reported.</summary>
internal static class CountCheck
{
    public static void Compare(TagGroup group, int code, int found, string what, ReadContext context)
    {
        if (group.Find(code) is { } tag && (!NumberText.TryInteger(tag.Value, out var stated) || stated != found))
        {
            context.Note(
                DxfNoteKind.CountMismatch,
                $"the {group.Type} says it has {Excerpt.Shorten(tag.Value)} {what} and has {found}; those were taken",
                tag.Line + 1);
        }
    }
}
