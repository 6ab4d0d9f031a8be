using System.Collections.Immutable;
using BuckGen.Design;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Png;

namespace BuckGen.Output.Pictures;

/// <summary>A job at a glance: its title, the plan over the section, and beside them the layers lifted apart.</summary>
internal static class PreviewPicture
{
    private const double Gap = 6, Head = 16, TitleHeight = 8;

    /// <summary>The picture.</summary>
    /// <param name="design">The design.</param>
    /// <param name="title">What the job is called.</param>
    /// <param name="findings">All findings in the order in which they are listed: the first is number 1.</param>
    public static Picture Draw(BuckDesign design, string title, ImmutableArray<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(title);
        Picture?[] left = [PlanPicture.Draw(design, findings), SectionPicture.Draw(design)],
            right = [StackPicture.Draw("The layers lifted apart", design.Layers)];
        ImmutableArray<ImmutableArray<Picture>> columns =
            [.. ((Picture?[][])[left, right]).Select(c => c.OfType<Picture>().ToImmutableArray()).Where(c => !c.IsEmpty)];
        var high = columns.Max(Height);
        var page = new Bounds(0, 0, columns.Length * (PaperView.PageWidth + Gap) + Gap, high + Head);
        var wide = page.Width - 2 * (Gap + PaperView.Margin);
        return new(title, page,
        [
            new PictureText(new(Gap + PaperView.Margin, high + 4), title,
                TitleToFit(title, wide), TextAlign.Start, PictureColours.Black),
            .. columns.SelectMany((c, i) => Stacked(c, new(Gap + i * (PaperView.PageWidth + Gap), (high + Height(c)) / 2))),
        ]);
    }

    /// <summary>As usual for the number of its letters; wide ones, such as capitals, need to be smaller.</summary>
    private static double TitleToFit(string title, double width) =>
        Math.Min(TextLines.TitleToFit(title, width) / TextLines.TitleHeight * TitleHeight, width / Letters.Width(title));

    private static double Height(ImmutableArray<Picture> column) => column.Sum(p => p.Page.Height) + Gap * column.Length;

    /// <summary>Pictures under each other, from an upper left corner down.</summary>
    private static IEnumerable<PictureItem> Stacked(ImmutableArray<Picture> column, Vec2 corner)
    {
        var top = corner.Y;
        foreach (var picture in column)
        {
            top -= picture.Page.Height;
            var by = new Vec2(corner.X, top) - picture.Page.LowerLeft;
            foreach (var item in picture.Items) yield return Moved(item, by);
            top -= Gap;
        }
    }

    private static PictureItem Moved(PictureItem item, Vec2 by) => item switch
    {
        PictureShape shape =>
            shape with
            {
                Paths = [
                .. shape.Paths
                    .Select(p =>
                        p with { Segments = [.. p.Segments.Select(s => s with { Start = s.Start + by, End = s.End + by })] })]
            },
        PictureText text => text with { Place = text.Place + by },
        PictureLink link => link with { Items = [.. link.Items.Select(i => Moved(i, by))] },
        _ => throw new ArgumentOutOfRangeException(nameof(item), item, "No such item."),
    };
}
