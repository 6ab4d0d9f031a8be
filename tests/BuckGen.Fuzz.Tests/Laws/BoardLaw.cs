using BuckGen.Findings;
using BuckGen.Fuzz.Tests.Judging;
using BuckGen.Fuzz.Tests.Runs;
using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Laws;

/// <summary>
/// Every part is on a board of its stock, inside its margins, and keeps its spacing from the others; or it is reported as too
/// large.
/// </summary>
internal sealed class BoardLaw : ILaw
{
    public IEnumerable<string> Broken(DesignRun run)
    {
        var (spec, plan) = (run.Plan.Spec, run.Plan);
        var placed = run.Boards.SelectMany(b => b.Parts).Select(p => p.Placement.Part.Name).ToArray();
        var tooLarge = plan.Findings.Where(f => f.Id == "part-larger-than-stock").Sum(CountOf);
        if (placed.Length + tooLarge != run.Parts.Count || placed.Distinct().Count() != placed.Length)
            yield return $"{placed.Length} parts are on boards and {tooLarge} are too large, of {run.Parts.Count}";
        foreach (var board in run.Boards)
        {
            var (piece, name) = (board.Layout.Piece, $"board {board.Layout.Number}");
            var outlines = board.Parts.Select(p => p.Paths[^1].AsShape()).ToArray();
            for (var i = 0; i < outlines.Length; i++)
            {
                var (part, box) = (board.Parts[i].Placement.Part, outlines[i].Box);
                if (part.Stock.Name != board.Layout.Stock.Name || part.Stock.Thickness != board.Layout.Stock.Thickness)
                    yield return $"part {part.Name} is on {name} of another stock";
                if (Math.Min(Math.Min(box.MinX, box.MinY), Math.Min(piece.Width - box.MaxX, piece.Height - box.MaxY))
                    < spec.EdgeMargin - Slack.Flat)
                    yield return $"part {part.Name} is at {box}, too near the edge of {name}, {piece}";
                for (var j = 0; j < i; j++)
                    if (Apart(outlines[i], outlines[j]) is var apart && apart < spec.Spacing - 2 * Slack.Flat)
                        yield return FormattableString.Invariant(
                            $"parts {part.Name} and {board.Parts[j].Placement.Part.Name} lie {apart:0.####} mm apart on {name}");
            }
        }
    }

    /// <summary>A finding names the one part it is about, or lists all.</summary>
    private static int CountOf(Finding finding) =>
        finding.Message.Split(" fit on no board: ") is [_, var names] ? names.Split(", ").Length : 1;

    /// <summary>
    /// Between the boxes where they are apart; between the edges, or below 0, where one part reaches into the other's box.
    /// </summary>
    private static double Apart(Shape a, Shape b)
    {
        var boxes = Math
            .Max(Gap(a.Box.MinX, a.Box.MaxX, b.Box.MinX, b.Box.MaxX), Gap(a.Box.MinY, a.Box.MaxY, b.Box.MinY, b.Box.MaxY));
        return boxes > 0 ? boxes : Math.Min(Reach(a, b), Reach(b, a));
    }

    private static double Gap(double lowA, double highA, double lowB, double highB) => Math.Max(lowB - highA, lowA - highB);

    private static double Reach(Shape a, Shape b) =>
        a.Edges.SelectMany(e => new Vec2[] { e.Start, e.Middle }).Min(p => -b.DepthAt(p));
}
