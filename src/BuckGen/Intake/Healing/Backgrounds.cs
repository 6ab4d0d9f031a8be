using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>Recognises a rectangle behind everything else, which would turn what lies on it into holes.</summary>
internal static class Backgrounds
{
    /// <summary>Edges nearer than this to those of the page are the page's, mm.</summary>
    private const double SamePage = 0.05;

    /// <summary>A colour as light as this is paper.</summary>
    private const double Paper = 0.8;

    /// <summary>The loops without the background, and what was done with it.</summary>
    public static (ImmutableArray<SourcedLoop> Loops, ImmutableArray<ReadNote> Notes) Judge(
        ImmutableArray<SourcedLoop> loops, Bounds? page, OutlineOptions options)
    {
        if (options.Background == Background.Keep) return (loops, []);
        if (Behind(loops, page) is not { } background)
            return (loops, options.Background == Background.Auto ? [] : [new("background-missing",
                "No rectangle lies behind everything else, so none was left out as a background. Take out what is too much in "
                + "the drawing program, or choose layers with --layers.")]);
        ImmutableArray<SourcedLoop> others = [.. loops.Where(l => l != background)];
        var isPage = IsPage(background.Loop, page);
        var shows = ShowsAsBackground(background.Path.Paint, others, isPage);
        var what = $"The rectangle behind everything ({background.Path.Source})";
        if (options.Background == Background.Drop)
            return (others, [new("background-left-out", $"{what} was left out as a background: that was asked for.")]);
        if (shows)
            return (others, [new("background-left-out",
                $"{what} was left out as a background: it is {(isPage ? "as large as the page and " : "")}lighter than all that "
                + "lies on it. Keep it with --background keep if it belongs to the outline.")]);
        return (loops, !isPage ? [] : [new("page-sized",
            $"{what} is as large as the page and counts as the outline, so what lies on it counts as openings. If it is only a "
            + "background, say --background drop.")]);
    }

    /// <summary>The upright rectangle that lies behind all other loops; null when there is none.</summary>
    private static SourcedLoop? Behind(ImmutableArray<SourcedLoop> loops, Bounds? page)
    {
        if (loops.Length < 2) return null;
        var largest = loops.MaxBy(l => l.Loop.Bounds.Width * l.Loop.Bounds.Height)!;
        var isBehind = IsRectangle(largest.Loop) && loops.Count(l => l.Path.Shape == largest.Path.Shape) == 1
            && (IsPage(largest.Loop, page) || loops.All(l => largest.Loop.Bounds.Contains(l.Loop.Bounds)));
        return isBehind ? largest : null;
    }

    private static bool IsRectangle(Loop loop) => loop.Segments.Length == 4 && loop.Segments.All(s =>
        s.Bulge == 0 && (Math.Abs(s.Start.X - s.End.X) < SamePage || Math.Abs(s.Start.Y - s.End.Y) < SamePage));

    private static bool IsPage(Loop loop, Bounds? page) => page is { } p && loop.Bounds.Grown(SamePage).Contains(p);

    /// <summary>
    /// True where a rectangle that is filled and light lies under what is darker or is drawn with lines only. A counter may have
    /// its colour, as if it were seen through.
    /// </summary>
    private static bool ShowsAsBackground(Paint? paint, ImmutableArray<SourcedLoop> others, bool isPage)
    {
        if (paint is not { Fill: { } fill } own) return false;
        var light = Luminance(fill);
        return (isPage || light >= Paper) && others.All(o => o.Path.Paint switch
        {
            { Fill: { } other } => Luminance(other) < light || other == fill,
            { HasLine: true } => !own.HasLine,
            _ => false,
        }) && !others.All(o => o.Path.Paint?.Fill == fill);
    }

    /// <summary>Relative luminance, 0 for black to 1 for white: WCAG 2.2, "relative luminance".</summary>
    private static double Luminance(int colour)
    {
        return 0.2126 * Linear(colour >> 16) + 0.7152 * Linear(colour >> 8) + 0.0722 * Linear(colour);

        static double Linear(int channel)
        {
            var share = (channel & 255) / 255.0;
            return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
        }
    }
}
