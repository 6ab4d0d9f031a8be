using System.Collections.Immutable;
using BuckGen.Design;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures.Thickness;

/// <summary>
/// The formed sheet where section A-A runs: over the buck, in the colours of its thickness, and the thickness as a curve along
/// the sheet.
/// </summary>
internal static class ThicknessSection
{
    private const double MaxHeight = 70, CurveHeight = 45, CurveBelow = 30, Between = 12, Above = 12, Left = 14;

    private static readonly Ink Wood = new(PictureColours.Grey, 0.2, PictureColours.Wood),
        Part = new(null, 0, PictureColours.Board);
    private static readonly Ink Axis = new(PictureColours.Black, 0.25),
        Grid = new(PictureColours.Grey, 0.15) { Dashes = [1.5, 1] }, Curve = new(PictureColours.Measure, 0.5);

    /// <summary>The picture; null for a design whose part was not predicted, or not to the end.</summary>
    public static Picture? Draw(BuckDesign design)
    {
        if (design.Formed is not { IsConverged: true } part || SectionPicture.CutAt(design) is not { } cut
            || SheetSection.AtY(part, cut) is not [var line, ..] lines) return null;
        var view = PaperView
            .Centred(design.Layers
                .Aggregate(Bounds.Nothing,
                    (b, l) => b.With(new Bounds(l.Region.Bounds.MinX, 0, l.Region.Bounds.MaxX, design.Height)))
                        .With(new Bounds(part.Points.Min(p => p.X), 0, part.Points.Max(p => p.X), design.Height)), MaxHeight,
                        CurveBelow + CurveHeight + Between, 0);
        var scale = ThicknessScale.ForPart(part);
        var page = new Bounds(0, 0, PaperView.PageWidth, view.Corner.Y + view.Height + Above);
        return new("Thickness along section A-A", page,
        [
            .. design.Layers.SelectMany(l => LevelCut.Find(l.Region, cut).Select(s =>
                new PictureShape([new(Loop.Rectangle(new(s.From, l.Bottom, s.To, l.Top)).Transformed(view.Map).Segments, true)],
                    Wood))),
            .. lines.SelectMany(l => Sheet(l, scale, view)),
            .. CurveOf(line, part, LevelCut.Find(design.Footprint, cut)),
            .. scale.Legend(new(PaperView.Margin + 4, 8)),
            new PictureText(new(PaperView.Margin, page.MaxY - 4),
                "Section A-A with the formed sheet, and its thickness along the section (grey: the part)", TextLines.Height,
                TextAlign.Start, PictureColours.Black),
            view.ScaleAt(page.MaxY - 4),
        ]);
    }

    /// <summary>The sheet as a broad line, black below, so that its brightest colours show as well.</summary>
    private static IEnumerable<PictureShape> Sheet(ImmutableArray<SectionPoint> line, ThicknessScale scale, PaperView view)
    {
        ImmutableArray<Vec2> places = [.. line.Select(p => view.Map.Apply(new(p.X, p.Z)))];
        yield return Way(places, 0, places.Length - 1, new(PictureColours.Black, 1.5));
        for (int from = 0, to = 1; to < line.Length; to++)
        {
            var band = Band(to - 1);
            if (to + 1 < line.Length && Band(to) == band) continue;
            yield return Way(places, from, to, new(ThicknessColours.ForBand(band), 1));
            from = to;
        }

        int Band(int i) => scale.BandOf((line[i].Thickness + line[i + 1].Thickness) / 2);
    }

    private static PictureShape Way(ImmutableArray<Vec2> places, int from, int to, Ink ink) =>
        new([new([.. Enumerable.Range(from, to - from).Select(i => new Segment(places[i], places[i + 1]))], false)], ink);

    private static IEnumerable<PictureItem> CurveOf(ImmutableArray<SectionPoint> line, FormedPart part,
        IReadOnlyList<(double From, double To)> footprint)
    {
        var (length, most) = (line[^1].ArcLength, 1.05 * Math.Max(part.Gauge, line.Max(p => p.Thickness)));
        var box = new Bounds(Left, CurveBelow, PaperView.PageWidth - PaperView.Margin, CurveBelow + CurveHeight);
        Vec2 At(double along, double thickness) =>
            new(box.MinX + along / length * box.Width, box.MinY + thickness / most * box.Height);

        foreach (var span in footprint)
        {
            var on = line.Where(p => p.X >= span.From - 1e-6 && p.X <= span.To + 1e-6).ToArray();
            if (on.Length > 1)
                yield return new PictureShape(
                    [new(Loop.Rectangle(Bounds.FromCorners(At(on[0].ArcLength, 0), At(on[^1].ArcLength, most))).Segments, true)],
                    Part);
        }
        foreach (var mark in AxisMarks.Along(part.Gauge, 4))
        {
            yield return PictureShape.Line(At(0, mark), At(length, mark), Grid);
            yield return new PictureText(At(0, mark) - new Vec2(1, 1), FormattableString.Invariant($"{mark:0.##}"),
                TextLines.Height, TextAlign.End, PictureColours.Black);
        }
        foreach (var mark in AxisMarks.Along(length, 8))
            yield return new PictureText(At(mark, 0) - new Vec2(0, 4), FormattableString.Invariant($"{mark:0}"), TextLines.Height,
                TextAlign.Middle, PictureColours.Black);
        yield return new PictureShape([new(Loop.Rectangle(box).Segments, true)], Axis);
        yield return Way([.. line.Select(p => At(p.ArcLength, p.Thickness))], 0, line.Length - 1, Curve);
        yield return new PictureText(new(box.Centre.X, box.MinY - 8.5), "mm along the sheet, from the left side of the frame",
            TextLines.Height, TextAlign.Middle, PictureColours.Black);
    }
}
