using System.Collections.Immutable;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures;

/// <summary>
/// The buck from above: every layer's edge, vents and dowels, its size, where the section runs, and a numbered ring at each
/// kind of finding.
/// </summary>
internal static class PlanPicture
{
    private const double MaxHeight = 130, Below = 22, Above = 10, Beside = 6, FurtherRadius = 1.1;

    private static readonly Ink Plate = new(PictureColours.Grey, 0.25, PictureColours.Board);
    private static readonly Ink Wall = new(PictureColours.Black, 0.25, PictureColours.Wood);
    private static readonly Ink DowelInk = new(PictureColours.Grey, 0.2) { Dashes = [1, 0.8] };
    private static readonly Ink VentInk = new(null, 0, PictureColours.Measure);
    private static readonly Ink FurtherInk = new(PictureColours.White, 0.3, PictureColours.Repaired);
    private static readonly Ink SectionInk = new(PictureColours.Black, 0.35) { Dashes = [6, 1, 1, 1] };

    /// <summary>The picture.</summary>
    /// <param name="design">The design.</param>
    /// <param name="findings">All findings, numbered as they are listed.</param>
    public static Picture Draw(BuckDesign design, ImmutableArray<Finding> findings)
    {
        BuckDesign[] bucks = design.Groups.IsEmpty ? [design] : [.. design.Groups.Select(g => g.Design)];
        // Plates of neighbours may overlap in the sign; what stands on them is drawn over all plates.
        var shown = bucks.SelectMany(b => b.Layers).Where(l => l.Role != LayerRole.Plenum)
            .OrderBy(l => !design.Groups.IsEmpty && l.Role != LayerRole.Base).ToArray();
        var wood = shown.Aggregate(Bounds.Nothing, (b, l) => b.With(l.Region.Bounds)).With(design.Footprint.Bounds);
        // Where no wood is left at all, the page still has the size of what was drawn.
        var view = View(wood == Bounds.Nothing ? design.Outline.Region.Bounds : wood, design.Footprint.Bounds.Height);
        var page = new Bounds(0, 0, PaperView.PageWidth, Below + view.Height + Above);
        return new("Plan, seen from above", page,
        [
            .. shown.Select(l =>
                PictureShape.FromRegion(l.Region.Transformed(view.Map), l.Role == LayerRole.Base ? Plate : Wall)),
            .. shown.SelectMany(l => l.Parts).SelectMany(p => p.Dowels).Distinct()
                .Select(d =>
                    PictureShape.Circle(view.Map.Apply(d.Centre), Math.Max(0.5, d.Diameter / 2 * view.Scale.Factor), DowelInk)),
            .. bucks.SelectMany(b => b.Vents?.Vents ?? [])
                .Select(v =>
                    PictureShape.Circle(view.Map.Apply(v.Centre), Math.Max(0.45, v.Diameter / 2 * view.Scale.Factor), VentInk)),
            .. design.Groups.Select(g => new PictureText(
                new(view.Map.Apply(g.Design.Footprint.Bounds.Centre).X, Below + view.Height + 1.5),
                FormattableString.Invariant($"buck {g.Number}"), TextLines.Height, TextAlign.Middle, PictureColours.Black)),
            .. SectionLine(design, view),
            .. Sizes(design, view),
            .. Rings(findings, view),
            view.ScaleAt(page.MaxY - 4),
        ]);
    }

    /// <summary>As large as the page allows with the height of the footprint beside it.</summary>
    private static PaperView View(Bounds real, double height)
    {
        var view = PaperView.Centred(real, MaxHeight, Below);
        // Text that stands level needs more room; at a smaller scale it may have to, though it stood upright before.
        for (var i = 0; i < 2; i++)
        {
            var room = Beside + Dimension.RoomBeside(height, height * view.Scale.Factor);
            if (room <= view.Corner.X) break;
            view = PaperView.Centred(real, MaxHeight, Below, room - PaperView.Margin);
        }

        return view;
    }

    /// <summary>A thin chain line with its letter at both ends (ISO 128 line types, from memory).</summary>
    private static IEnumerable<PictureItem> SectionLine(BuckDesign design, PaperView view)
    {
        if (SectionPicture.CutAt(design) is not { } height) yield break;
        var y = view.Map.Apply(new(0, height)).Y;
        var (left, right) = (new Vec2(view.Corner.X - 3, y), new Vec2(view.Corner.X + view.Width + 3, y));
        yield return PictureShape.Line(left, right, SectionInk);
        yield return new PictureText(left + new Vec2(0, 1), "A", TextLines.Height, TextAlign.Middle, PictureColours.Black);
        yield return new PictureText(right + new Vec2(0, 1), "A", TextLines.Height, TextAlign.Middle, PictureColours.Black);
    }

    /// <summary>The part's footprint first, what the whole takes outside it.</summary>
    private static IEnumerable<PictureItem> Sizes(BuckDesign design, PaperView view)
    {
        var footprint = design.Footprint.Bounds;
        if (!design.Footprint.IsEmpty)
        {
            var (left, right) = (view.Map.Apply(footprint.LowerLeft), view.Map.Apply(new(footprint.MaxX, footprint.MinY)));
            foreach (var item in
                Dimension.Level(new(left.X, view.Corner.Y - 7), new(right.X, view.Corner.Y - 7), footprint.Width))
                yield return item;
            var (low, high) = (view.Map.Apply(footprint.LowerLeft), view.Map.Apply(new(footprint.MinX, footprint.MaxY)));
            foreach (var item in
                Dimension.Upright(new(view.Corner.X - Beside, low.Y), new(view.Corner.X - Beside, high.Y), footprint.Height))
                yield return item;
        }

        if (view.Real == footprint) yield break;
        foreach (var item in
            Dimension.Level(view.Corner - new Vec2(0, 14), view.Corner + new Vec2(view.Width, -14), view.Real.Width))
            yield return item;
    }

    /// <summary>A numbered ring at the first place of each kind of finding, dots at the others.</summary>
    private static ImmutableArray<PictureItem> Rings(ImmutableArray<Finding> findings, PaperView view)
    {
        var kinds = findings.Where(f => f.Place is not null).GroupBy(f => f.Number)
            .Select(k => (Number: NumberedPlaces.Label(k.Key), Places: k.Select(f => view.Map.Apply(f.Place!.Value)).ToArray()))
            .ToArray();
        var rings = new NumberedPlaces();
        foreach (var (_, places) in kinds) rings.Keep(places[0]);
        foreach (var (number, places) in kinds)
            rings.AddLink(
                places[0], number, PictureColours.Repaired, $"place-{number}", $"finding-{number}", $"Finding {number}");
        return
        [
            .. kinds.SelectMany(k => k.Places.Skip(1)).Select(p => PictureShape.Circle(p, FurtherRadius, FurtherInk)),
            .. rings.Items,
        ];
    }
}
