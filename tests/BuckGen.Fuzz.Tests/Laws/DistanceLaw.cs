using BuckGen.Fuzz.Tests.Judging;
using BuckGen.Fuzz.Tests.Runs;

namespace BuckGen.Fuzz.Tests.Laws;

/// <summary>Every edge of a layer lies where the drafted wall stands at the height it is cut to.</summary>
internal sealed class DistanceLaw : ILaw
{
    public IEnumerable<string> Broken(DesignRun run)
    {
        foreach (var layer in run.Walls)
        {
            var height = run.Wall.CutHeight(layer);
            foreach (var p in Probes.EdgesOf(run.Wood(layer)).SelectMany(e => new[] { e.Start, e.Middle }))
            {
                var (min, max) = run.Wall.InWood(p, height, run.Block);
                if (min <= Slack.Curve && max >= -Slack.Curve) continue;
                yield return FormattableString.Invariant(
                    $"the edge of layer {layer.Number} at {p} lies {min:0.####} to {max:0.####} mm deep in the wall at ")
                    + FormattableString.Invariant($"{height:0.###} mm");
                break;
            }
        }
    }
}
