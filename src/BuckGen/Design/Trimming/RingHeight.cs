using System.Collections.Immutable;
using BuckGen.Design.Bucks;

namespace BuckGen.Design.Trimming;

/// <summary>
/// The height of a ring when the maker leaves it open. The buck reaches down to the flange, so that the height of the ring is
/// part of its depth: one that suits the boards saves layers.
/// </summary>
internal static class RingHeight
{
    /// <summary>Height of a ring where nothing depends on it, mm (common practice, no source).</summary>
    public const double Usual = 12;

    /// <summary>A ring left open is no higher than this share of the part, so that more is kept than is cut off.</summary>
    private const double MaxShare = 2.0 / 3;

    /// <summary>
    /// Heights that are tried, mm: a hand and the foot of a saw need some, and what lies under the cut is wasted (common
    /// practice, no source).
    /// </summary>
    private const double Min = 8, Max = 25;

    /// <summary>Boards in a ring: the flange lies in the lowest, so that there are two at least.</summary>
    private const int MinBoards = 2, MaxBoards = 5;

    /// <summary>
    /// The jig with a height with which buck and ring take the fewest boards; of those the lowest, since a lower buck draws the
    /// sheet less.
    /// </summary>
    /// <param name="jig">The jig.</param>
    /// <param name="stack">The stock, and how far the depth may miss.</param>
    /// <param name="depthFor">Depth that the buck must have with a jig of a height, mm.</param>
    public static JigSpec Choose(JigSpec jig, StackSpec stack, Func<JigSpec, double> depthFor) => Heights(stack)
        .Select(height => jig with { TrimHeight = height, HeightTolerance = 0 })
        .Select(ring => (Ring: ring, Boards: TrimJig.PlanOf(ring, stack).LayerStocks.Length,
            Buck: StackPlan.Choose(depthFor(ring), stack.Stock, stack.DepthTolerance)))
        .MinBy(c => (
            Math.Abs(c.Buck.Miss) <= stack.DepthTolerance ? 0 : 1, c.Boards + c.Buck.LayerStocks.Length, c.Ring.TrimHeight,
            Math.Abs(c.Buck.Miss))).Ring;

    /// <summary>
    /// The usual height, or on a part too low for it the greatest that the boards reach in the lower part of it. Where no board
    /// is so thin it is the usual one, which is refused with the depth of the part.
    /// </summary>
    /// <param name="depth">Depth of the part, mm.</param>
    /// <param name="stock">The boards.</param>
    public static double ForDepth(double depth, ImmutableArray<Stock> stock) => Usual <= MaxShare * depth ? Usual
        : Sums([.. stock.Select(s => s.Thickness).Distinct()], MaxShare * depth, 1).DefaultIfEmpty(Usual).Max();

    /// <summary>The heights that a few boards of the shop's stock reach.</summary>
    private static IEnumerable<double> Heights(StackSpec stack)
    {
        double[] thicknesses = [.. stack.Stock.Select(s => s.Thickness).Distinct()];
        return Sums(thicknesses, Max, MinBoards).Where(h => h >= Min).DefaultIfEmpty(MinBoards * thicknesses.Max());
    }

    /// <summary>What some boards are high together, each height once, mm.</summary>
    private static IEnumerable<double> Sums(double[] thicknesses, double max, int minBoards)
    {
        return From(0, 0, 0).Select(h => Math.Round(h, 6)).Distinct();

        IEnumerable<double> From(double height, int boards, int first)
        {
            if (boards >= minBoards) yield return height;
            if (boards == MaxBoards) yield break;
            for (var i = first; i < thicknesses.Length; i++)
                if (height + thicknesses[i] <= max)
                    foreach (var sum in From(height + thicknesses[i], boards + 1, i)) yield return sum;
        }
    }
}
