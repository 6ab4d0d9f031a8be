namespace BuckGen.Intake.Svg;

/// <summary>How an SVG file is read, and how much of it is borne.</summary>
/// <param name="PixelsPerInch">Pixels to the inch for files whose size is in px or missing; 96 by the standard, older programs
/// wrote 72 or 90.</param>
/// <param name="MaxBytes">Maximum size of a file, in bytes, also after unpacking.</param>
/// <param name="MaxElements">Maximum number of elements, also after every <c>use</c> is put in; a <c>use</c> counts as five, and
/// 200 characters of path data as one.</param>
/// <param name="MaxDepth">Maximum depth of nesting, also through <c>use</c>.</param>
/// <param name="MaxEntityCharacters">Maximum number of characters that entities of a DOCTYPE may grow to.</param>
internal sealed record SvgReadOptions(
    double PixelsPerInch = 96,
    int MaxBytes = 64 * 1024 * 1024,
    int MaxElements = 100_000,
    int MaxDepth = 200,
    int MaxEntityCharacters = 100_000)
{
    /// <summary>96 pixels to the inch, 64 MB, 100 000 elements, 200 levels, 100 000 characters from entities.</summary>
    public static SvgReadOptions Default { get; } = new();
}
