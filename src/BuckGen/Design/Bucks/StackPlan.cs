using System.Collections.Immutable;
using BuckGen.Intake.Catalogs;
using BuckGen.Settings;

namespace BuckGen.Design.Bucks;

/// <summary>The stocks chosen to reach a depth.</summary>
/// <param name="LayerStocks">The stock of each layer, lowest first: the thickest lies at the bottom.</param>
/// <param name="Depth">The depth that really results, mm.</param>
/// <param name="Miss">Real depth less wanted depth, mm.</param>
public sealed record StackPlan(ImmutableArray<Stock> LayerStocks, double Depth, double Miss)
{
    /// <summary>Minimum and maximum depth, mm, where thicknesses are the catalog's averages and not measured.</summary>
    public FigureRange DepthRange => new(
        LayerStocks.Sum(s => s.ThicknessIsAssumed ? s.Material?.Lower ?? s.Thickness : s.Thickness),
        LayerStocks.Sum(s => s.ThicknessIsAssumed ? s.Material?.Upper ?? s.Thickness : s.Thickness));

    /// <summary>
    /// How far the depth is likely off, mm either way: the root sum of squares of the tolerances of the boards.
    /// </summary>
    public double LikelySpread => Math.Sqrt(LayerStocks.Sum(s =>
        s is { ThicknessIsAssumed: true, Material: { Lower: { } lower, Upper: { } upper } }
            ? (upper - lower) * (upper - lower) / 4 : 0));

    /// <summary>Maximum number of layers in a stack.</summary>
    private const int MaxLayers = 400;

    /// <summary>
    /// Chooses the stocks that reach the wanted depth. Of all stacks within the tolerance it takes the one with the fewest
    /// layers, then the one that misses least. When none is within the tolerance, it takes the one that misses least, then the
    /// one with the fewest layers.
    /// </summary>
    /// <param name="depth">Wanted depth, mm.</param>
    /// <param name="stock">The stocks to choose from; each may be used any number of times.</param>
    /// <param name="tolerance">Miss, mm, that does not count.</param>
    /// <param name="neverMore">True when the stack may be lower, never higher; the depth must then hold one layer.</param>
    /// <exception cref="SpecException">The stack would need more than 400 layers.</exception>
    internal static StackPlan Choose(double depth, ImmutableArray<Stock> stock, double tolerance, bool neverMore = false)
    {
        // Of two stocks equally thick the first listed is used.
        var stocks = stock.DistinctBy(s => s.Thickness).OrderByDescending(s => s.Thickness).ToArray();
        var grain = Grain(stocks);
        int[] thicknesses = [.. stocks.Select(s => Grains(s.Thickness, grain))];
        var fewest = FewestLayers(Grains(depth, grain) + thicknesses[0], thicknesses);
        var best = Enumerable.Range(1, fewest.Length - 1)
            .Where(g => fewest[g].Layers > 0 && (!neverMore || g * grain <= depth + grain / 2))
            .Select(g => (Grains: g, fewest[g].Layers, Miss: Math.Round(Math.Abs(g * grain - depth), 6)))
            .MinBy(c => c.Miss <= tolerance ? (0, (double)c.Layers, c.Miss) : (1, c.Miss, c.Layers));
        if (best.Layers > MaxLayers)
            throw new SpecException($"The stack would need {best.Layers} layers, the limit is {MaxLayers}; use thicker stock.");
        var chosen = new List<Stock>();
        for (var g = best.Grains; g > 0; g -= thicknesses[fewest[g].Last]) chosen.Add(stocks[fewest[g].Last]);
        var ordered = chosen.OrderByDescending(s => s.Thickness).ToImmutableArray();
        var real = ordered.Sum(s => s.Thickness);
        return new(ordered, real, real - depth);
    }

    /// <summary>The faces of all layers and the middles between them, lowest first.</summary>
    /// <param name="foot">Height of the lowest face, mm.</param>
    internal IEnumerable<double> HeightsFrom(double foot)
    {
        yield return foot;
        foreach (var stock in LayerStocks)
        {
            var top = foot + stock.Thickness;
            yield return (foot + top) / 2;
            yield return top;
            foot = top;
        }
    }

    /// <summary>The coarsest step, from 0.1 to 0.0001 mm, in which all thicknesses are whole numbers; else the finest.</summary>
    private static double Grain(Stock[] stocks)
    {
        ReadOnlySpan<double> grains = [0.1, 0.01, 0.001];
        foreach (var grain in grains)
            if (Array.TrueForAll(stocks, s => Math.Abs(s.Thickness / grain - Math.Round(s.Thickness / grain)) < 1e-6))
                return grain;
        return 0.0001;
    }

    /// <summary>
    /// For every height in grains the fewest layers that reach it exactly (0 when none do) and the last stock used.
    /// </summary>
    private static (short Layers, short Last)[] FewestLayers(int max, int[] thicknesses)
    {
        var table = new (short Layers, short Last)[max + 1];
        for (var g = 1; g <= max; g++)
        {
            for (short i = 0; i < thicknesses.Length; i++)
            {
                var below = g - thicknesses[i];
                if (below < 0 || (below > 0 && table[below].Layers == 0)) continue;
                var layers = table[below].Layers + 1;
                if (table[g].Layers == 0 || layers < table[g].Layers) table[g] = ((short)layers, i);
            }
        }

        return table;
    }

    private static int Grains(double length, double grain) => (int)Math.Round(length / grain);
}
