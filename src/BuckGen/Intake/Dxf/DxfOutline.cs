using System.Collections.Immutable;
using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Dxf;

/// <summary>Reads the drawn paths of a DXF drawing.</summary>
internal static class DxfOutline
{
    /// <summary>The paths of a DXF drawing in millimetres.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="name">Name of the file, for messages.</param>
    /// <param name="options">The unit, when the file's own is wrong, and the layers to read.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OutlineException">An outline is not level, blocks grow beyond the limit, or the size shows that the unit
    /// is wrong.</exception>
    public static Drawing Read(DxfDrawing drawing, string name, OutlineOptions options, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(options);
        var scale = DxfScale.FromDrawing(drawing, options.Units);
        var blocks = new BlockSizes(drawing, name);
        blocks.RefuseRunaway();
        var leftOut = new LeftOut();
        var placed = new PlacedEntities(blocks, new(drawing, options), leftOut, cancellation)
            .Enumerate(drawing.Entities, Affine.Scaling(scale.MillimetresPerUnit, default)).ToList();
        var paths = Paths(placed, leftOut, cancellation);
        // A filled area repeats the outline round it, as a rule; it counts only where nothing else is drawn.
        var hatches = placed.Where(p => p.Entity is DxfHatch).ToList();
        if (paths.IsEmpty) paths = [.. hatches.SelectMany(HatchPaths)];
        else hatches.ForEach(h => leftOut.Add("hatch-ignored", h.Entity, h.Layer));

        var bounds = Drawing.BoundsOf(paths, cancellation);
        if (!options.IsSized) scale.RefuseUnlikelySize(bounds, name);
        // A size that is asked for makes the unit idle.
        ReadNote?[] unit = [paths.IsEmpty || options.IsSized ? null : scale.Note(bounds)];
        return new(paths, scale.Words,
            [.. drawing.Notes.Select(n => new ReadNote("dxf-oddity", n.Line > 0 ? $"line {n.Line}: {n.Message}" : n.Message)),
                .. leftOut.Notes, .. unit.OfType<ReadNote>()]);
    }

    private static ImmutableArray<DrawnPath> Paths(List<PlacedEntity> placed, LeftOut leftOut, CancellationToken cancellation)
    {
        var paths = ImmutableArray.CreateBuilder<DrawnPath>();
        foreach (var (entity, layer, map) in placed)
        {
            cancellation.ThrowIfCancellationRequested();
            if (EntityCurves.FromEntity(entity) is { } curves)
            {
                paths.Add(PathOf(curves, entity, layer, map, paths.Count));
                Remark(entity, layer, leftOut);
            }
            else if (entity is DxfText)
                leftOut.Add("text-ignored", entity, layer, "Convert text to outlines first if it is to be cut.");
            else if (entity is DxfPolyline)
                leftOut.AddWords("entity-ignored", $"polygon mesh ({entity.Type}) on layer {Excerpt.Shorten(layer)}", "");
            else if (entity is not DxfHatch) leftOut.Add("entity-ignored", entity, layer);
        }

        return paths.ToImmutable();
    }

    private static DrawnPath PathOf(EntityCurves curves, DxfEntity entity, string layer, Affine map, int shape) =>
        new([.. curves.Curves.Select(c => c.Transformed(map))], curves.Closed, $"{entity.Type} at line {entity.Line}",
            layer, shape);

    private static void Remark(DxfEntity entity, string layer, LeftOut leftOut)
    {
        if (entity is DxfPolyline { HasWidth: true })
            leftOut.AddWords("width-ignored", $"line width of {entity.Type} on layer {Excerpt.Shorten(layer)}",
                "The middle of a wide line counts.");
        if (entity is DxfSpline spline && SplineCurves.IsFitOnly(spline))
            leftOut.Report("spline-through-points",
                $"The SPLINE at line {entity.Line} gives only points to pass through; a smooth curve was put through them. "
                + "Check it, or save the drawing with control points.");
    }

    private static IEnumerable<DrawnPath> HatchPaths(PlacedEntity placed)
    {
        var (hatch, layer, map) = placed;
        var toDrawing = FlatPlane.MapOf(hatch).Then(map);
        return ((DxfHatch)hatch).Paths.SelectMany((path, number) => path.Edges.Select(edge => (edge, number)))
            .Select(e =>
                PathOf(EntityCurves.FromEntity(e.edge)!, e.edge, layer, toDrawing,
                    e.number) with
                { Source = $"HATCH at line {hatch.Line}" });
    }
}
