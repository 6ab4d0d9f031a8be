using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures;

/// <summary>What is cut: one layer with its marks, or a board with its parts.</summary>
internal static class CutPicture
{
    private const double MaxLayerHeight = 56, MaxSheetHeight = 100, Below = 12, Above = 9, Aside = 5, MinWidth = 120;

    private static readonly Ink Wood = new(null, 0, PictureColours.Wood);
    private static readonly Ink BoardInk = new(PictureColours.Grey, 0.25, PictureColours.White);
    private static readonly Ink Cut = new(PictureColours.Black, 0.3);
    private static readonly Ink Hole = new(PictureColours.Measure, 0.25);
    private static readonly Ink Mark = new(PictureColours.Repaired, 0.18);

    /// <summary>A layer in its own coordinates, nominal size, with its width and height.</summary>
    public static Picture Draw(Layer layer)
    {
        var drawing = LayerDrawing.Create(layer);
        var view = PaperView.Centred(layer.Region.Bounds, MaxLayerHeight, Below);
        var page = Page(view);
        return new(drawing.Title, page,
        [
            PictureShape.FromRegion(
                (layer.MarkedOnBack ? layer.Region.Transformed(layer.ToBack) : layer.Region).Transformed(view.Map), Wood),
            .. drawing.Paths.Select(p => Drawn(p, view)),
            .. Dimension.Level(view.Corner - new Vec2(0, 6), view.Corner + new Vec2(view.Width, -6), view.Real.Width),
            .. Dimension.Upright(view.Corner - new Vec2(Aside, 0), view.Corner + new Vec2(-Aside, view.Height), view.Real.Height),
            view.ScaleAt(page.MaxY - 4, page.MaxX),
        ]);
    }

    /// <summary>A board with its parts, kerf allowed for, each with its name.</summary>
    public static Picture Draw(BoardLayout board)
    {
        var drawing = BoardDrawing.Create(board);
        var view = PaperView.Centred(drawing.Page, MaxSheetHeight, Below);
        var page = Page(view);
        return new(drawing.Title, page,
        [
            new PictureShape([new(Loop.Rectangle(drawing.Page).Transformed(view.Map).Segments, true)], BoardInk),
            .. board.Placements
                .Select(p => new PictureShape([.. p.Part.Paths.Where(c => c.Layer is CutLayer.CutOuter or CutLayer.CutInner)
                .Select(c => new PicturePath(c.Transformed(p.Map).Transformed(view.Map).Segments, true))], Wood)),
            .. drawing.Paths.Select(p => Drawn(p, view)),
            .. Dimension.Level(view.Corner - new Vec2(0, 6), view.Corner + new Vec2(view.Width, -6), view.Real.Width),
            .. Dimension.Upright(view.Corner - new Vec2(Aside, 0), view.Corner + new Vec2(-Aside, view.Height), view.Real.Height),
            view.ScaleAt(page.MaxY - 4, page.MaxX),
        ]);
    }

    /// <summary>
    /// As wide as what stands on it, so that two find room beside each other on a screen; no narrower than is usual for them.
    /// </summary>
    private static Bounds Page(PaperView view)
    {
        var left = view.Corner.X - Aside - Dimension.RoomBeside(view.Real.Height, view.Height) - PaperView.Margin;
        var right = view.Corner.X + view.Width + PaperView.Margin;
        var more = Math.Max(0, (MinWidth - (right - left)) / 2);
        return new(left - more, 0, right + more, Below + view.Height + Above);
    }

    private static PictureShape Drawn(CutPath path, PaperView view) => new(
        [new(path.Transformed(view.Map).Segments, path.Closed)],
        path.Layer switch { CutLayer.Mark => Mark, CutLayer.Vent or CutLayer.Dowel => Hole, _ => Cut });
}
