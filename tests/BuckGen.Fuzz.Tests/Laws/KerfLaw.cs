using BuckGen.Cutting.Boards;
using BuckGen.Design.Bucks;
using BuckGen.Fuzz.Tests.Judging;
using BuckGen.Fuzz.Tests.Runs;

namespace BuckGen.Fuzz.Tests.Laws;

/// <summary>
/// What a board's file cuts is each part grown by half the kerf all round, holes first and the outer edge last.
/// </summary>
internal sealed class KerfLaw : ILaw
{
    /// <summary>
    /// A hole that the kerf leaves narrower than this on average, mm, is not cut, one that was a slot among them; a finding
    /// says so.
    /// </summary>
    private const double BurntDot = 0.05;

    public IEnumerable<string> Broken(DesignRun run)
    {
        var kerf = run.Plan.Spec.Machine == Machine.Laser ? run.Plan.Spec.Kerf / 2 : 0;
        foreach (var board in run.Boards)
            foreach (var (placement, paths) in board.Parts)
            {
                var cut = paths.Select(p => p.Before(placement.Map)).ToArray();
                if (Fault(run.Parts[placement.Part.Name], cut, kerf, placement.Part.Lost is not null) is { } fault)
                    yield return $"part {placement.Part.Name}: {fault}";
            }
    }

    private static string? Fault(LayerPart part, DxfPath[] cut, double kerf, bool isLost)
    {
        if (cut.Any(p => p.Layer != "MARK" && !p.IsClosed)) return "a cut is open";
        var order = cut.Select(p => p.Layer switch { "MARK" => 0, "VENT" or "DOWEL" or "CUT_INNER" => 1, _ => 2 }).ToArray();
        if (!order.SequenceEqual(order.Order()) || order[^1] != 2 || order.Count(o => o == 2) != 1)
            return "the outer edge is not cut last and once";
        var dowels = cut.Where(p => p.Layer == "DOWEL").ToArray();
        if (dowels.Length != part.Dowels.Length
            || part.Dowels
            .Any(d =>
                !dowels.Any(c => c.IsCircle && c.Centre.DistanceTo(d.Centre) < 2 * Slack.Written
                    && Math.Abs(c.Radius - d.Diameter / 2 + kerf) < 2 * Slack.Written)))
            return "its dowel holes are not cut smaller by the kerf";
        var (wood, outer) = (Shape.FromLoops(part.Shape.Loops), Shape.FromLoops([part.Shape.Outer]));
        var through = new Shape(cut.Where(p => p.IsCutThrough).Select(p => p.Corners));
        foreach (var p in Probes.Beside(through, 0, Slack.Aside).Concat(Probes.Beside(wood, kerf, Slack.Aside)))
        {
            var depth = wood.DepthAt(p) + kerf;
            if (Math.Abs(depth) <= Slack.Curve || through.Contains(p) == depth > 0) continue;
            if (depth < 0 && depth > -BurntDot - Slack.Curve && (outer.Contains(p) || isLost)) continue;
            return FormattableString.Invariant(
                $"{p} lies {depth:0.####} mm deep in the part with its kerf, but is {(depth > 0 ? "cut away" : "left on")}");
        }

        return null;
    }
}
