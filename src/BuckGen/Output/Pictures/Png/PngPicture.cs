using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures.Png;

/// <summary>Writes a picture as PNG, for where neither SVG nor PDF is shown.</summary>
internal sealed class PngPicture
{
    /// <summary>How far a chord may leave its arc, pixels.</summary>
    private const double Chord = 0.05;

    private readonly Raster raster;
    private readonly Bounds page;
    private readonly double scale;

    private PngPicture(Picture picture, int width)
    {
        (page, scale) = (picture.Page, width / picture.Page.Width);
        raster = new(width, Math.Max(1, (int)Math.Ceiling(page.Height * scale - 1e-6)));
    }

    /// <summary>The bytes of the file.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="width">Its width, pixels; the height follows.</param>
    public static ImmutableArray<byte> Write(Picture picture, int width)
    {
        ArgumentNullException.ThrowIfNull(picture);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 1);
        var made = new PngPicture(picture, width);
        foreach (var item in picture.Items) made.Draw(item, new(0, 0, made.raster.Width, made.raster.Height));
        return PngFile.Write(made.raster);
    }

    private void Draw(PictureItem item, Bounds window)
    {
        switch (item)
        {
            case PictureShape shape:
                Draw(shape, window);
                break;
            case PictureText text:
                Draw(text, window);
                break;
            case PictureLink link:
                foreach (var inner in link.Items) Draw(inner, window);
                break;
            case PictureWindow view:
                var (a, b) = (Pixel(view.View.LowerLeft), Pixel(new(view.View.MaxX, view.View.MaxY)));
                var within =
                    new Bounds(Math.Max(window.MinX, a.X), Math.Max(window.MinY, b.Y), Math.Min(window.MaxX, b.X),
                        Math.Min(window.MaxY, a.Y));
                if (within.Width > 0 && within.Height > 0)
                    foreach (var inner in view.Items) Draw(inner, within);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(item), item, "No such item.");
        }
    }

    private void Draw(PictureShape shape, Bounds window)
    {
        var ink = shape.Ink;
        var paths = shape.Paths.Select(p => (Points: Flattened(PaperCurve.Shown(p)), p.Closed)).ToArray();
        if (ink.Fill is { } fill) raster.Fill(paths.Select(p => p.Points), fill, evenOdd: true, window);
        if (ink.Stroke is { } stroke)
            raster.Fill(
                paths.SelectMany(p =>
                    Strokes.ToAreas(p.Points, p.Closed, ink.Width * scale, [.. ink.Dashes.Select(d => d * scale)])), stroke,
                    evenOdd: false, window);
    }

    private void Draw(PictureText text, Bounds window)
    {
        var (sin, cos) = Math.SinCos(text.Turn * Math.PI / 180);
        var back = text.Align switch { TextAlign.Middle => 0.5, TextAlign.End => 1, _ => 0 } * Letters.Width(text.Text);
        var loops = Letters.Outlines(text.Text).Select(loop => loop.Select(p =>
        {
            var (x, y) = ((p.X - back) * text.Height, p.Y * text.Height);
            return Pixel(text.Place + new Vec2(x * cos - y * sin, x * sin + y * cos));
        }).ToArray());
        raster.Fill(loops, text.Colour, evenOdd: false, window);
    }

    private List<Vec2> Flattened(PicturePath path)
    {
        var points = new List<Vec2> { Pixel(path.Segments[0].Start) };
        foreach (var segment in path.Segments)
        {
            if (segment.IsArc)
            {
                // A chord over an angle leaves its arc by the radius times an eighth of its square.
                var pieces =
                    (int)Math.Ceiling(Math.Abs(segment.Sweep) / Math.Sqrt(8 * Chord / Math.Max(Chord, segment.Radius * scale)));
                for (var i = 1; i < pieces; i++) points.Add(Pixel(segment.PointAt((double)i / pieces)));
            }

            points.Add(Pixel(segment.End));
        }

        return points;
    }

    private Vec2 Pixel(Vec2 p) => new((p.X - page.MinX) * scale, (page.MaxY - p.Y) * scale);
}
