using System.Collections.Immutable;

namespace BuckGen.Bucks;

/// <summary>The sheets chosen to reach a depth, lowest first.</summary>
/// <param name="Sheets">One entry a layer, thickest at the bottom.</param>
/// <param name="Depth">The depth that really results, mm.</param>
/// <param name="Miss">Real depth less wanted depth, mm.</param>
public sealed record StackPlan(ImmutableArray<Stock> Sheets, double Depth, double Miss)
{
    /// <summary>Thicknesses are counted in steps of this length, mm.</summary>
    private const double Grain = 0.01;

    /// <summary>Most layers in a stack.</summary>
    private const int MostLayers = 400;

    /// <summary>
    /// Chooses the sheets that reach the wanted depth: of all stacks within the tolerance the one with the fewest layers,
    /// then the one that misses least; when none is within the tolerance, the one that misses least, then the fewest layers.
    /// </summary>
    /// <param name="depth">Wanted depth, mm.</param>
    /// <param name="stock">The sheets to choose from; each may be used any number of times.</param>
    /// <param name="tolerance">Miss, mm, that does not count.</param>
    /// <exception cref="SpecException">The stack would need more than 400 layers.</exception>
    public static StackPlan Choose(double depth, ImmutableArray<Stock> stock, double tolerance)
    {
        // Of two sheets equally thick the first listed is used.
        var sheets = stock.DistinctBy(s => Grains(s.Thickness)).OrderByDescending(s => s.Thickness).ToArray();
        var fewest = FewestLayers(Grains(depth) + Grains(sheets[0].Thickness), [.. sheets.Select(s => Grains(s.Thickness))]);
        var best = Enumerable.Range(1, fewest.Count - 1)
            .Where(g => fewest[g].Layers > 0)
            .Select(g => (Grains: g, fewest[g].Layers, Miss: Math.Abs(g * Grain - depth)))
            .OrderBy(c => c.Miss <= tolerance + Grain / 2 ? 0 : 1)
            .ThenBy(c => c.Miss <= tolerance + Grain / 2 ? c.Layers : c.Miss)
            .ThenBy(c => c.Miss <= tolerance + Grain / 2 ? c.Miss : c.Layers)
            .First();
        if (best.Layers > MostLayers)
            throw new SpecException($"The stack would need {best.Layers} layers, the limit is {MostLayers}; use thicker stock.");
        var chosen = new List<Stock>();
        for (var g = best.Grains; g > 0; g -= Grains(sheets[fewest[g].Last].Thickness)) chosen.Add(sheets[fewest[g].Last]);
        var ordered = chosen.OrderByDescending(s => s.Thickness).ToImmutableArray();
        var real = ordered.Sum(s => s.Thickness);
        return new(ordered, real, real - depth);
    }

    /// <summary>For every height in grains the fewest layers that reach it exactly (0 when none do) and the last sheet used.</summary>
    private static List<(int Layers, int Last)> FewestLayers(int most, int[] thicknesses)
    {
        var table = new List<(int Layers, int Last)>(most + 1) { (0, -1) };
        for (var g = 1; g <= most; g++)
        {
            (int Layers, int Last) best = (0, -1);
            for (var i = 0; i < thicknesses.Length; i++)
            {
                var below = g - thicknesses[i];
                if (below < 0 || (below > 0 && table[below].Layers == 0)) continue;
                var layers = table[below].Layers + 1;
                if (best.Layers == 0 || layers < best.Layers) best = (layers, i);
            }

            table.Add(best);
        }

        return table;
    }

    private static int Grains(double length) => (int)Math.Round(length / Grain);
}
