using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Polygonal;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures;

/// <summary>Layers lifted apart, seen from above and in front, each with its number.</summary>
internal static class StackPicture
{
    private const double Room = 130, Chord = 0.3, LabelRoom = 26;

    /// <summary>How far the eye is turned round the stack and raised above the table, degrees.</summary>
    private const double Turn = 25, Raised = 35;

    /// <summary>Gap between lifted layers over the depth of the stack as seen: the most, and for all gaps together.</summary>
    private const double MaxGap = 0.5, AllGaps = 1.6;

    /// <summary>
    /// Beyond this number, edges shorter than the width of a line are not drawn one by one: they would add megabytes and nothing
    /// to see.
    /// </summary>
    private const int ManyEdges = 20_000;
    private const double MinLength = 0.2;

    private static readonly Ink Side = new(PictureColours.Shade, 0.12, PictureColours.Shade);
    private static readonly Ink Top = new(PictureColours.Black, 0.2, PictureColours.Wood);
    private static readonly Ink PlateTop = new(PictureColours.Black, 0.2, PictureColours.Board);
    private static readonly Ink Marks = new(PictureColours.Grey, 0.12);

    /// <summary>The picture; null when there are no layers.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="layers">The layers, lowest first.</param>
    public static Picture? Draw(string title, IReadOnlyList<Layer> layers)
    {
        if (layers.Count == 0) return null;
        var plan = layers.Aggregate(Bounds.Nothing, (b, l) => b.With(l.Region.Bounds));
        var (sin, cos) = Math.SinCos(Turn * Math.PI / 180);
        var down = Math.Sin(Raised * Math.PI / 180);
        // Turned round the middle, then seen at a slant: x to the right, y up the paper; heights go straight up.
        var seen = Affine.Translation(-plan.Centre).Then(new(cos, sin * down, -sin, cos * down, 0, 0));
        var deep = Corners(plan).Select(seen.Apply).Aggregate(Bounds.Nothing, (b, p) => b.With(Bounds.FromCorners(p, p))).Height;
        var upright = Math.Cos(Raised * Math.PI / 180);
        var gap = deep * Math.Min(MaxGap, AllGaps / layers.Count);
        var lifts = layers.Select((l, i) => (Bottom: l.Bottom * upright + i * gap, Top: l.Top * upright + i * gap)).ToArray();
        var all = layers.Zip(lifts)
            .Aggregate(Bounds.Nothing, (b, l) => l.First.Region.Loops.SelectMany(o => PolygonConversion.Flattened(o, Chord))
                .Select(seen.Apply)
            .Aggregate(b,
                (box, p) => box.With(Bounds.FromCorners(p + new Vec2(0, l.Second.Bottom), p + new Vec2(0, l.Second.Top)))));
        var scale = Math.Min((PaperView.PageWidth - 2 * PaperView.Margin - LabelRoom) / all.Width, Room / all.Height);
        var page = new Bounds(0, 0, PaperView.PageWidth, all.Height * scale + 2 * PaperView.Margin);
        var left = (PaperView.PageWidth - LabelRoom - all.Width * scale) / 2;
        Vec2 OnPaper(Vec2 p, double lift) =>
            new(left + (p.X - all.MinX) * scale, PaperView.Margin + (p.Y + lift - all.MinY) * scale);
        var shortest = layers.Sum(l => l.Region.Segments.Count()) > ManyEdges ? MinLength / scale : 0;
        return new(title, page,
        [
            .. layers.Zip(lifts).SelectMany(l => Drawn(l.First, l.Second, seen, OnPaper, shortest)),
            .. layers.Zip(lifts).SelectMany(l => Named(l.First, l.Second.Top, left + all.Width * scale + 4, seen, OnPaper)),
        ]);
    }

    private static IEnumerable<PictureItem> Drawn(Layer layer, (double Bottom, double Top) lift, Affine seen,
        Func<Vec2, double, Vec2> onPaper, double minLength)
    {
        var rise = onPaper(default, lift.Top) - onPaper(default, 0);
        var height = onPaper(default, lift.Top) - onPaper(default, lift.Bottom);
        var tops = layer.Region.Loops.Select(l => PaperCurve.Shown(
            Path(WithoutShort(PolygonConversion.Flattened(l, Chord), minLength).Select(p => onPaper(seen.Apply(p), 0) + rise))))
            .ToImmutableArray();
        // A wall that faces away is covered by its own layer. Of the others the far ones come first: those nearer to the eye,
        // lower on the paper, cover them.
        foreach (var edge in tops.SelectMany(t => t.Segments).Where(e => e.Chord.X > 0)
            .OrderByDescending(e => Math.Round((e.Start.Y + e.End.Y) / 2, 4)))
            yield return Polygon([edge.Start - height, edge.End - height, edge.End, edge.Start], Side);
        yield return new PictureShape(tops, layer.Role is LayerRole.Base or LayerRole.Plenum ? PlateTop : Top);
        foreach (var hole in layer.Parts.SelectMany(p => p.Dowels))
            yield return new PictureShape(
                [Path(PolygonConversion.Flattened(Loop.Circle(hole.Centre, hole.Diameter / 2), Chord)
                    .Select(p => onPaper(seen.Apply(p), lift.Top)))], new(PictureColours.Grey, 0.15, PictureColours.White));
        foreach (var line in layer.GlueUp)
            yield return new PictureShape(
                [Path(PolygonConversion.Flattened(line, Chord).Select(p => onPaper(seen.Apply(p), lift.Top)))], Marks);
    }

    private static List<Vec2> WithoutShort(List<Vec2> corners, double minLength)
    {
        if (minLength == 0) return corners;
        List<Vec2> kept = [corners[0]];
        foreach (var p in corners)
            if (p.DistanceTo(kept[^1]) >= minLength) kept.Add(p);
        return kept.Count < 3 ? corners : kept;
    }

    /// <summary>The names stand in one column, where no layer covers them, each led to its layer by a thin line.</summary>
    private static IEnumerable<PictureItem> Named(Layer layer, double top, double column, Affine seen,
        Func<Vec2, double, Vec2> onPaper)
    {
        var corner = layer.Region.Segments.Select(s => onPaper(seen.Apply(s.Start), top)).MaxBy(p => p.X);
        yield return PictureShape.Line(corner + new Vec2(0.5, 0), new(column - 1, corner.Y), Marks);
        yield return new PictureText(new(column, corner.Y - 1), Name(layer), TextLines.Height, TextAlign.Start,
            PictureColours.Black);
    }

    private static string Name(Layer layer) => layer.Name.Length > 0
        ? FormattableString.Invariant($"{layer.Name} {layer.Number}")
        : FormattableString.Invariant($"{layer.Number}, {layer.Thickness:0.##} mm");

    private static PictureShape Polygon(Vec2[] corners, Ink ink) => new([Path(corners)], ink);

    private static PicturePath Path(IEnumerable<Vec2> corners)
    {
        Vec2[] points = [.. corners];
        return new([.. points.Select((p, i) => new Segment(p, points[(i + 1) % points.Length]))], true);
    }

    private static IEnumerable<Vec2> Corners(Bounds b) =>
        [b.LowerLeft, new(b.MaxX, b.MinY), new(b.MaxX, b.MaxY), new(b.MinX, b.MaxY)];
}
