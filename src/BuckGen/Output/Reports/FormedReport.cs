using System.Collections.Immutable;
using BuckGen.Design.Prediction;
using BuckGen.Intake.Catalogs;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>The predicted wall of the formed part. Heights are above the bottom of the stack.</summary>
/// <param name="Detail">Quick or fine.</param>
/// <param name="Stepped">Whether the steps of the layers were formed over.</param>
/// <param name="AtRest">Whether the prediction converged; without that the numbers mean nothing.</param>
/// <param name="Gauge">Thickness before forming.</param>
/// <param name="Thinnest">The thinnest place of the part; null when none was found.</param>
/// <param name="ThinnestRange">Between which limits that thickness lies; null when it is not known.</param>
/// <param name="Of1Percent">Limits of the thickness that 1 % of its area does not exceed; null when not known.</param>
/// <param name="Of5Percent">Limits of the thickness that 5 % of its area does not exceed; null when not known.</param>
/// <param name="ThinnestOfSheet">The thinnest place anywhere in the frame; null when none was found.</param>
/// <param name="CornerBall">Radius of the ball that touches the thinnest place.</param>
/// <param name="Mean">Mean thickness of the part.</param>
/// <param name="MeanRange">Between which limits that mean lies; null when it is not known.</param>
/// <param name="MeanOfSheet">Mean thickness of all that lies in the frame.</param>
/// <param name="VolumeError">Plastic after over plastic before, less 1.</param>
/// <param name="Refinement">How much the thinnest place changes from a coarser net; null when it is not known.</param>
/// <param name="MaterialRatio">
/// Thinnest wall of the softest and of the stiffest sheet over that of the one between; null when it is not known.
/// </param>
/// <param name="GaugeNeeded">Limits of the gauge for the wanted minimum wall; null when none is given.</param>
/// <param name="Triangles">Triangles of the net.</param>
/// <param name="MinTriangleSide">Sides of the triangles at walls with room before them; those in gaps are smaller.</param>
/// <param name="FrameHeight">Where the frame stands at the end.</param>
/// <param name="Modulus">Shear modulus of the hot sheet, softest and stiffest.</param>
/// <param name="Stiffening">Ratio of its two constants.</param>
/// <param name="Friction">Friction between sheet and buck; null for a sheet that sticks.</param>
/// <param name="Webs">Where webs stand.</param>
/// <param name="Bridged">Where the sheet does not reach the buck.</param>
/// <param name="Inputs">What each uncertain input does to the thinnest wall; empty unless it was asked for.</param>
public sealed record FormedReport(
    string Detail, bool Stepped, bool AtRest, double Gauge, WallReport? Thinnest, RangeReport? ThinnestRange,
    RangeReport? Of1Percent, RangeReport? Of5Percent, WallReport? ThinnestOfSheet, double CornerBall, double Mean,
    RangeReport? MeanRange, double MeanOfSheet, double VolumeError, double? Refinement, RangeReport? MaterialRatio,
    RangeReport? GaugeNeeded, int Triangles, double MinTriangleSide, double FrameHeight,
    RangeReport Modulus, double Stiffening, double? Friction,
    ImmutableArray<PlaceReport> Webs, ImmutableArray<BridgedReport> Bridged, ImmutableArray<InputReport> Inputs)
{
    internal static FormedReport Create(FormedPart part) => new(
        Words.Format(part.Spec.Detail), part.Spec.Stepped, part.IsConverged, ReportNumber.Round(part.Gauge),
        WallReport.Create(part.Thinnest), Range(part.ThinnestRange), Range(part.ThicknessOf1Percent),
        Range(part.ThicknessOf5Percent), WallReport.Create(part.ThinnestOfSheet),
        ReportNumber.Round(part.BallRadius), ReportNumber.Round(part.MeanThickness), Range(part.MeanRange),
        ReportNumber.Round(part.MeanThicknessOfSheet), ReportNumber.Round(part.VolumeError),
        ReportNumber.Round(part.MeshSensitivity), Range(part.MaterialSensitivity), Range(part.RequiredGaugeRange),
        part.Triangles.Length, ReportNumber.Round(part.MinEdgeLength), ReportNumber.Round(part.FrameHeight),
        RangeReport.Create(part.Modulus), part.Spec.Stiffening, part.Spec.Friction,
        [.. part.Webs.Select(w => PlaceReport.Create(w.Place))],
        [.. part.Bridged
            .Select(b =>
                new BridgedReport(ReportNumber.Round(b.Gap), RangeReport.Create(b.Range), ReportNumber.Round(b.Place.X),
                    ReportNumber.Round(b.Place.Y), ReportNumber.Round(b.Height)))],
        [.. part.InputEffects.Select(InputReport.Create)]);

    private static RangeReport? Range(FigureRange? range) => range is { } limits ? RangeReport.Create(limits) : null;
}

/// <summary>A thin place.</summary>
/// <param name="Thickness">Thickness there.</param>
/// <param name="X">Place in the plan.</param>
/// <param name="Y">Place in the plan.</param>
/// <param name="Z">Height.</param>
public sealed record WallReport(double Thickness, double X, double Y, double Z)
{
    internal static WallReport? Create(ThinnestPlace? place) =>
        place is null ? null
            : new(ReportNumber.Round(place.Thickness), ReportNumber.Round(place.Place.X), ReportNumber.Round(place.Place.Y),
                ReportNumber.Round(place.Height));
}

/// <summary>A place that the sheet does not reach.</summary>
/// <param name="Distance">How far it stands off.</param>
/// <param name="Range">Limits of that distance.</param>
/// <param name="X">Place in the plan.</param>
/// <param name="Y">Place in the plan.</param>
/// <param name="Z">Height.</param>
public sealed record BridgedReport(double Distance, RangeReport Range, double X, double Y, double Z);

/// <summary>What one uncertain input does to the thinnest wall.</summary>
/// <param name="Input">The input in words.</param>
/// <param name="From">One end of its range, with its unit.</param>
/// <param name="To">The other end.</param>
/// <param name="ThinnestFrom">Thinnest wall at the first end, mm; null when not known.</param>
/// <param name="ThinnestTo">Thinnest wall at the other end, mm; null when not known.</param>
/// <param name="Effect">The change in words.</param>
public sealed record InputReport(
    string Input, string From, string To, double? ThinnestFrom, double? ThinnestTo, string Effect)
{
    internal static InputReport Create(InputEffect effect) => new(
        InputText.Name(effect.Input), InputText.Value(effect.Input, effect.From), InputText.Value(effect.Input, effect.To),
        ReportNumber.Round(effect.ThinnestFrom), ReportNumber.Round(effect.ThinnestTo), InputText.Effect(effect));
}
