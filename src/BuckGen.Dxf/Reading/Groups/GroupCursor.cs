using BuckGen.Dxf.Tags;

namespace BuckGen.Dxf.Reading.Groups;

/// <summary>Walks over a file group by group, one group ahead.</summary>
internal sealed class GroupCursor : IDisposable
{
    // Embedded objects and application data at the end of an entity use the same codes for other things.
    private const int EmbeddedObject = 101;
    private const int FirstExtendedData = 1000;

    private readonly IEnumerator<DxfTag> tags;
    private DxfTag? next;
    private TagGroup? last;

    public GroupCursor(IEnumerable<DxfTag> source)
    {
        tags = source.GetEnumerator();
        Advance();
        if (next is { Code: not 0 } first)
            throw new DxfException($"this is not a DXF file: it begins with group code {first.Code} and not 0", first.Line);
        Current = NextGroup();
    }

    /// <summary>The group to look at, or null at the end of the file.</summary>
    public TagGroup? Current { get; private set; }

    public TagGroup Take()
    {
        last = Current ?? throw Truncated();
        Current = NextGroup();
        return last;
    }

    /// <summary>The file stopped where more had to come. An incomplete outline must not be used.</summary>
    public DxfException Truncated() => last is null
        ? new DxfException("the file holds no DXF groups")
        : new DxfException(
            $"the file ends inside {Excerpt.Shorten(last.Type)}, which begins at line {last.Line}; it is cut off, export "
            + "it again",
            last.Line,
            Excerpt.Shorten(last.Type));

    public void Dispose() => tags.Dispose();

    private TagGroup? NextGroup()
    {
        if (next is not { } head)
            return null;
        var content = new List<DxfTag>();
        var foreign = false;
        for (Advance(); next is { Code: not 0 } tag; Advance())
        {
            foreign |= tag.Code is EmbeddedObject or >= FirstExtendedData;
            if (!foreign)
                content.Add(tag);
        }

        return new TagGroup(head.Value.ToUpperInvariant(), head.Line, content);
    }

    private void Advance() => next = tags.MoveNext() ? tags.Current : null;
}
