using System.Collections.Immutable;
using BuckGen.Design;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures.Thickness;

/// <summary>
/// The predicted thickness of the formed part, seen from above: bands of colour, the thinnest place, webs, and places not
/// reached.
/// </summary>
public static class ThicknessMap
{
    private const double MaxHeight = 110, Below = 26, Above = 10;

    private static readonly Ink Edge = new(PictureColours.Black, 0.3),
        Frame = new(PictureColours.Grey, 0.25) { Dashes = [3, 1.5] };

    /// <summary>The picture; null for a design whose part was not predicted, or not to the end.</summary>
    /// <param name="design">The design.</param>
    public static Picture? Draw(BuckDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        if (design.Formed is not { IsConverged: true } part) return null;
        var real = part.Points.Aggregate(Bounds.Nothing, (b, p) => b.With(new Vec2(p.X, p.Y)));
        var view = PaperView.Centred(real, MaxHeight, Below, 0);
        var page = new Bounds(0, 0, PaperView.PageWidth, Below + view.Height + Above);
        var scale = ThicknessScale.ForPart(part);
        return new("Predicted thickness, seen from above", page,
        [
            .. ThicknessBands.Draw(part, scale, p => view.Map.Apply(new(p.X, p.Y))),
            .. Outlines(design, view),
            new PictureShape([new(Loop.Rectangle(real).Transformed(view.Map).Segments, true)], Frame),
            .. Places(part, view),
            .. scale.Legend(new(PaperView.Margin + 4, 10)),
            new PictureText(new(PaperView.Margin, page.MaxY - 4),
                FormattableString.Invariant(
                    $"Sheet of {part.Gauge:0.##} mm; T: thinnest place, W: web, B: sheet stands off the buck"), TextLines.Height,
                    TextAlign.Start, PictureColours.Black),
            view.ScaleAt(page.MaxY - 4),
        ]);
    }

    /// <summary>Face and foot of the walls, which lie under the colours.</summary>
    private static IEnumerable<PictureItem> Outlines(BuckDesign design, PaperView view) =>
        ((IEnumerable<Region>)[design.Footprint, .. design.Solid is { } solid ? [solid.Shape.At(solid.Shape.Face)]
            : Array.Empty<Region>()])
            .Where(r => !r.IsEmpty).Select(r => PictureShape.FromRegion(r.Transformed(view.Map), Edge));

    private static ImmutableArray<PictureItem> Places(FormedPart part, PaperView view)
    {
        var places = new NumberedPlaces();
        if (part.Thinnest is { } thin) places.Add(view.Map.Apply(thin.Place), "T", PictureColours.Repaired);
        foreach (var web in part.Webs) places.Add(view.Map.Apply(web.Place), "W", PictureColours.Repaired);
        foreach (var bridge in part.Bridged) places.Add(view.Map.Apply(bridge.Place), "B", PictureColours.Repaired);
        return places.Items;
    }
}
