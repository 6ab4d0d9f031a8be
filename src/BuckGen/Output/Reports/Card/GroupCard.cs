using BuckGen.Cutting.Boards;
using BuckGen.Design.Specs;
using BuckGen.Intake.Outlines;
using BuckGen.Quantities;
using System.Collections.Immutable;
using System.Text;

namespace BuckGen.Output.Reports.Card;

/// <summary>The page for a sign in several bucks: which there are, and how the formed pieces become the sign.</summary>
internal static class GroupCard
{
    /// <summary>The card as plain text in UTF-8.</summary>
    /// <param name="plan">The whole sign.</param>
    /// <param name="title">What the job is called; empty for the outline's name.</param>
    public static ImmutableArray<byte> Write(CutPlan plan, string title)
    {
        var groups = GroupReport.Create(plan);
        string Count(string one) => CountText.Format(groups.Length, one);
        string[] lines =
        [
            "PROCESS CARD OF THE WHOLE SIGN", title.Length > 0 ? title : plan.Design.Outline.Name, "",
            $"Made in {Count("buck")}: {Count("heat")}, {Count("blank")}. Every buck has a card of its own in its folder.",
            "",
            "Buck  Folder    Islands  From x, mm  To x, mm  Blank, mm    Boards",
            .. groups.Select(Row),
            "", "ORDER OF WORK",
            .. Steps(plan, groups).Select((s, i) => CardText.Line($"{i + 1,2}. {s}")),
            "", "CAUTIONS",
            .. new Cautions().Lines(plan),
        ];
        return [.. Encoding.UTF8.GetBytes(string.Concat(lines.Select(l => VisibleText.Escape(l) + "\n")))];
    }

    private static string Row(GroupReport g)
    {
        var blank = g is { BlankWidth: { } width, BlankHeight: { } height } ? CardText.Line($"{width:0} x {height:0}") : "none";
        return CardText.Line($"{g.Number,4}  {g.Folder,-8}  {g.Islands.Length,7}  {g.Bounds.MinX,10:0.#}  ")
            + CardText.Line($"{g.Bounds.MaxX,8:0.#}  {blank,-11}  {g.Boards,6}");
    }

    private static IEnumerable<string> Steps(CutPlan plan, ImmutableArray<GroupReport> groups)
    {
        var pieces = plan.Plates.FirstOrDefault(p => p.Name.StartsWith("REGISTER", StringComparison.Ordinal))?.Pieces ?? [];
        yield return pieces.IsEmpty ? "Cut the register board (jig/register-01.dxf)."
            : $"Cut the register board in its pieces {string.Join(", ", pieces)} and glue them together on a flat board.";
        yield return CardText.Line($"Make and form bucks 1 to {groups.Length} by their cards, all with the same settings, so ")
            + "that the pieces match.";
        yield return "Write the number of its buck on every formed piece.";
        if (plan.Design.Findings.FirstOrDefault(f => f.Id == "sheets-meet") is { Value: { } room })
            yield return CardText.Line($"Where the sheet stays on the pieces, cut it off {room / 2:0.#} mm beside them at most, ")
                + "where another buck is the neighbour.";
        yield return "Set the pieces into the openings of the register board marked with their buck: B1 for buck 1.";
        yield return plan.Design.Spec is BuckSpec { Panel: not null }
            ? "Try all pieces in the panel; hold them with the register board while the glue sets."
            : "Fasten the pieces while the register board holds them, then lift it off or leave it as a panel.";
    }
}
