using System.Collections.Immutable;
using System.Globalization;
using BuckGen.Geometry;

namespace BuckGen.Output.Pictures.Drawing;

/// <summary>
/// Dimension lines with arrowheads; the text stands above the line and is read from below or from the right (ISO 129-1, from
/// memory).
/// </summary>
internal static class Dimension
{
    private const double Inch = 25.4;
    private static readonly Ink Thin = new(PictureColours.Grey, 0.18);

    /// <summary>A length in mm and inches.</summary>
    public static string Text(double length) =>
        string.Create(CultureInfo.InvariantCulture, $"{length:0.##} mm ({length / Inch:0.###} in)");

    /// <summary>A level dimension under two points.</summary>
    /// <param name="left">Left end, on paper.</param>
    /// <param name="right">Right end, at the same height.</param>
    /// <param name="length">The real length, mm.</param>
    public static ImmutableArray<PictureItem> Level(Vec2 left, Vec2 right, double length) =>
        [.. Arrows(left, right),
            new PictureText(left.MidpointTo(right) + new Vec2(0, 1), Text(length), TextLines.Height, TextAlign.Middle,
                PictureColours.Black)];

    /// <summary>An upright dimension beside two points.</summary>
    /// <param name="low">Lower end, on paper.</param>
    /// <param name="high">Upper end, straight above it.</param>
    /// <param name="length">The real length, mm.</param>
    /// <param name="aside">Where the text goes when it is longer than the line: it stands level, on the left (End) or the right
    /// (Start).</param>
    public static ImmutableArray<PictureItem> Upright(Vec2 low, Vec2 high, double length, TextAlign aside = TextAlign.End)
    {
        var (text, middle) = (Text(length), low.MidpointTo(high));
        var fits = Fits(length, (high - low).Length);
        return
        [
            .. Arrows(low, high),
            fits
                ? new PictureText(middle - new Vec2(1, 0), text, TextLines.Height, TextAlign.Middle, PictureColours.Black, 90)
                : new PictureText(middle + new Vec2(aside == TextAlign.End ? -1.5 : 1.5, -1), text, TextLines.Height, aside,
                    PictureColours.Black),
        ];
    }

    /// <summary>How much room an upright dimension takes beside its line, mm on paper.</summary>
    /// <param name="length">The real length, mm.</param>
    /// <param name="line">Length of its line on paper, mm.</param>
    public static double RoomBeside(double length, double line) =>
        Fits(length, line) ? 1 + TextLines.Height : 1.5 + TextWidth(length);

    private static bool Fits(double length, double line) => TextWidth(length) <= line;

    private static double TextWidth(double length) => Text(length).Length * PictureText.UsualLetterWidth * TextLines.Height;

    private static IEnumerable<PictureItem> Arrows(Vec2 from, Vec2 to)
    {
        yield return PictureShape.Line(from, to, Thin);
        var along = (to - from).Unit();
        var size = Math.Min(2.5, (to - from).Length / 3);
        yield return Head(from, along * size);
        yield return Head(to, along * -size);
    }

    private static PictureShape Head(Vec2 tip, Vec2 inward)
    {
        var aside = inward.Left * 0.16;
        return new([new(Loop.Polygon(tip, tip + inward + aside, tip + inward - aside).Segments, true)],
            new(null, 0, PictureColours.Grey));
    }
}
