using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Pdf;

namespace BuckGen.Output.Pictures.Templates;

/// <summary>A template in small, with the edges and names of its pages.</summary>
internal static class KeyMap
{
    /// <summary>Smaller things than this are left out, mm in reality: crosses and bores would be specks.</summary>
    private const double MinShownSize = 8;

    private static readonly Ink Clear = new(null, 0, PictureColours.White);
    private static readonly Ink Edge = new(PictureColours.Measure, 0.2);

    public static IEnumerable<PictureItem> Draw(Picture drawing, TileGrid grid, Bounds room)
    {
        var whole = new Vec2(grid.Columns * grid.Step.X, grid.Rows * grid.Step.Y);
        var scale = Math.Min(room.Width / whole.X, room.Height / whole.Y);
        var corner = new Vec2(room.Centre.X - whole.X * scale / 2, room.Centre.Y + whole.Y * scale / 2);
        // Pages are shown cut in the middle of their overlaps.
        var from = grid.Corner + new Vec2(TileGrid.Overlap / 2, -TileGrid.Overlap / 2);
        var place = Affine.Translation(-from).Then(new(scale, 0, 0, scale, corner.X, corner.Y));
        foreach (var shape in drawing.Items.OfType<PictureShape>().Where(IsLarge)) yield return Small(shape, place);
        for (var row = 0; row < grid.Rows; row++)
            for (var column = 0; column < grid.Columns; column++)
            {
                var cell = corner + new Vec2(column * grid.Step.X, -(row + 1) * grid.Step.Y) * scale;
                var box = Bounds.FromCorners(cell, cell + grid.Step * scale);
                var name = TileGrid.Name(row, column);
                var height = Helvetica.HeightToFit(name, box.Width * 0.6, Math.Min(TextLines.Height, box.Height * 0.6));
                yield return new PictureShape([new(Loop.Rectangle(box).Segments, true)], Edge);
                var text = new Vec2(box.MinX + height / 4, box.MaxY - height);
                // The name stands clear of what is drawn there.
                yield return new PictureShape(
                    [new(Loop.Rectangle(
                        Bounds.FromCorners(text - new Vec2(0, height * 0.2),
                            text + new Vec2(Helvetica.Width(name, height), height * 0.85))).Segments, true)], Clear);
                yield return new PictureText(text, name, height, TextAlign.Start, PictureColours.Measure);
            }
    }

    private static bool IsLarge(PictureShape shape)
    {
        var bounds = shape.Paths.SelectMany(p => p.Segments).Aggregate(Bounds.Nothing, (b, s) => b.With(s.Bounds));
        return Math.Max(bounds.Width, bounds.Height) >= MinShownSize;
    }

    private static PictureShape Small(PictureShape shape, Affine place) => new(
        [.. shape.Paths
            .Select(p =>
                p with { Segments = [
                    .. p.Segments.Select(s => new Segment(place.Apply(s.Start), place.Apply(s.End), s.Bulge))] })],
        shape.Ink with { Width = shape.Ink.Width / 2, Dashes = [.. shape.Ink.Dashes.Select(d => d / 2)] });
}
