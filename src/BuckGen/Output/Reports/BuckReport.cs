using BuckGen.Design;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>What is wanted and what results.</summary>
/// <param name="Kind">"male" or "female".</param>
/// <param name="DepthWanted">Wanted depth of the cooled part.</param>
/// <param name="Depth">Depth of the stack without its base plate.</param>
/// <param name="DepthMiss">Depth of the stack less the wanted depth with the shrinkage added.</param>
/// <param name="Height">Height of the whole stack with its base plate.</param>
/// <param name="Draft">Draft, degrees.</param>
/// <param name="OutlineAt">"face" or "base": where the outline is to size.</param>
/// <param name="Corners">"round" or "mitre".</param>
/// <param name="Steps">"outside", "inside" or "middle".</param>
/// <param name="Shrinkage">Shrinkage allowed for, per cent.</param>
/// <param name="Tolerance">Chord error.</param>
public sealed record BuckReport(
    string Kind, double DepthWanted, double Depth, double DepthMiss, double Height, double Draft,
    string OutlineAt, string Corners, string Steps, double Shrinkage, double Tolerance)
{
    internal static BuckReport Of(BuckDesign d) => new(
        Words.Of(d.Spec.Kind), Rounded.Of(d.Spec.Depth), Rounded.Of(d.Plan.Depth), Rounded.Of(d.Plan.Miss), Rounded.Of(d.Height), Rounded.Of(d.Spec.Draft),
        Words.Of(d.Spec.OutlineAt), Words.Of(d.Spec.Corners.Corners), Words.Of(d.Spec.Steps), Rounded.Of(d.Spec.ShrinkageAllowed),
        Rounded.Of(d.Spec.Tolerance.Chord));
}
