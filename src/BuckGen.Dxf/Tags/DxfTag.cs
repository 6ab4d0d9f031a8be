using System.Globalization;

namespace BuckGen.Dxf.Tags;

/// <summary>The smallest piece of a DXF file: a group code that says what follows, and the value as text.</summary>
/// <param name="Code">Group code.</param>
/// <param name="Value">The value as it stands, or would stand, in the file.</param>
/// <param name="Line">Line of the group code in the file, from 1; 0 when the tag was not read from a file.</param>
public readonly record struct DxfTag(int Code, string Value, int Line = 0)
{
    /// <summary>Code and value, such as <c>10=2.5</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Code}={Value}");
}
