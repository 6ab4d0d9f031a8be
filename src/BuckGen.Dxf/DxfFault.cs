namespace BuckGen.Dxf;

/// <summary>One thing that is wrong with a drawing, with its place.</summary>
/// <param name="Message">What is wrong, the value and the limit where there are any, and what to do about it.</param>
/// <param name="Line">Line in the file, counted from 1; 0 when there is no file or no line to name.</param>
/// <param name="EntityType">Type of the entity concerned, such as <c>LINE</c>; null when it belongs to none.</param>
public sealed record DxfFault(string Message, int Line = 0, string? EntityType = null)
{
    /// <summary>Place and message in one line, such as <c>line 42, ARC: the radius is missing</c>.</summary>
    public override string ToString() => (Line, EntityType) switch
    {
        (0, null) => Message,
        (0, _) => $"{EntityType}: {Message}",
        (_, null) => $"line {Line}: {Message}",
        _ => $"line {Line}, {EntityType}: {Message}",
    };
}
