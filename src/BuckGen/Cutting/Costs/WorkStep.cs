using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutPaths;
using BuckGen.Cutting.Drilling;

namespace BuckGen.Cutting.Costs;

/// <summary>One kind of work of a job.</summary>
/// <param name="Name">What is done, such as "cut MDF 6".</param>
/// <param name="Amount">How much of it.</param>
/// <param name="Unit">"mm", "paths", "boards", "holes" or "glue lines".</param>
/// <param name="Minutes">How long it takes; null when the shop has not given its speed.</param>
/// <param name="Hour">Price of an hour of it; null when not given.</param>
internal sealed record WorkStep(string Name, double Amount, string Unit, double? Minutes, double? Hour)
{
    /// <summary>What it costs; null when its time or price is not given.</summary>
    public double? Cost => Minutes / 60 * Hour;

    /// <summary>The work of a plan; steps that do not occur are left out.</summary>
    internal static ImmutableArray<WorkStep> FromPlan(CutPlan plan, RateSpec rates)
    {
        var placed = plan.AllBoards.SelectMany(s => s.Placements.Select(p => (s.Stock, p.Part))).ToArray();
        var paths = placed.SelectMany(p => p.Part.Paths).ToArray();
        var marks = paths.Where(p => p.Layer == CutLayer.Mark).Sum(p => p.Length);
        var designs = plan.Groups.Select(g => g.Design).Prepend(plan.Design).ToArray();
        var byHand = designs.Sum(d => DrillMap.ByHand(d, plan.Spec.MinHoleDiameter).Count());
        var glue = designs.Sum(d => GlueLines(d.Layers.Length) + GlueLines(d.Jig?.Ring.Length ?? 0)
            + (d.Jig is { } jig ? GlueLines(jig.Core.Length + (jig.Bed is null ? 0 : 1)) : 0));
        var boards = plan.AllBoards.Count();
        IEnumerable<WorkStep> steps =
        [
            .. placed.GroupBy(p => p.Stock.Name)
                .Select(g => Cutting(g.Key, g.Sum(p => p.Part.CutLength), g.First().Stock.CutFeed, rates)),
            new("mark and letter", marks, "mm", marks / rates.MarkFeed, rates.Machine),
            new("start paths", paths.Length, "paths", paths.Length * rates.PathSeconds / 60, rates.Machine),
            new("load boards", boards, "boards", boards * rates.BoardMinutes, rates.Labour),
            new("drill by hand", byHand, "holes", byHand * rates.DrillSeconds / 60, rates.Labour),
            new("glue", glue, "glue lines", glue * rates.GlueMinutes, rates.Labour),
        ];
        return [.. steps.Where(s => s.Amount > 0)];
    }

    private static WorkStep Cutting(string stock, double length, double? feed, RateSpec rates) =>
        new($"cut {stock}", length, "mm", length / feed, rates.Machine);

    private static int GlueLines(int layers) => Math.Max(0, layers - 1);
}
