using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Intake.Measuring;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures;

/// <summary>
/// What was read from a drawing, to scale, with a numbered ring wherever something was repaired and a lettered one at each
/// measure.
/// </summary>
public static class OutlinePicture
{
    private const double PageWidth = 200;
    private const double Margin = 10;
    private const double DimensionRoom = 12;
    private const double MaxHeight = 180;
    private const double TitleRoom = 12;
    private const int PlacesDrawn = 200;

    private static readonly Ink Edge = new(PictureColours.Black, 0.3, PictureColours.Wood);

    /// <summary>The picture of an outline.</summary>
    public static Picture Draw(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var real = outline.Region.Bounds;
        var room = PageWidth - 2 * Margin - DimensionRoom;
        var scale = DrawingScale.ToFit(real.Width, real.Height, room, MaxHeight);
        var (width, height) = (real.Width * scale.Factor, real.Height * scale.Factor);
        var measures = OutlineMeasures.Measure(outline);
        // How many lines the words take does not depend on where the drawing stands.
        var legend = Legend(outline, MeasureMarks.Create(measures, Affine.Identity));
        var below = Margin + legend.Length * TextLines.Spacing + 4 + DimensionRoom;
        var page = new Bounds(0, 0, PageWidth, below + height + 4 + TitleRoom + Margin);
        var corner = new Vec2(Margin + DimensionRoom + (room - width) / 2, below);
        var place = Affine.Translation(-real.LowerLeft).Then(new(scale.Factor, 0, 0, scale.Factor, corner.X, corner.Y));
        return new(outline.Name, page,
        [
            new PictureText(new(Margin, page.MaxY - Margin - 3), outline.Name, TextLines.TitleToFit(outline.Name, room),
                TextAlign.Start, PictureColours.Black),
            new PictureText(new(PageWidth - Margin, page.MaxY - Margin - 3), $"Scale {scale}", TextLines.Height, TextAlign.End,
                PictureColours.Grey),
            PictureShape.FromRegion(outline.Region.Transformed(place), Edge),
            .. Dimension.Level(corner - new Vec2(0, 8), corner + new Vec2(width, -8), real.Width),
            .. Dimension.Upright(corner - new Vec2(6, 0), corner + new Vec2(-6, height), real.Height),
            .. Rings(outline, MeasureMarks.Create(measures, place), place),
            .. TextLines.Set(legend, new(Margin, Margin + (legend.Length - 1) * TextLines.Spacing)),
        ]);
    }

    private static ImmutableArray<PictureItem> Rings(Outline outline, ImmutableArray<MeasureMarks.Mark> marks, Affine place)
    {
        var rings = new NumberedPlaces();
        var shown = Numbered(outline)
            .SelectMany(r => r.Repair.Places.Take(PlacesDrawn).Select((p, i) => (Place: place.Apply(p), Number: r.First + i)))
            .ToList();
        foreach (var at in shown.Select(s => s.Place).Concat(marks.Select(m => m.Place))) rings.Keep(at);
        foreach (var mark in marks) rings.Add(mark.Place, mark.Letter, PictureColours.Measure);
        foreach (var (at, number) in shown) rings.Add(at, NumberedPlaces.Label(number), PictureColours.Repaired);
        return [.. marks.Select(m => m.Line).OfType<PictureItem>(), .. rings.Items];
    }

    private static ImmutableArray<string> Legend(Outline outline, ImmutableArray<MeasureMarks.Mark> marks)
    {
        var letters = TextLines.LettersIn(PageWidth - 2 * Margin);
        var region = outline.Region;
        return
        [
            .. TextLines.Wrap(
                FormattableString.Invariant(
                    $"{CountText.Format(outline.LoopCount, "closed loop")}: ")
                    + FormattableString.Invariant(
                        $"{CountText.Format(region.Islands.Length, "island")}, ")
                        + FormattableString.Invariant($"{CountText.Format(region.HoleCount, "hole")}. Unit: {outline.Units}."),
                        letters),
            .. TextLines.Wrap(marks.IsEmpty ? "" : string.Join("; ", marks.Select(m => m.Words)) + ".", letters),
            .. Numbered(outline).SelectMany(r => TextLines.Wrap($"{Numbers(r)}{r.Repair.Message}", letters)),
            .. outline.Notes.SelectMany(n => TextLines.Wrap($"Note: {n.Message}", letters)),
        ];
    }

    /// <summary>Each repair with the number of its first place.</summary>
    private static IEnumerable<(Repair Repair, int First)> Numbered(Outline outline)
    {
        var next = 1;
        foreach (var repair in outline.Repairs)
        {
            yield return (repair, next);
            next += repair.Places.Length;
        }
    }

    private static string Numbers((Repair Repair, int First) r) => r.Repair.Places.Length switch
    {
        0 => "Repaired: ",
        1 => FormattableString.Invariant($"{r.First}: "),
        <= PlacesDrawn => FormattableString.Invariant($"{r.First} to {r.First + r.Repair.Places.Length - 1}: "),
        _ => FormattableString.Invariant($"{r.First} to {r.First + r.Repair.Places.Length - 1} (the first {PlacesDrawn} ")
            + "are shown): ",
    };
}
