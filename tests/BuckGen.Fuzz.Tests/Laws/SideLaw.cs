using BuckGen.Fuzz.Tests.Judging;
using BuckGen.Fuzz.Tests.Runs;
using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Laws;

/// <summary>
/// Every point is on the right side of every layer's edge: wood where the drafted wall has wood, air where it has air.
/// </summary>
internal sealed class SideLaw : ILaw
{
    public IEnumerable<string> Broken(DesignRun run)
    {
        foreach (var layer in run.Walls)
        {
            var (wood, height) = (run.Wood(layer), run.Wall.CutHeight(layer));
            foreach (var p in Points(run, wood, height))
            {
                var (min, max) = run.Wall.InWood(p, height, run.Block);
                var winding = wood.WindingAround(p);
                var wrong = min > Slack.Curve ? winding != 1 : max < -Slack.Curve && winding != 0;
                if (!wrong) continue;
                yield return FormattableString.Invariant(
                    $"layer {layer.Number} winds {winding} times round {p}, which lies {min:0.####} to {max:0.####} mm ")
                    + FormattableString.Invariant($"deep in the wall at {height:0.###} mm");
                break;
            }
        }
    }

    private static IEnumerable<Vec2> Points(DesignRun run, Shape wood, double height)
    {
        var around = run.Wall.IsMale ? run.Wall.Source.Box : run.Block;
        var grown = Math.Max(0, run.Wall.OffsetAt(height)) + 1;
        return Probes.Beside(wood, 0, Slack.Aside)
            .Concat(Probes.Beside(run.Wall.Source, run.Wall.OffsetAt(height), Slack.Aside))
            .Concat(Probes.Over(new(around.MinX - grown, around.MinY - grown, around.MaxX + grown, around.MaxY + grown)));
    }
}
