using System.Collections.Immutable;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Bucks;

/// <summary>The dowel holes of every layer, with what could not be placed.</summary>
/// <param name="Holes">The holes through each layer, lowest first.</param>
/// <param name="Findings">Islands without room, or that could go on the wrong way.</param>
internal sealed record DowelColumns(IReadOnlyList<DowelHole>[] Holes, ImmutableArray<Finding> Findings)
{
    /// <summary>Places dowels in every topmost island and carries them down through all the layers beneath it.</summary>
    public static DowelColumns Place(
        IReadOnlyList<LayerBlank> layers, StackedSolid solid, BuckSpec spec, string[][] letters, IOffsetter offsetter)
    {
        var holes = layers.Select(l => l.Wood.Islands.Select(_ => new List<DowelHole>()).ToArray()).ToArray();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        for (var layer = layers.Count - 1; layer > 0; layer--)
        {
            for (var i = 0; i < layers[layer].Wood.Islands.Length; i++)
            {
                // An island with wood on top of it already has the dowels of the island above.
                if (holes[layer][i].Count > 0 || IsUnderAnother(layers, layer, i)) continue;
                var places = DowelPlacement.Choose(Allowed(layers[layer], i, solid, spec, offsetter), 2 * spec.Dowels.HoleDiameter);
                CarryDown(holes, layers, layer, i, places, spec.Dowels.HoleDiameter);
                if (Check(layers[layer], i, letters[layer][i], places, spec.Dowels) is { } finding) findings.Add(finding);
            }
        }

        return new([.. holes.Select(l => (IReadOnlyList<DowelHole>)[.. l.SelectMany(h => h)])], findings.ToImmutable());
    }

    private static bool IsUnderAnother(IReadOnlyList<LayerBlank> layers, int layer, int island) =>
        layer + 1 < layers.Count && layers[layer + 1].Wood.Islands.Any(
            above => layers[layer].Wood.Islands[island].Contains(InsidePoint.Of(above)));

    /// <summary>Where a hole's centre may lie: in the wood that is left on top after sanding, with a wall all round.</summary>
    private static Region Allowed(LayerBlank layer, int island, StackedSolid solid, BuckSpec spec, IOffsetter offsetter)
    {
        var piece = layer.Wood.Islands[island];
        var sanded = spec.Steps == Steps.Inside
            ? [piece]
            : solid.At(layer.Top).Islands.Where(i => piece.Contains(InsidePoint.Of(i))).ToImmutableArray();
        return offsetter.Offset(new(sanded), -(spec.Dowels.HoleDiameter / 2 + spec.Dowels.Wall), CornerJoin.Round);
    }

    private static void CarryDown(
        List<DowelHole>[][] holes, IReadOnlyList<LayerBlank> layers, int layer, int island, ImmutableArray<Vec2> places, double diameter)
    {
        foreach (var place in places)
        {
            holes[layer][island].Add(new(place, diameter));
            for (var below = layer - 1; below >= 0; below--)
            {
                var carrying = layers[below].Wood.Islands.ToList().FindIndex(i => i.Contains(place));
                if (carrying >= 0) holes[below][carrying].Add(new(place, diameter));
            }
        }
    }

    private static Finding? Check(LayerBlank layer, int island, string letter, ImmutableArray<Vec2> places, DowelSpec dowels)
    {
        var piece = layer.Wood.Islands[island];
        if (places.IsEmpty)
            return new Finding("dowels-no-room", Severity.Warning,
                FormattableString.Invariant(
                    $"Island {letter} is too small at layer {layer.Number} for two {dowels.Diameter} mm dowels with {dowels.Wall} mm of wood round them."),
                "Use thinner dowels or less wall, or glue this island by eye along the glue-up line.")
            {
                Place = piece.Outer.Bounds.Centre, Height = layer.Bottom, Value = dowels.Diameter, Source = "common practice, no source",
            };
        if (!TurnCheck.FitsWrongWay(piece, places)) return null;
        return new Finding("dowels-turnable", Severity.Warning,
            $"The two dowels of island {letter} also fit turned or flipped, and its outline would not show it.",
            "Glue with all numbers facing up and reading the same way; thinner dowels would leave room for a third.")
        {
            Place = places[0], Height = layer.Bottom, Source = "common practice, no source",
        };
    }
}
