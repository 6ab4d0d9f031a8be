using BuckGen.Design.Bucks;
using BuckGen.Fuzz.Tests.Judging;
using BuckGen.Fuzz.Tests.Runs;

namespace BuckGen.Fuzz.Tests.Laws;

/// <summary>
/// Layers lie on each other without gaps, the plates reach beyond the buck, and the stack ends early only where no wood is
/// left.
/// </summary>
internal sealed class StackLaw : ILaw
{
    public IEnumerable<string> Broken(DesignRun run)
    {
        var (layers, spec) = (run.Design.Layers, run.Design.Spec);
        foreach (var layer in layers)
            if (Math.Abs(layer.Thickness - layer.Stock.Thickness) > 1e-9)
                yield return $"layer {layer.Number} is not as thick as its board";
        foreach (var (lower, upper) in layers.Zip(layers.Skip(1)))
            if (lower.Top != upper.Bottom) yield return $"layer {upper.Number} does not lie on layer {lower.Number}";
        if (!run.Walls.IsEmpty && Math.Abs(run.Walls[0].Bottom - run.Wall.Foot) > 1e-9)
            yield return "the walls do not stand on the plates";
        foreach (var plate in layers.Where(l => l.Role == LayerRole.Base && !run.Walls.IsEmpty && spec.Draft >= 0))
            foreach (var edge in Probes.EdgesOf(run.Wood(run.Walls[0])))
                if (run.Wood(plate).DepthAt(edge.Start) < spec.Base!.Margin - Slack.Curve)
                {
                    yield return FormattableString.Invariant(
                        $"plate {plate.Number} reaches less than its margin beyond {edge.Start}");
                    break;
                }

        if (run.Walls.Length < run.Design.Plan.LayerStocks.Length && Lost(run) is { } lost) yield return lost;
    }

    /// <summary>Wood that the next layer would have had.</summary>
    private static string? Lost(DesignRun run)
    {
        var bottom = run.Walls.IsEmpty ? run.Wall.Foot : run.Walls[^1].Top;
        var missing =
            new Layer(0, LayerRole.Wall, run.Design.Plan.LayerStocks[run.Walls.Length], bottom,
                bottom + run.Design.Plan.LayerStocks[run.Walls.Length].Thickness, [], [], []);
        var height = run.Wall.CutHeight(missing);
        foreach (var p in Probes.Over(run.Wall.Source.Box, 24))
            if (run.Wall.InWood(p, height, run.Block).Least > Slack.Curve)
                return FormattableString.Invariant($"the stack ends at {bottom:0.###} mm, but there is wood at {p}");
        return null;
    }
}
