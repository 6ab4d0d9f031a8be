using BuckGen.Dxf.Tags;

namespace BuckGen.Dxf.Reading.Groups;

/// <summary>A "0 TYPE" tag and all tags up to the next one: an entity, a table row, a section head or an end mark.</summary>
internal sealed class TagGroup(string type, int line, IReadOnlyList<DxfTag> tags)
{
    public string Type => type;

    public int Line => line;

    /// <summary>The tags after the first, in file order.</summary>
    public IReadOnlyList<DxfTag> Tags => tags;

    public DxfException Fault(string message) => new(message, line, Excerpt.Shorten(type));

    /// <summary>The last value with this code, or null. Order inside a group is free, and later ones win.</summary>
    public DxfTag? Find(int code)
    {
        for (var i = tags.Count - 1; i >= 0; i--)
        {
            if (tags[i].Code == code)
                return tags[i];
        }

        return null;
    }

    public string? Text(int code) => Find(code)?.Value;

    public int Integer(int code, int fallback) => Find(code) is { } tag ? Integer(tag) : fallback;

    public bool Flag(int code, int bit) => (Integer(code, 0) & bit) != 0;

    public double Number(int code, double fallback) => Find(code) is { } tag ? Number(tag) : fallback;

    public double Required(int code, string meaning) =>
        Find(code) is { } tag ? Number(tag) : throw Fault($"group code {code} ({meaning}) is missing; the entity is incomplete");

    public int Integer(DxfTag tag) => NumberText.TryInteger(tag.Value, out var value)
        ? value
        : throw Bad(tag, NumberText.WhyNotInteger(tag.Value));

    public double Number(DxfTag tag) => NumberText.TryNumber(tag.Value, out var value)
        ? value
        : throw Bad(tag, NumberText.WhyNotNumber(tag.Value));

    private DxfException Bad(DxfTag tag, string why) =>
        new($"the value of group code {tag.Code} is \"{Excerpt.Shorten(tag.Value)}\": {why}", tag.Line + 1,
            Excerpt.Shorten(type));
}
