using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Output.Pictures.Drawing;

/// <summary>
/// A drawing for people: what stands on a page, in the order in which it is drawn. Every file format is written from it.
/// </summary>
/// <param name="Title">What it shows.</param>
/// <param name="Page">The page, mm on paper, y up.</param>
/// <param name="Items">Lines, areas and text.</param>
public sealed record Picture(string Title, Bounds Page, ImmutableArray<PictureItem> Items);

/// <summary>Something on a page.</summary>
public abstract record PictureItem;

/// <summary>Lines and arcs, drawn or filled; what overlaps itself is filled by the even-odd rule.</summary>
/// <param name="Paths">The paths.</param>
/// <param name="Ink">How they are drawn.</param>
internal sealed record PictureShape(ImmutableArray<PicturePath> Paths, Ink Ink) : PictureItem
{
    /// <summary>A region's edges.</summary>
    public static PictureShape FromRegion(Region region, Ink ink)
    {
        ArgumentNullException.ThrowIfNull(region);
        return new([.. region.Loops.Select(l => new PicturePath(l.Segments, true))], ink);
    }

    /// <summary>A circle.</summary>
    public static PictureShape Circle(Vec2 centre, double radius, Ink ink) =>
        new([new(Loop.Circle(centre, radius).Segments, true)], ink);

    /// <summary>A straight line.</summary>
    public static PictureShape Line(Vec2 from, Vec2 to, Ink ink) => new([new([new(from, to)], false)], ink);
}

/// <summary>Items seen through a window: what lies outside it is not drawn.</summary>
/// <param name="View">The window, on paper.</param>
/// <param name="Items">The items.</param>
internal sealed record PictureWindow(Bounds View, ImmutableArray<PictureItem> Items) : PictureItem;

/// <summary>Lines and arcs in a row.</summary>
/// <param name="Segments">Each starts where the one before ends.</param>
/// <param name="Closed">True when the last ends where the first starts.</param>
internal sealed record PicturePath(ImmutableArray<Segment> Segments, bool Closed);

/// <summary>Items that belong together and lead somewhere else on the same page, as far as the file format can.</summary>
/// <param name="Id">What they are called on the page.</param>
/// <param name="Target">What they lead to on the page.</param>
/// <param name="Words">What they are, for those who do not see them.</param>
/// <param name="Items">The items.</param>
internal sealed record PictureLink(string Id, string Target, string Words, ImmutableArray<PictureItem> Items) : PictureItem;

/// <summary>A line of text.</summary>
/// <param name="Place">On the base line, where <paramref name="Align"/> says.</param>
/// <param name="Text">The text, as it is; writers escape it.</param>
/// <param name="Height">Height of the letters' body, mm.</param>
/// <param name="Align">Which end of the text stands at the place.</param>
/// <param name="Colour">Colour, as "#161616".</param>
/// <param name="Turn">Turned to the left by, degrees.</param>
internal sealed record PictureText(Vec2 Place, string Text, double Height, TextAlign Align, string Colour, double Turn = 0)
    : PictureItem
{
    /// <summary>
    /// Usual width of a letter, as a share of the body height of a plain sans-serif face; common practice, no source.
    /// </summary>
    public const double UsualLetterWidth = 0.55;
}

/// <summary>Which end of a line of text stands at its place.</summary>
internal enum TextAlign
{
    /// <summary>It starts there.</summary>
    Start,

    /// <summary>It is centred there.</summary>
    Middle,

    /// <summary>It ends there.</summary>
    End,
}

/// <summary>How a shape is drawn.</summary>
/// <param name="Stroke">Colour of the line; null for none.</param>
/// <param name="Width">Width of the line, mm.</param>
/// <param name="Fill">Colour inside; null for none.</param>
internal sealed record Ink(string? Stroke, double Width = 0.25, string? Fill = null)
{
    /// <summary>Lengths of dashes and gaps, mm; empty for an unbroken line.</summary>
    public ImmutableArray<double> Dashes { get; init; } = [];
}
