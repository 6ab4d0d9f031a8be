namespace BuckGen.Dxf.Tags;

/// <summary>A sink that remembers tags, so that a test or a tool can look at them without a file.</summary>
public sealed class DxfTagList : IDxfTagSink
{
    private readonly List<DxfTag> tags = [];

    /// <summary>The tags in the order in which they came, with values as a text file would hold them.</summary>
    public IReadOnlyList<DxfTag> Tags => tags;

    /// <inheritdoc/>
    public void Write(int code, string value) => tags.Add(new(code, TagText.Format(code, value)));

    /// <inheritdoc/>
    public void Write(int code, int value) => tags.Add(new(code, TagText.Format(value)));

    /// <inheritdoc/>
    public void Write(int code, double value) => tags.Add(new(code, TagText.Format(code, value)));
}
