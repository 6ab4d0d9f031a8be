using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Trimming;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures;

/// <summary>
/// The buck cut through where it, or its cavity, is widest: the layers as they are cut, the drafted wall they are sanded to,
/// depth, height and draft.
/// </summary>
internal static class SectionPicture
{
    private const double MaxHeight = 90, Below = 14, Above = 12, Sides = 34;

    /// <summary>Room for the line about the finished part, mm on paper.</summary>
    private const double PartLine = 5;

    /// <summary>Lines that are tried for the section.</summary>
    private const int Candidates = 41;

    private static readonly Ink Plate = new(PictureColours.Black, 0.25, PictureColours.Board);
    private static readonly Ink Wall = new(PictureColours.Black, 0.25, PictureColours.Wood);
    private static readonly Ink Smooth = new(PictureColours.Measure, 0.4);
    private static readonly Ink Trim = new(PictureColours.Repaired, 0.4);

    /// <summary>
    /// Where the section runs: y in the design's coordinates, through the cavity of a female buck and the wood of a male one;
    /// null for a design without layers.
    /// </summary>
    public static double? CutAt(BuckDesign design) =>
        Walls(design) is [var lowest, ..] && (Cavity(design) ?? lowest.Region) is { IsEmpty: false } region
            ? LevelCut.FindBestHeight(region, Candidates) : null;

    /// <summary>The floor of a cavity, or its mouth when it has none; null for a male buck.</summary>
    private static Region? Cavity(BuckDesign design) => design.Solid is { Kind: BuckKind.Female, Shape: var shape }
        ? shape.At(shape.Foot) is { IsEmpty: false } floor ? floor : shape.At(shape.Face)
        : null;

    /// <summary>The picture; null for a design without layers.</summary>
    public static Picture? Draw(BuckDesign design)
    {
        if (CutAt(design) is not { } cut) return null;
        var plan = design.Layers.Aggregate(Bounds.Nothing, (b, l) => b.With(l.Region.Bounds));
        // The section's own plane: x as in the plan, y upward from the bottom of the stack.
        var view = PaperView.Centred(new(plan.MinX, 0, plan.MaxX, design.Height), MaxHeight, Below, Sides, Sides);
        var page = new Bounds(0, 0, PaperView.PageWidth, Below + view.Height + Above + (PartText(design).Any() ? PartLine : 0));
        return new("Section A-A", page,
        [
            .. design.Layers.SelectMany(l => Slabs(l, cut, view)),
            .. SmoothWall(design, cut, view),
            .. TrimLine(design, view),
            .. Sizes(design, view),
            new PictureText(new(PaperView.Margin, page.MaxY - 4),
                $"Section A-A. Blue: the wall after sanding, {SideText.Draft(design)}."
                    + (TrimHeight(design) is null ? "" : " Red: the cut."), TextLines.Height,
                    TextAlign.Start, PictureColours.Black),
            .. PartText(design).Select(t => new PictureText(
                new(PaperView.Margin, page.MaxY - 4 - PartLine), t, TextLines.Height, TextAlign.Start, PictureColours.Black)),
            view.ScaleAt(page.MaxY - 4),
        ]);
    }

    private static Layer[] Walls(BuckDesign design) => [.. design.Layers.Where(l => l.Role == LayerRole.Wall)];

    private static IEnumerable<PictureItem> Slabs(Layer layer, double cut, PaperView view) =>
        LevelCut.Find(layer.Region, cut).Select(s =>
        new PictureShape([new(Loop.Rectangle(new(s.From, layer.Bottom, s.To, layer.Top)).Transformed(view.Map).Segments, true)],
            layer.Role == LayerRole.Wall ? Wall : Plate));

    /// <summary>
    /// From edge to edge of the drafted outlines at the layers' faces, as long as the number of edges stays the same.
    /// </summary>
    private static IEnumerable<PictureItem> SmoothWall(BuckDesign design, double cut, PaperView view)
    {
        if (design.Solid?.Finished is not { } solid) yield break;
        var heights = solid.Shape.WithBends([.. Walls(design).Select(l => l.Bottom), design.Height]);
        var faces = heights
            .Select(h =>
                (Height: h, Edges: LevelCut.Find(solid.Shape.At(h), cut).SelectMany(s => (double[])[s.From, s.To]).ToArray()))
                    .ToArray();
        foreach (var (low, high) in faces.Zip(faces.Skip(1)))
            if (low.Edges.Length == high.Edges.Length)
                foreach (var (from, to) in low.Edges.Zip(high.Edges))
                    yield return PictureShape.Line(view.Map.Apply(new(from, low.Height)),
                        view.Map.Apply(new(to, high.Height)), Smooth);
    }

    /// <summary>Height at which the part is cut, above the bottom of the stack; null when its flange stays.</summary>
    private static double? TrimHeight(BuckDesign design)
    {
        if (design is not { Part.Cut: { Tool: not TrimTool.None } cut, Solid.Shape: { } shape }) return null;
        var onWood = cut.Height / (1 - design.Spec.ShrinkageOfPart / 100);
        return design.Spec.Kind == BuckKind.Male ? shape.Foot + onWood : shape.Face - onWood;
    }

    private static IEnumerable<PictureItem> TrimLine(BuckDesign design, PaperView view)
    {
        if (TrimHeight(design) is not { } height) yield break;
        var y = view.Map.Apply(new(0, height)).Y;
        yield return PictureShape.Line(new(view.Corner.X - 3, y), new(view.Corner.X + view.Width + 3, y), Trim);
    }

    private static IEnumerable<string> PartText(BuckDesign design)
    {
        string[] lines =
        [
            .. design.Part is not { Mouth.Inside: { IsEmpty: false } mouth } part ? []
                : (string[])[FormattableString.Invariant(
                    $"The finished part is {mouth.Bounds.Width:0.#} x {mouth.Bounds.Height:0.#} mm inside ")
                    + FormattableString.Invariant($"at its mouth and {part.InsideDepth:0.#} mm deep.")],
            .. design.Spec.EdgeRadius == 0 ? Array.Empty<string>()
                : [FormattableString.Invariant($"The edge radius is {design.Spec.EdgeRadius:0.##} mm.")],
        ];
        return lines.Length == 0 ? [] : [string.Join(' ', lines)];
    }

    private static IEnumerable<PictureItem> Sizes(BuckDesign design, PaperView view)
    {
        var foot = Walls(design)[0].Bottom;
        var (left, right) = (view.Corner.X - 5, view.Corner.X + view.Width + 5);
        foreach (var item in
            Dimension.Upright(new(left, view.Map.Apply(new(0, foot)).Y), new(left, view.Corner.Y + view.Height),
                design.Height - foot)) yield return item;
        if (foot > 0)
            foreach (var item in
                Dimension.Upright(new(right, view.Corner.Y), new(right, view.Corner.Y + view.Height), design.Height,
                    TextAlign.Start)) yield return item;
        foreach (var item in
            Dimension.Level(view.Corner - new Vec2(0, 7), view.Corner + new Vec2(view.Width, -7), view.Real.Width))
            yield return item;
    }
}
