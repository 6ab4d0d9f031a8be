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

    /// <summary>
    /// Heights that are tried, mm: a hand and the foot of a saw need some, and what lies under the cut is wasted (common
    /// practice, no source).
    /// </summary>
    private const double Min = 8, Max = 40;

    /// <summary>Boards in a ring at least: the flange lies in the lowest.</summary>
    private const int MinBoards = 2;

    /// <summary>
    /// The height with which buck and ring take the fewest boards; of those the one that misses the depth least.
    /// </summary>
    /// <param name="jig">The jig.</param>
    /// <param name="stack">The stock, and how far the depth may miss.</param>
    /// <param name="depthFor">Depth that the buck must have with a ring of a height, mm.</param>
    public static double Choose(JigSpec jig, StackSpec stack, Func<double, double> depthFor) => Heights(stack)
        .Select(height => (
            Height: height, Ring: TrimJig.PlanOf(jig with { TrimHeight = height }, stack).LayerStocks.Length,
            Plan: StackPlan.Choose(depthFor(height), stack.Stock, stack.DepthTolerance)))
        .MinBy(c => (
            Math.Abs(c.Plan.Miss) <= stack.DepthTolerance ? 0 : 1, c.Ring + c.Plan.LayerStocks.Length,
            Math.Round(Math.Abs(c.Plan.Miss), 6), c.Height)).Height;

    /// <summary>Heights of two or more boards of one stock.</summary>
    private static IEnumerable<double> Heights(StackSpec stack) => stack.Stock.Select(s => s.Thickness).Distinct()
        .SelectMany(t => Enumerable.Range(MinBoards, Math.Max(1, (int)(Max / t) - 1)).Select(n => n * t))
        .Where(h => h >= Min)
        .DefaultIfEmpty(MinBoards * stack.Stock.Max(s => s.Thickness));
}
