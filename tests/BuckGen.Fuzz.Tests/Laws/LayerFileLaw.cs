using BuckGen.Fuzz.Tests.Judging;
using BuckGen.Fuzz.Tests.Runs;

namespace BuckGen.Fuzz.Tests.Laws;

/// <summary>What is written of a layer is that layer: closed loops, as many as it has, where it has them.</summary>
internal sealed class LayerFileLaw : ILaw
{
    public IEnumerable<string> Broken(DesignRun run)
    {
        foreach (var (layer, dxf) in run.Files.Layers)
        {
            var (paths, name) = (DxfText.Read(dxf), $"the file of layer {layer.Role} {layer.Name}{layer.Number}");
            // What is marked on its back is written as seen from there.
            if (layer is { MarkedOnBack: true, Region.Bounds: var box })
                paths = [.. paths.Select(p => p.Before(new(-1, 0, 0, 1, box.MinX + box.MaxX, 0)))];
            if (paths.FirstOrDefault(p => p.Layer != "MARK" && !p.IsClosed) is { } open)
                yield return FormattableString.Invariant($"{name} has an open {open.Layer} at {open.Corners[0].Point}");
            if (paths.SelectMany(p => p.Corners).Any(c => !c.Point.IsFinite || !double.IsFinite(c.Bulge)))
                yield return $"{name} has a coordinate that is no number";
            int[] written = [.. "CUT_OUTER CUT_INNER DOWEL VENT".Split(' ').Select(l => paths.Count(p => p.Layer == l))];
            int[] designed =
                [layer.Parts.Length, layer.Parts.Sum(p => p.Shape.Holes.Length), layer.Parts.Sum(p => p.Dowels.Length),
                    layer.Parts.Sum(p => p.Vents.Length)];
            if (!written.SequenceEqual(designed))
                yield return $"{name} has {string.Join(", ", written)} outlines, holes, dowels and vents, the layer "
                    + $"{string.Join(", ", designed)}";
            var (file, wood) = (new Shape(paths.Where(p => p.IsCutThrough).Select(p => p.Corners)), run.Wood(layer));
            if (DxfPath.AreaLeft(paths) is var area && Math.Abs(area - wood.Area) > Slack.Flat * (wood.Perimeter + 1))
                yield return FormattableString.Invariant($"{name} encloses {area} mm², the layer {wood.Area}");
            foreach (var edge in Probes.EdgesOf(wood).Where(e => file.DistanceTo(e.Middle) > Slack.Flat))
            {
                yield return FormattableString.Invariant($"{name} has no edge at {edge.Middle}");
                break;
            }
        }
    }
}
