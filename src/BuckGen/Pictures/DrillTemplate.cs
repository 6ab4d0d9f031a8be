using System.Collections.Immutable;
using BuckGen.Bucks;
using BuckGen.Designs;
using BuckGen.Geometry;
using BuckGen.Venting;

namespace BuckGen.Pictures;

/// <summary>
/// The vents in real size on paper: laid on the buck, each cross is pricked through and drilled. The edges of the layers show
/// where it goes, a line of known length whether the printer kept the size.
/// </summary>
internal static class DrillTemplate
{
    private const double Margin = 12;
    private const double CheckLength = 100;
    private const double CrossReach = 2.5;

    private static readonly Ink Edge = new(PictureColours.Grey, 0.2);
    private static readonly Ink TopEdge = new(PictureColours.Black, 0.35);
    private static readonly Ink Cross = new(PictureColours.Mended, 0.18);
    private static readonly Ink DowelInk = new(PictureColours.Grey, 0.18) { Dashes = [1, 1] };

    /// <summary>The template, seen from above; null for a design without vents.</summary>
    /// <param name="design">The design.</param>
    /// <param name="title">What the job is called; empty for the outline's name.</param>
    public static Picture? Of(BuckDesign design, string title = "")
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(title);
        var name = title.Length > 0 ? title : design.Outline.Name;
        if (design.Vents is not { Vents.IsEmpty: false } vents) return null;
        var heading = $"{name}: drilling template";
        var shown = design.Layers.Where(l => l.Role != LayerRole.Plenum).ToImmutableArray();
        var drawn = shown.Aggregate(Bounds.Nothing, (b, l) => b.With(l.Region.Bounds));
        // Under the drawing: the line to check the size by, then the words.
        var width = Math.Max(drawn.Width, CheckLength + 20);
        var words = Words(vents, TextLines.LettersIn(width));
        var foot = words.Length * TextLines.Spacing + 12;
        var page = new Bounds(drawn.MinX - Margin, drawn.MinY - Margin - foot, drawn.MinX + width + Margin, drawn.MaxY + Margin + 8);
        return new($"{name}: drilling template, real size", page,
        [
            .. shown.Select(l => PictureShape.Of(l.Region, l == shown[^1] ? TopEdge : Edge)),
            .. shown.SelectMany(l => l.Parts).SelectMany(p => p.Dowels).DistinctBy(d => d.Centre).Select(d => PictureShape.Circle(d.Centre, d.Diameter / 2, DowelInk)),
            .. vents.Vents.SelectMany(Drawn),
            new PictureText(new(drawn.MinX, page.MaxY - Margin), heading, TextLines.TitleToFit(heading, width), TextAlign.Start, PictureColours.Black),
            .. CheckLine(new(drawn.MinX, page.MinY + foot - 2)),
            .. TextLines.Set(words, new(drawn.MinX, page.MinY + Margin / 2 + (words.Length - 1) * TextLines.Spacing)),
        ]);
    }

    private static IEnumerable<PictureItem> Drawn(Vent vent)
    {
        yield return PictureShape.Circle(vent.Centre, vent.Diameter / 2, Cross);
        yield return PictureShape.Line(vent.Centre - new Vec2(CrossReach, 0), vent.Centre + new Vec2(CrossReach, 0), Cross);
        yield return PictureShape.Line(vent.Centre - new Vec2(0, CrossReach), vent.Centre + new Vec2(0, CrossReach), Cross);
    }

    private static IEnumerable<PictureItem> CheckLine(Vec2 left)
    {
        var right = left + new Vec2(CheckLength, 0);
        yield return PictureShape.Line(left, right, TopEdge);
        foreach (var end in (Vec2[])[left, right]) yield return PictureShape.Line(end - new Vec2(0, 2), end + new Vec2(0, 2), TopEdge);
        yield return new PictureText(right + new Vec2(3, -1), FormattableString.Invariant($"{CheckLength:0} mm"), TextLines.Height, TextAlign.Start, PictureColours.Black);
    }

    private static ImmutableArray<string> Words(VentDesign vents, int letters) =>
    [
        .. TextLines.Wrap("Print at 100 %, without fitting to the page, and measure the line above before use: it must be 100 mm long.", letters),
        .. vents.Vents.GroupBy(v => (v.Layer, v.Diameter)).OrderBy(g => g.Key).SelectMany(g => TextLines.Wrap(FormattableString.Invariant(
            $"Layer {g.Key.Layer}, from above: {g.Count()} vents of {g.Key.Diameter:0.##} mm ({string.Join(", ", g.GroupBy(v => v.Reason).OrderBy(r => r.Key).Select(r => $"{r.Count()} {Quantities.Words.Of(r.Key)}"))})."), letters)),
        .. TextLines.Wrap("Dashed: dowels, not to be drilled into. Wear eye protection and keep the dust away.", letters),
    ];
}
