using BuckGen.Geometry;

namespace BuckGen.Output.Pictures.Drawing;

/// <summary>Sheets of paper that office printers take.</summary>
public enum Paper
{
    /// <summary>210 x 297 mm.</summary>
    A4,

    /// <summary>8.5 x 11 inches.</summary>
    Letter,
}

/// <summary>Sizes of paper.</summary>
internal static class PaperSizes
{
    /// <summary>Width and height of a sheet held upright, mm.</summary>
    /// <remarks>Sources: ISO 216 for A4, ANSI/ASME Y14.1 size A for Letter (from memory).</remarks>
    public static Vec2 Upright(Paper paper) => paper switch
    {
        Paper.A4 => new(210, 297),
        Paper.Letter => new(8.5 * 25.4, 11 * 25.4),
        _ => throw new ArgumentOutOfRangeException(nameof(paper), paper, "No such paper."),
    };
}
