using BuckGen.Design.Bucks;
using BuckGen.Geometry;

namespace BuckGen.Cutting.CutPaths;

/// <summary>A layer of the stack as a drawing, nominal size, in the design's own coordinates.</summary>
public static class LayerDrawing
{
    /// <summary>Marks first, then holes, then outer edges. What is marked on its back is shown from there.</summary>
    public static CutDrawing Create(Layer layer)
    {
        ArgumentNullException.ThrowIfNull(layer);
        IEnumerable<CutPath> paths =
        [
            .. layer.SandTo.Select(l => CutPath.FromLoop(CutLayer.Mark, l)),
            .. layer.GlueUp.Select(l => CutPath.FromLoop(CutLayer.Mark, l)),
            .. layer.Parts.SelectMany(p => p.Strokes).Select(s => CutPath.FromStroke(CutLayer.Mark, s)),
            .. layer.Parts.SelectMany(p => p.Vents)
                .Select(v => CutPath.FromLoop(CutLayer.Vent, Loop.Circle(v.Centre, v.Diameter / 2))),
            .. layer.Parts.SelectMany(p => p.Dowels)
                .Select(d => CutPath.FromLoop(CutLayer.Dowel, Loop.Circle(d.Centre, d.Diameter / 2))),
            .. layer.Parts.SelectMany(p => p.Shape.Holes).Select(h => CutPath.FromLoop(CutLayer.CutInner, h)),
            .. layer.Parts.Select(p => CutPath.FromLoop(CutLayer.CutOuter, p.Shape.Outer)),
        ];
        var what = layer.Name.Length == 0 ? FormattableString.Invariant($"Layer {layer.Number}")
            : FormattableString.Invariant($"{layer.Name} {layer.Number}");
        var title = FormattableString.Invariant($"{what}, {layer.Stock.Name}, {layer.Thickness:0.###} mm, nominal size");
        return layer.MarkedOnBack
            ? new(title + ", seen from the back: cut it with its face down", [.. paths.Select(p => p.Transformed(layer.ToBack))],
                layer.Region.Bounds)
            : new(title, [.. paths], layer.Region.Bounds);
    }
}
