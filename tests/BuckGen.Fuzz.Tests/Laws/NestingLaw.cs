using BuckGen.Fuzz.Tests.Judging;
using BuckGen.Fuzz.Tests.Runs;

namespace BuckGen.Fuzz.Tests.Laws;

/// <summary>Every layer stands on wood: on a male buck it lies inside the one below, and a cavity only widens upward.</summary>
internal sealed class NestingLaw : ILaw
{
    public IEnumerable<string> Broken(DesignRun run)
    {
        // Walls that lean the wrong way overhang; a finding says so.
        if (run.Design.Spec.Draft < 0) yield break;
        foreach (var (lower, upper) in run.Walls.Zip(run.Walls.Skip(1)))
        {
            var (below, above) = (run.Wood(lower), run.Wood(upper));
            foreach (var p in Probes.Beside(above, 0, Slack.Aside).Concat(Probes.Over(above.Box)))
            {
                if (above.DepthAt(p) <= Slack.Curve || below.DepthAt(p) >= -Slack.Curve) continue;
                yield return FormattableString.Invariant(
                    $"layer {upper.Number} has wood at {p}, {-below.DepthAt(p):0.####} mm outside layer {lower.Number}");
                break;
            }
        }
    }
}
