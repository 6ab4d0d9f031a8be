using System.Globalization;
using System.Text;
using BuckGen.Cutting.CutFiles;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures.Pdf;

/// <summary>What is drawn on a page, as PDF operators: one unit is one millimetre, counted from the lower left corner.</summary>
internal sealed class PdfContent
{
    /// <summary>The name under which pages know the font.</summary>
    public const string Font = "F1";

    /// <summary>
    /// An arc is drawn in curves of at most an eighth of a circle, which keeps them within 5 millionths of the radius.
    /// </summary>
    private const double MaxArcAngle = Math.PI / 4;

    private readonly StringBuilder text = new();
    private readonly Bounds page;

    private PdfContent(Bounds page) => this.page = page;

    /// <summary>The content of a page.</summary>
    public static string Write(Picture picture)
    {
        var content = new PdfContent(picture.Page);
        // From points, 72 an inch, to millimetres; lines join round, as in SVG.
        content.text.Append(CultureInfo.InvariantCulture,
            $"{PdfPicture.PointsPerMillimetre:0.#########} 0 0 {PdfPicture.PointsPerMillimetre:0.#########} 0 0 cm 1 j\n");
        foreach (var item in picture.Items) content.Add(item);
        return content.text.ToString();
    }

    private void Add(PictureItem item)
    {
        switch (item)
        {
            case PictureShape shape:
                Add(shape);
                break;
            case PictureText line:
                Add(line);
                break;
            case PictureLink link:
                // Links lead through a web page; on paper there is nothing to lead through.
                foreach (var inner in link.Items) Add(inner);
                break;
            case PictureWindow window:
                var (corner, view) = (window.View.LowerLeft, window.View);
                text.Append(CultureInfo.InvariantCulture,
                    $"q {Place(corner)} {SvgText.Number(view.Width)} {SvgText.Number(view.Height)} re W n\n");
                foreach (var inner in window.Items) Add(inner);
                text.Append("Q\n");
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(item), item, "No such item.");
        }
    }

    private void Add(PictureShape shape)
    {
        var ink = shape.Ink;
        if (ink.Stroke is null && ink.Fill is null) return;
        if (ink.Fill is { } fill) text.Append(Colour(fill)).Append(" rg ");
        if (ink.Stroke is { } stroke)
            text.Append(CultureInfo.InvariantCulture,
                $"{Colour(stroke)} RG {SvgText.Number(ink.Width)} w "
                + $"[{string.Join(' ', ink.Dashes.Select(SvgText.Number))}] 0 d ");
        foreach (var path in shape.Paths) Add(path);
        text.Append((ink.Stroke, ink.Fill) switch { (null, _) => "f*", (_, null) => "S", _ => "B*" }).Append('\n');
    }

    private void Add(PicturePath path)
    {
        text.Append(CultureInfo.InvariantCulture, $"{Place(path.Segments[0].Start)} m ");
        foreach (var segment in path.Segments)
            if (segment.IsArc) AddArc(segment);
            else text.Append(CultureInfo.InvariantCulture, $"{Place(segment.End)} l ");
        if (path.Closed) text.Append("h ");
    }

    private void AddArc(Segment arc)
    {
        var pieces = (int)Math.Ceiling(Math.Abs(arc.Sweep) / MaxArcAngle - 1e-9);
        for (var i = 0; i < pieces; i++)
        {
            var piece = arc.Part((double)i / pieces, (double)(i + 1) / pieces);
            // The usual handles: 4/3 of the tangent of a quarter of the angle, in radii.
            var handle = 4.0 / 3 * Math.Abs(piece.Bulge) * arc.Radius;
            text.Append(CultureInfo.InvariantCulture,
                $"{Place(piece.Start + piece.DirectionAt(0) * handle)} {Place(piece.End - piece.DirectionAt(1) * handle)} "
                + $"{Place(piece.End)} c ");
        }
    }

    private void Add(PictureText line)
    {
        var (sin, cos) = Math.SinCos(line.Turn * Math.PI / 180);
        var back = line.Align switch { TextAlign.Middle => 0.5, TextAlign.End => 1, _ => 0 } * Helvetica
            .Width(line.Text, line.Height);
        var start = line.Place - new Vec2(cos, sin) * back;
        text.Append(CultureInfo.InvariantCulture,
            $"BT {Colour(line.Colour)} rg /{Font} {SvgText.Number(line.Height)} Tf {SvgText.Number(cos)} "
            + $"{SvgText.Number(sin)} {SvgText.Number(-sin)} {SvgText.Number(cos)} {Place(start)} Tm "
            + $"<{Convert.ToHexString(Helvetica.Encode(line.Text))}> Tj ET\n");
    }

    private string Place(Vec2 p) => $"{SvgText.Number(p.X - page.MinX)} {SvgText.Number(p.Y - page.MinY)}";

    private static string Colour(string colour) =>
        string.Join(' ', Convert.FromHexString(colour.AsSpan(1))
            .Select(c => (c / 255.0).ToString("0.###", CultureInfo.InvariantCulture)));
}
