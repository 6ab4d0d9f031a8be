using System.Collections.Immutable;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Bucks;

/// <summary>The dowel holes of every layer, with what could not be placed.</summary>
/// <param name="Holes">The holes through each layer, lowest first.</param>
/// <param name="Findings">Islands without room, or that fit on in a wrong way.</param>
internal sealed record DowelColumns(IReadOnlyList<DowelHole>[] Holes, ImmutableArray<Finding> Findings)
{
    /// <summary>Places dowels in every topmost island and carries them down through all the layers beneath it.</summary>
    public static DowelColumns Place(
        IReadOnlyList<LayerBlank> layers, StackedSolid solid, StackSpec spec, string[][] letters, IOffsetter offsetter,
        CancellationToken cancellation)
    {
        var holes = layers.Select(l => l.Wood.Islands.Select(_ => new List<DowelHole>()).ToArray()).ToArray();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        // The lowest piece of each island that is still too small for dowels; the pieces above it are smaller yet.
        var without = new SortedDictionary<string, (LayerBlank Layer, Island Piece)>(StringComparer.Ordinal);
        var turnable = new List<(Vec2 Place, Finding Finding)>();
        LayerCover[] covers =
            [.. layers.Skip(1).Select(above => new LayerCover(above.Wood)).Append(new(Region.Empty))];
        var woods = layers.Select(l => new RegionInterior(l.Wood)).ToArray();
        for (var layer = layers.Count - 1; layer > 0; layer--)
        {
            // What is left of each piece on top, once a layer.
            var (blank, wood) = (layers[layer], woods[layer]);
            var sanded =
                new Lazy<ILookup<int, Island>>(() =>
                    solid.Finished.At(solid.Shape.Below(blank.Top)).Islands.ToLookup(i => wood.IslandAt(InsidePoint.Find(i))));
            for (var i = 0; i < layers[layer].Wood.Islands.Length; i++)
            {
                // Dowels that came down from an island above serve this one too.
                var isBare = !spec.Dowels.ThroughFace && !covers[layer].Covers(blank.Wood.Islands[i]);
                if (holes[layer][i].Count > 0) continue;
                cancellation.ThrowIfCancellationRequested();
                // A hole that stays hidden lies under the layer above, which may be smaller than what is left of this one.
                var over = spec.Dowels.ThroughFace || isBare ? [] : covers[layer].On(blank.Wood.Islands[i]);
                var face = over.Length > 0 && spec.IsWiderBelow ? over
                    : spec.Steps == Steps.Inside ? [blank.Wood.Islands[i]]
                    : sanded.Value[i];
                var places =
                    DowelPlacement.Choose(Allowed(face, spec.Dowels, offsetter, cancellation), 2 * spec.Dowels.HoleDiameter);
                CarryDown(holes, woods, layer, places, spec.Dowels);
                if (places.IsEmpty && isBare) continue;
                if (places.IsEmpty) without[letters[layer][i]] = (layers[layer], layers[layer].Wood.Islands[i]);
                else if (TurnCheck.FitsWrongWay(layers[layer].Wood.Islands[i], places))
                    turnable.Add((places[0], Turnable(layers[layer], letters[layer][i], places[0])));
            }
        }

        if (!spec.Dowels.ThroughFace) BuriedDowels.Keep(holes, covers);
        // Under walls that lean the wrong way a piece may get too few of the dowels above it.
        for (var layer = layers.Count - 1; layer > 0; layer--)
            for (var i = 0; i < layers[layer].Wood.Islands.Length; i++)
            {
                var piece = layers[layer].Wood.Islands[i];
                if (!spec.Dowels.ThroughFace && !covers[layer].Covers(piece)) continue;
                if (holes[layer][i].Count == 1) findings.Add(Alone(layers[layer], piece, letters[layer][i]));
                else if (holes[layer][i].Count == 0) without.TryAdd(letters[layer][i], (layers[layer], piece));
            }

        var left = holes.SelectMany(l => l).SelectMany(h => h).Select(h => h.Centre).ToHashSet();
        findings.AddRange(turnable.Where(t => left.Contains(t.Place)).Select(t => t.Finding));

        findings.AddRange(without.Select(w => NoRoom(w.Value.Layer, w.Value.Piece, w.Key, spec.Dowels)));
        return new([.. holes.Select(l => (IReadOnlyList<DowelHole>)[.. l.SelectMany(h => h)])], findings.ToImmutable());
    }

    /// <summary>Where a hole's centre may lie: in the wood that is left on top after sanding, with a wall all round.</summary>
    private static Region Allowed(IEnumerable<Island> sanded, DowelSpec dowels, IOffsetter offsetter,
        CancellationToken cancellation) =>
        offsetter.Offset(new([.. sanded]), -(dowels.HoleDiameter / 2 + dowels.Wall), CornerJoin.Round, cancellation);

    private static void CarryDown(
        List<DowelHole>[][] holes, RegionInterior[] woods, int layer, ImmutableArray<Vec2> places, DowelSpec dowels)
    {
        var (diameter, apart) = (dowels.HoleDiameter, Math.Min(dowels.Wall, dowels.HoleDiameter));
        foreach (var place in places)
            for (var at = layer; at >= 0; at--)
            {
                var carrying = woods[at].IslandAt(place);
                // Under walls that lean the wrong way dowels of different pieces may come down in one place.
                if (carrying >= 0 && !holes[at][carrying].Exists(h => h.Centre.DistanceTo(place) < diameter + apart))
                    holes[at][carrying].Add(new(place, diameter));
            }
    }

    private static Finding NoRoom(LayerBlank layer, Island piece, string letter, DowelSpec dowels) =>
        new("dowels-no-room", Severity.Warning,
            FormattableString.Invariant(
                $"From layer {layer.Number} up, island {letter} is too small for two {dowels.Diameter} mm dowels with ")
                + FormattableString.Invariant($"{dowels.Wall} mm of wood round them."),
            "Use thinner dowels or less wall, or glue these pieces by eye along the glue-up lines.")
        {
            Place = piece.Outer.Bounds.Centre,
            Height = layer.Bottom,
            Value = dowels.Diameter,
            Source = "common practice, no source",
        };

    private static Finding Alone(LayerBlank layer, Island piece, string letter) =>
        new("dowel-alone", Severity.Warning,
            $"Island {letter} of layer {layer.Number} has only one dowel, about which it can turn: the others of the layer "
            + "above stand beside it.",
            "Let the walls lean the other way, or glue this piece by eye along the glue-up lines.")
        {
            Place = piece.Outer.Bounds.Centre,
            Height = layer.Bottom,
            Value = 1,
            Limit = 2,
            Source = "common practice, no source",
        };

    private static Finding Turnable(LayerBlank layer, string letter, Vec2 place) =>
        new("dowels-turnable", Severity.Warning,
            $"The two dowels of island {letter} also fit turned or flipped, and its outline would not show it.",
            "Glue with all numbers facing up and reading the same way; thinner dowels would leave room for a third.")
        {
            Place = place,
            Height = layer.Bottom,
            Source = "common practice, no source",
        };
}
