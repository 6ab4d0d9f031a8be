using BuckGen.Design.Venting;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>How the air leaves through the vents.</summary>
/// <param name="Volume">Air under the sheet, litres.</param>
/// <param name="VentsNeeded">Vents of this size that would do for the flow; null when no number would.</param>
/// <param name="VentsPlaced">Vents placed.</param>
/// <param name="RuledBy">"shape" or "flow": what decided the number.</param>
/// <param name="Seconds">Time until the sheet lies on the buck, s; null when it takes more than a minute.</param>
/// <param name="RigidSeconds">Time to evacuate the volume if the sheet did not sink, s; null as above.</param>
/// <param name="ChokedShare">Share of the time in which the vents are choked, 0 to 1.</param>
/// <param name="HeldBackBy">"holes", "pump" or "reservoir".</param>
/// <param name="FormedThickness">Mean thickness of the formed sheet.</param>
/// <param name="ArealDrawRatio">Formed area over flat area.</param>
/// <param name="BoardForce">Force with which the air outside presses on the base, N, at the vacuum of the reservoir.</param>
public sealed record AirReport(
    double Volume, int? VentsNeeded, int VentsPlaced, string RuledBy, double? Seconds, double? RigidSeconds, double ChokedShare,
    string HeldBackBy, double FormedThickness, double ArealDrawRatio, double BoardForce)
{
    internal static AirReport Create(VentDesign v) => new(
        ReportNumber.Round(v.Air.Volume), v.Air.Needed, v.Vents.Length, v.Air.RuledByFlow ? "flow"
            : "shape", ReportNumber.Round(v.Air.DrawDown.Seconds),
        ReportNumber.Round(v.Air.DrawDown.RigidSeconds), ReportNumber.Round(v.Air.DrawDown.ChokedShare),
        Words.Format(v.Air.DrawDown.Bottleneck),
        ReportNumber.Round(v.Sizing.FormedThickness), ReportNumber.Round(v.Sizing.ArealRatio),
        ReportNumber.Round(v.BoardForce));
}
