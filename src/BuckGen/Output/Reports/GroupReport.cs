using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Findings;

namespace BuckGen.Output.Reports;

/// <summary>One buck of a sign that is made in several.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Folder">The folder of its files, below the output folder.</param>
/// <param name="Islands">Bounds of the drawing's islands in it.</param>
/// <param name="Bounds">Where the formed piece meets its flange, in the drawing's coordinates.</param>
/// <param name="BlankWidth">Width of its blank; null when nothing is formed.</param>
/// <param name="BlankHeight">Height of its blank; null when nothing is formed.</param>
/// <param name="FrameGap">From the buck to the inside of the frame, where it is narrowest; null when nothing is formed.</param>
/// <param name="MeanThickness">Mean thickness by areas, as in the blank; null when nothing is formed.</param>
/// <param name="Boards">Boards it is cut from.</param>
/// <param name="CutLength">Length cut through in them.</param>
/// <param name="Errors">Findings that stop it.</param>
/// <param name="Warnings">Findings to look at.</param>
public sealed record GroupReport(
    int Number, string Folder, ImmutableArray<BoundsReport> Islands, BoundsReport Bounds, double? BlankWidth, double? BlankHeight,
    double? FrameGap, double? MeanThickness, int Boards, double CutLength, int Errors, int Warnings)
{
    internal static ImmutableArray<GroupReport> Create(CutPlan plan) =>
        [.. plan.Design.Groups.Zip(plan.Groups, (group, cut) => Create(group, cut))];

    private static GroupReport Create(BuckGroup group, CutPlan cut)
    {
        var (design, findings) = (group.Design, cut.AllFindings);
        return new(
            group.Number, BuckFolders.OfGroup(group.Number),
            [.. design.Outline.Region.Islands.Select(i => BoundsReport.Create(i.Outer.Bounds))],
            BoundsReport.Create(design.Footprint.IsEmpty ? design.Outline.Region.Bounds : design.Footprint.Bounds),
            Rounded(design.Blank?.Width), Rounded(design.Blank?.Height), Rounded(design.Blank?.Gap),
            Rounded(design.Blank?.MeanThickness), cut.Boards.Length, ReportNumber.Round(cut.CutLength),
            findings.Count(f => f.Severity == Severity.Error), findings.Count(f => f.Severity == Severity.Warning));
    }

    private static double? Rounded(double? value) => value is { } number ? ReportNumber.Round(number) : null;
}
