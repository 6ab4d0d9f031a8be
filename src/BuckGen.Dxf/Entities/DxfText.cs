namespace BuckGen.Dxf.Entities;

/// <summary>Writing: TEXT, MTEXT, ATTRIB or ATTDEF. Read so that it can be reported; its shape is not known.</summary>
/// <param name="Type">The type name in the file.</param>
/// <param name="Text">The words, with <c>\U+</c> escapes resolved and other formatting codes left in.</param>
/// <param name="InsertionPoint">Where it stands, in drawing units.</param>
public sealed record DxfText(string Type, string Text, DxfPoint InsertionPoint) : DxfEntity
{
    /// <inheritdoc/>
    public override string Type { get; } = Type;
}
