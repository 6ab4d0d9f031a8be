using System.Collections.Immutable;
using System.Text.Json.Serialization;
using BuckGen.Design;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>What is wanted and what results.</summary>
/// <param name="Kind">"male" or "female".</param>
/// <param name="DepthWanted">Wanted depth of the cooled part.</param>
/// <param name="Depth">Depth of the stack without its base plate.</param>
/// <param name="DepthMiss">Depth of the stack less the wanted depth with the shrinkage added.</param>
/// <param name="Height">Height of the whole stack with its base plate.</param>
/// <param name="Draft">Draft, degrees; the smallest where the side has stretches of its own.</param>
/// <param name="OutlineAt">"face" or "base": where the outline is to size.</param>
/// <param name="Corners">"round" or "mitre".</param>
/// <param name="Steps">"outside", "inside" or "middle".</param>
/// <param name="Shrinkage">Shrinkage allowed for, per cent.</param>
/// <param name="Tolerance">Chord error.</param>
public sealed record BuckReport(
    string Kind, double DepthWanted, double Depth, double DepthMiss, double Height, double Draft,
    string OutlineAt, string Corners, string Steps, double Shrinkage, double Tolerance)
{
    /// <summary>The stretches of the side, from the flange to the face; null for one draft.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<SideReport>? Side { get; init; }

    /// <summary>Radius to which the upper edge of the glued buck is rounded; null for a sharp edge.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? EdgeRadius { get; init; }

    internal static BuckReport Create(BuckDesign d) => new(
        Words.Format(d.Spec.Kind), ReportNumber.Round(d.Spec.Depth), ReportNumber.Round(d.Plan.Depth),
        ReportNumber.Round(d.Plan.Miss), ReportNumber.Round(d.Height), ReportNumber.Round(d.Spec.Draft),
        Words.Format(d.Spec.OutlineAt), Words.Format(d.Spec.Corners.Corners), Words.Format(d.Spec.Steps),
        ReportNumber.Round(d.Spec.ShrinkageAllowed),
        ReportNumber.Round(d.Spec.Tolerance.Chord))
    {
        Side = d.Solid?.Shape.Side is { StraightDraft: null } side ? [.. side.Pieces.Select(SideReport.Create)] : null,
        EdgeRadius = d.Spec.EdgeRadius == 0 ? null : ReportNumber.Round(d.Spec.EdgeRadius),
    };
}
