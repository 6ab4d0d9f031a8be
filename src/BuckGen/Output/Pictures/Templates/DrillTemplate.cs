using System.Collections.Immutable;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures.Templates;

/// <summary>
/// The vents at full size on paper: laid on the buck, each cross is pricked through and drilled. The edges of the layers show
/// where it goes, a line of known length whether the printer kept the size.
/// </summary>
internal static class DrillTemplate
{
    private const double Margin = 12;
    private const double CheckLength = 100;
    private const double CrossReach = 2.5;

    private static readonly Ink Edge = new(PictureColours.Grey, 0.2);
    private static readonly Ink TopEdge = new(PictureColours.Black, 0.35);
    private static readonly Ink Cross = new(PictureColours.Repaired, 0.18);
    private static readonly Ink DowelInk = new(PictureColours.Grey, 0.18) { Dashes = [1, 1] };

    /// <summary>The template, seen from above; null for a design without vents.</summary>
    /// <param name="design">The design.</param>
    /// <param name="title">What the job is called; empty for the outline's name.</param>
    public static Picture? Draw(BuckDesign design, string title = "")
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(title);
        if (design.Vents is not { Vents.IsEmpty: false } vents) return null;
        var heading = Heading(design, title);
        var drawn = Drawn(design);
        // Under the drawing: the line to check the size by, then the words.
        var width = Math.Max(drawn.Width, CheckLength + 20);
        var letters = TextLines.LettersIn(width);
        var words = Words(vents)
            .Prepend("Print at 100 %, without fitting to the page, and measure the line above before use: it must be 100 "
                + "mm long.")
            .SelectMany(w => TextLines.Wrap(w, letters)).ToImmutableArray();
        var foot = words.Length * TextLines.Spacing + 12;
        var page = new Bounds(drawn.MinX - Margin, drawn.MinY - Margin - foot, drawn.MinX + width + Margin,
            drawn.MaxY + Margin + 8);
        return new($"{heading}, full size", page,
        [
            .. Items(design, vents),
            new PictureText(new(drawn.MinX, page.MaxY - Margin), heading, TextLines.TitleToFit(heading, width), TextAlign.Start,
                PictureColours.Black),
            .. CheckLine(new(drawn.MinX, page.MinY + foot - 2)),
            .. TextLines.Set(words, new(drawn.MinX, page.MinY + Margin / 2 + (words.Length - 1) * TextLines.Spacing)),
        ]);
    }

    /// <summary>
    /// The same for printing over several pages: only the drawing, its words apart; null for a design without vents.
    /// </summary>
    /// <param name="design">The design.</param>
    /// <param name="title">What the job is called; empty for the outline's name.</param>
    public static PaperTemplate? ForPaper(BuckDesign design, string title = "") =>
        design.Vents is not { Vents.IsEmpty: false } vents ? null : new(
        new(Heading(design, title), Drawn(design).Grown(2), [.. Items(design, vents)]),
        [.. Words(vents)
            .Prepend("Lay it on the buck, edge on edge, prick each cross through and drill there. Black: the top layer's "
                + "edge. Grey: the layers below.")]);

    private static string Heading(BuckDesign design, string title) =>
        $"{(title.Length > 0 ? title : design.Outline.Name)}: drilling template";

    private static IEnumerable<Layer> Shown(BuckDesign design) => design.Layers.Where(l => l.Role != LayerRole.Plenum);

    private static Bounds Drawn(BuckDesign design) => Shown(design).Aggregate(Bounds.Nothing, (b, l) => b.With(l.Region.Bounds));

    private static IEnumerable<PictureItem> Items(BuckDesign design, VentDesign vents)
    {
        var shown = Shown(design).ToImmutableArray();
        return
        [
            .. shown.Select(l => PictureShape.FromRegion(l.Region, l == shown[^1] ? TopEdge : Edge)),
            .. shown.SelectMany(l => l.Parts).SelectMany(p => p.Dowels).DistinctBy(d => d.Centre)
                .Select(d => PictureShape.Circle(d.Centre, d.Diameter / 2, DowelInk)),
            .. vents.Vents.SelectMany(Drawn),
        ];
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
        foreach (var end in (Vec2[])[left, right])
            yield return PictureShape.Line(end - new Vec2(0, 2), end + new Vec2(0, 2), TopEdge);
        yield return new PictureText(right + new Vec2(3, -1), FormattableString.Invariant($"{CheckLength:0} mm"),
            TextLines.Height, TextAlign.Start, PictureColours.Black);
    }

    private static string Reasons(IEnumerable<Vent> vents) =>
        string.Join(", ", vents.GroupBy(v => v.Reason).OrderBy(r => r.Key)
            .Select(r => $"{r.Count()} {Quantities.Words.Format(r.Key)}"));

    private static IEnumerable<string> Words(VentDesign vents) =>
    [
        .. vents.Vents.GroupBy(v => (v.Layer, v.Diameter)).OrderBy(g => g.Key).Select(g => FormattableString.Invariant(
            $"Layer {g.Key.Layer}, from above: {g.Count()} vents, drill {vents.DrillText} ({Reasons(g)}).")),
        "Dashed: dowels, not to be drilled into. Wear eye protection and keep the dust away.",
    ];
}
