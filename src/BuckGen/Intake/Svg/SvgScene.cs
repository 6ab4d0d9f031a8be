using System.Collections.Immutable;
using System.Globalization;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using ShimSkiaSharp;
using Svg;
using Svg.Skia;

namespace BuckGen.Intake.Svg;

/// <summary>Walks the resolved scene and takes over what is drawn.</summary>
internal sealed class SvgScene
{
    // Half a unit in the last place of the libraries' single-precision numbers, as a share of the number.
    private const double SingleError = 1.0 / (1 << 24);
    // A shape with a larger error, mm, is reported; this is well below what a cutter resolves.
    private const double MaxError = 0.002;

    private readonly ImmutableArray<DrawnPath>.Builder paths = ImmutableArray.CreateBuilder<DrawnPath>();
    private readonly PreparedSvg page;
    private readonly SvgNotes notes;
    private readonly CancellationToken cancellation;
    private readonly SvgSources sources;
    private int shapes;

    private SvgScene(PreparedSvg page, SvgNotes notes, CancellationToken cancellation) =>
        (this.page, this.notes, this.cancellation, sources) = (page, notes, cancellation, new(page.Elements));

    /// <summary>The drawn paths of a prepared file, in file order.</summary>
    public static ImmutableArray<DrawnPath> Paths(PreparedSvg page, string file, SvgNotes notes, CancellationToken cancellation)
    {
        var scene = new SvgScene(page, notes, cancellation);
        var root = SvgLibraries.Resolve(page.Document, file, cancellation).Root;
        foreach (var node in root.Children) scene.Walk(node, page.Viewport.ToPage, "", 0);
        return scene.paths.ToImmutable();
    }

    /// <summary>Walks a node.</summary>
    /// <param name="node">The node.</param>
    /// <param name="above">From the space round the node to the page.</param>
    /// <param name="layer">Name of the layer it lies in.</param>
    /// <param name="error">What single precision may have cost so far, mm.</param>
    private void Walk(SvgSceneNode node, Affine above, string layer, double error)
    {
        cancellation.ThrowIfCancellationRequested();
        if (!IsDrawn(node)) return;
        if (node.IsDisplayNone || node.OpacityValue <= 0)
        {
            notes.Count(SvgFinding.Hidden, sources.Describe(node));
            return;
        }

        NoteEffects(node);
        var t = node.Transform;
        var map = new Affine(t.ScaleX, t.SkewY, t.SkewX, t.ScaleY, t.TransX, t.TransY).Then(above);
        error += Math.Max(Math.Abs(t.TransX), Math.Abs(t.TransY)) * Stretch(above) * SingleError;
        layer = sources.LayerOf(node) ?? layer;
        if (node.Kind is SvgSceneNodeKind.Path or SvgSceneNodeKind.Shape) AddShape(node, map, layer, error);
        foreach (var child in node.Children) Walk(child, map, layer, error);
    }

    private void AddShape(SvgSceneNode node, Affine map, string layer, double error)
    {
        if (node.HitTestPath is not { } path) return;
        var source = sources.Describe(node);
        if (!node.IsVisible)
        {
            notes.Count(SvgFinding.Hidden, source);
            return;
        }

        var (filled, stroked) = (Paints(node.Fill), Paints(node.Stroke));
        if (!filled && !stroked)
        {
            notes.Count(SvgFinding.Unpainted, source);
            return;
        }

        if (Math.Abs(map.Determinant) <= 1e-12 * Stretch(map) * Stretch(map))
        {
            notes.Count(SvgFinding.Collapsed, source);
            return;
        }

        var strokes = SvgCurves.Strokes(path);
        error += 2 * strokes.Select(s => s.Reach).DefaultIfEmpty().Max() * Stretch(map) * SingleError;
        if (error > MaxError)
            notes.Count(SvgFinding.FarAway, string.Create(CultureInfo.InvariantCulture, $"{source} (±{error:0.####} mm)"));

        var shape = ++shapes;
        // What is only a line has no inside of its own: each closed loop of it is an edge.
        var rule = filled && path.FillType == SKPathFillType.Winding ? FillRule.NonZero : FillRule.EvenOdd;
        foreach (var stroke in strokes)
        {
            cancellation.ThrowIfCancellationRequested();
            if (stroke.Placed(map, filled, stroked) is { } placed)
                paths.Add(new(placed.Curves, placed.Closed, source, layer, shape, rule)
                {
                    Paint = new(filled ? ColourOf(node.Fill!) : null, stroked),
                });
        }
    }

    private static bool IsDrawn(SvgSceneNode node) => node.Kind switch
    {
        SvgSceneNodeKind.Container or SvgSceneNodeKind.Mask or SvgSceneNodeKind.Marker => false,
        // A symbol only shows where it is used.
        SvgSceneNodeKind.Fragment => node.Parent?.Kind == SvgSceneNodeKind.Use || node.ElementTypeName != "SvgSymbol",
        _ => true,
    };

    private static bool Paints(SKPaint? paint) => paint is { Color: null or { Alpha: > 0 } };

    /// <summary>The plain colour of a paint; null for a gradient, a pattern or one that lets others show through.</summary>
    private static int? ColourOf(SKPaint paint) => paint is { Shader: null, Color: { Alpha: 255 } c }
        ? c.Red << 16 | c.Green << 8 | c.Blue : null;

    private static double Stretch(Affine map) =>
        Math.Max(Math.Sqrt(map.A * map.A + map.B * map.B), Math.Sqrt(map.C * map.C + map.D * map.D));

    private void NoteEffects(SvgSceneNode node)
    {
        if (node.Element is not SvgVisualElement element) return;
        var place = sources.Describe(node);
        if (element.ClipPath is not null || sources.Has(node, "clip-path")) notes.Count(SvgFinding.Clip, place);
        if (element.Filter is not null || sources.Has(node, "filter")) notes.Count(SvgFinding.Filter, place);
        if (sources.Has(node, "mask")) notes.Count(SvgFinding.Mask, place);
        if (element is SvgMarkerElement line && (line.MarkerStart ?? line.MarkerMid ?? line.MarkerEnd) is not null)
            notes.Count(SvgFinding.Marker, place);
    }
}
