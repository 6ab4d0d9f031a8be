using System.Collections.Immutable;
using System.Globalization;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Bucks;

/// <summary>Draws on each layer's top face: the sand-to line, the glue-up line of the layer above and the lettering.</summary>
internal static class LayerMarks
{
    /// <summary>A line nearer than this, mm, to an edge or a line that is drawn already is the same line.</summary>
    private const double SameLine = 0.02;

    public static ImmutableArray<Layer> Complete(
        IReadOnlyList<LayerBlank> blanks, string[][] letters, IReadOnlyList<DowelHole>[] dowels, IReadOnlyList<VentHole>[] vents,
        StackedSolid solid, StackSpec spec, CancellationToken cancellation)
    {
        var layers = ImmutableArray.CreateBuilder<Layer>(blanks.Count);
        for (var n = 0; n < blanks.Count; n++)
        {
            var blank = blanks[n];
            var above = n + 1 < blanks.Count ? blanks[n + 1].Wood : Region.Empty;
            var cover = new LayerCover(above, blank.Role == LayerRole.Plenum);
            var edges = new SegmentIndex(blank.Wood.Segments);
            var sandTo = blank.Role == LayerRole.Wall && spec.Steps != Steps.Inside
                ? NotYetDrawn(solid.At(solid.Shape.Below(blank.Top)).Loops, edges)
                : [];
            // With steps outside, the layer above stands on the sand-to line: one line serves for both.
            // The base hides a plenum wholly: there is nothing to glue up to.
            var glueUp = blank.Role == LayerRole.Plenum ? []
                : NotYetDrawn(above.Loops, new SegmentIndex([.. blank.Wood.Segments, .. sandTo.SelectMany(l => l.Segments)]));
            var parts = ImmutableArray.CreateBuilder<LayerPart>(blank.Wood.Islands.Length);
            // What lies on which piece is computed once a layer, not once a piece.
            var wood = new RegionInterior(blank.Wood);
            var holesOf = dowels[n].ToLookup(d => wood.IslandAt(d.Centre));
            var boresOf = vents[n].ToLookup(v => wood.IslandAt(v.Centre));
            var round = dowels[n].Select(h => Loop.Circle(h.Centre, h.Diameter / 2))
                .Concat(vents[n].Select(b => Loop.Circle(b.Centre, b.Diameter / 2)));
            var obstacles =
                new SegmentIndex([.. blank.Wood.Segments, .. sandTo.Concat(glueUp).Concat(round).SelectMany(l => l.Segments)]);
            for (var i = 0; i < blank.Wood.Islands.Length; i++)
            {
                cancellation.ThrowIfCancellationRequested();
                var (piece, letter) = (blank.Wood.Islands[i], letters[n][i]);
                var (holes, bores) = (holesOf[i].ToImmutableArray(), boresOf[i].ToImmutableArray());
                var text = blank.Number.ToString(CultureInfo.InvariantCulture) + letter;
                var label = spec.LetterHeight == 0 ? null : cover.Label(text, spec.LetterHeight, piece, obstacles);
                parts.Add(new(letter, piece, holes, bores, label) { IsTop = !cover.Covers(piece) });
            }

            layers.Add(new(blank.Number, blank.Role, blank.Stock, blank.Bottom, blank.Top,
                [.. parts.OrderBy(p => p.Letter.Length).ThenBy(p => p.Letter, StringComparer.Ordinal)], sandTo, glueUp));
        }

        return layers.ToImmutable();
    }

    private static ImmutableArray<Loop> NotYetDrawn(IEnumerable<Loop> loops, SegmentIndex drawn) =>
        [.. loops.Where(l => l.Segments.Any(s =>
            drawn.DistanceWithin(s.Start, SameLine) > SameLine || drawn.DistanceWithin(s.PointAt(0.5), SameLine) > SameLine))];
}
