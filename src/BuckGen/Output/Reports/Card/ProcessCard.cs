using System.Collections.Immutable;
using System.Text;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Prediction;
using BuckGen.Findings;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports.Card;

/// <summary>
/// A page for the bench: start values for heating, forming and cooling, the order of work, cautions, and lines to write down what
/// worked. They are there because the shop will repeat the order.
/// </summary>
public static class ProcessCard
{
    /// <summary>Lines wider than the page are wrapped, to a width that reads well; letters.</summary>
    private const int PageWidth = 110, LineLength = 96;

    private static readonly ImmutableArray<IReportSection> Before = [new StartValues(), new OrderOfWork()],
        After = [new Cautions(), new WhatWorked(), new CardSources()];

    /// <summary>The card as plain text in UTF-8; null when the plastic sheet is not known.</summary>
    /// <param name="plan">The design and its parts laid out on boards.</param>
    /// <param name="title">What the job is called; empty for the outline's name.</param>
    public static ImmutableArray<byte>? Write(CutPlan plan, string title) => Write(plan, title, []).Card;

    private static string Wall(Blank blank, BuckKind kind, FormedPart? part) => part switch
    {
        { IsConverged: true, Thinnest: { } thin } =>
            CardText.Line($"Wall        {WallText.Format(part.MeanRange)} on average over the part, thinnest ")
                + CardText.Line($"{WallText.Format(part.ThinnestRange)} at ")
                + CardText.Line($"{thin.Place.X:0.#}, {thin.Place.Y:0.#}, {thin.Height:0.#} mm up; predicted"),
        { IsConverged: true } =>
            CardText.Line($"Wall        {WallText.Format(part.MeanRange)} on average over the part; predicted"),
        _ => CardText.Line($"Wall        {blank.MeanThickness:0.##} mm on average over {Blank.AveragedOver(kind)}, by areas; ")
            + "corners are thinner",
    };

    private static string GapText(Blank blank) => (blank.Gap < 0
        ? CardText.Line($"{-2 * blank.Gap:0.#} mm too small for the buck")
        : CardText.Line($"{blank.Gap:0} mm from the buck")) + (blank.IsTurned ? "; turn the buck by 90 degrees" : "");

    private static IEnumerable<string> PartLines(BuckDesign design) => design.Part is not { } part ? []
        : PartRows.Create(PartReport.Create(part, design.Mating)).Where(r => r.What != "Wall")
            .Select((r, i) => $"{(i == 0 ? "Part" : ""),-12}{r.What.ToLowerInvariant()}: {r.Text}");

    /// <summary>The card with further sections after the order of work, and why any of them gave nothing.</summary>
    internal static (ImmutableArray<byte>? Card, ImmutableArray<Finding> Failures) Write(CutPlan plan, string title,
        ImmutableArray<IReportSection> further)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(title);
        if (plan.Design is not { Blank: { } blank, Spec.Sheet: { } sheet }) return (null, []);
        var (failures, text) = (new List<Finding>(), new StringBuilder());
        string[] head =
        [
            "PROCESS CARD", title.Length > 0 ? title : plan.Design.Outline.Name, "",
            CardText.Line(
                $"Sheet       {sheet.Plastic?.Name ?? "plastic not named"}, {blank.Gauge:0.##} mm; blank {blank.Width:0} x ")
                + CardText.Line($"{blank.Height:0} mm"),
            CardText.Line(
                $"Frame       {blank.Opening.Width:0} x {blank.Opening.Height:0} mm clear, {GapText(blank)}"),
            Wall(blank, plan.Design.Spec.Kind, plan.Design.Formed),
            .. PartLines(plan.Design),
        ];
        foreach (var line in head) text.Append(VisibleText.Escape(line)).Append('\n');
        foreach (var section in Before.Concat(further).Concat(After))
        {
            var (lines, failure) = ForeignCode.Call(section, () => section.Title, () => SectionResult.GetLines(section, plan));
            if (failure is not null) failures.Add(failure);
            if (lines.IsDefaultOrEmpty) continue;
            text.Append('\n').Append(VisibleText.Escape(section.Title.ToUpperInvariant())).Append('\n');
            foreach (var line in lines.Select(l => VisibleText.Escape(l))
                .SelectMany(l => l.Length <= PageWidth ? [l] : TextLines.Wrap(l, LineLength))) text.Append(line).Append('\n');
        }

        return ([.. Encoding.UTF8.GetBytes(text.ToString())], [.. failures]);
    }
}
