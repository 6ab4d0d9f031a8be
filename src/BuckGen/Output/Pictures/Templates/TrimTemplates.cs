using System.Collections.Immutable;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Trimming;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Pdf;

namespace BuckGen.Output.Pictures.Templates;

/// <summary>Lines at full size along which the part is trimmed and its panel opened, all seen from above the buck.</summary>
internal static class TrimTemplates
{
    /// <summary>Smaller letters are hard to read, mm; common practice, no source.</summary>
    private const double MinHeight = 1.5;

    private static readonly Ink Cut = new(PictureColours.Black, 0.35);
    private static readonly Ink Wall = new(PictureColours.Grey, 0.2) { Dashes = [3, 1.5] };

    /// <summary>One for each of flange, ring and panel that the design has.</summary>
    /// <param name="design">The design.</param>
    /// <param name="title">What the job is called; empty for the outline's name.</param>
    public static ImmutableArray<PaperTemplate> Create(BuckDesign design, string title = "")
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(title);
        var name = title.Length > 0 ? title : design.Outline.Name;
        var view = design.Spec.Kind == BuckKind.Male
            ? "Seen from above the buck, as one looks at the part's face."
            : "Seen from above the buck, as one looks into the part; for the view of its face turn the paper over.";
        var made = ImmutableArray.CreateBuilder<PaperTemplate>();
        if (design.Flange is { } flange)
            made.Add(Template($"{name}: trim line of the flange", flange.TrimLine, design.Footprint, "TRIM", view,
                "Black: the finished edge of the flange. Dashed: the drawn outline where the wall meets the flange."));
        if (design.Jig is { TrimLine.IsEmpty: false } jig)
            made.Add(Template($"{name}: trim line of the part", jig.TrimLine, Region.Empty, "TRIM", view,
                FormattableString.Invariant(
                    $"Black: the part's outside where it is cut, {Math.Round(jig.Height, 2):0.##} mm above the ")
                    + $"{FlangeFaceText.Format(jig.HeightFrom)}. Lay the trimmed part on it: it covers the line."));
        if (design.Panel is { Opening.IsEmpty: false } panel)
            made.Add(Template($"{name}: opening of the panel", panel.Opening, Region.Empty, "OPEN", view,
                FormattableString.Invariant(
                    $"Black: what is cut out of the panel, {Math.Round(panel.Fit, 2):0.##} mm wider than the part on ")
                    + "every side."));
        return made.ToImmutable();
    }

    private static PaperTemplate Template(string heading, Region line, Region wall, string label, string view, string words) =>
        new(
        new(heading, line.Bounds.With(wall.Bounds).Grown(2),
        [
            .. wall.IsEmpty ? Array.Empty<PictureItem>() : [PictureShape.FromRegion(wall, Wall)],
            PictureShape.FromRegion(line, Cut),
            .. line.Islands.SelectMany(i => Label(i, label)),
        ]),
        [words, view]);

    /// <summary>A word in the middle of a piece, or in its widest place; none where it would be too small to read.</summary>
    private static IEnumerable<PictureText> Label(Island piece, string label)
    {
        // No wider than two pages overlap, so that a seam never cuts it on both.
        var height = Helvetica.HeightToFit(label, TileGrid.Overlap - 0.5, TextLines.TitleHeight);
        var middle = piece.Outer.Bounds.Centre;
        if (!piece.Contains(middle) || piece.Loops.Min(l => l.DistanceTo(middle)) < TileGrid.Overlap)
        {
            var widest = LargestCircle.In(piece);
            (middle, height) = (widest.Centre, Helvetica.HeightToFit(label, widest.Radius * 1.6, height));
        }

        if (height >= MinHeight)
            yield return new(middle - new Vec2(0, height / 3), label, height, TextAlign.Middle, PictureColours.Grey);
    }
}
