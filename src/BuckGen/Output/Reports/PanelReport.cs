using BuckGen.Design.Trimming;

namespace BuckGen.Output.Reports;

/// <summary>The face panel.</summary>
/// <param name="Fit">Room between part and opening on every side.</param>
/// <param name="Width">Width of the panel.</param>
/// <param name="Height">Height of the panel.</param>
/// <param name="Openings">Openings cut in it.</param>
/// <param name="Inlays">Pieces that come loose.</param>
public sealed record PanelReport(double Fit, double Width, double Height, int Openings, int Inlays)
{
    internal static PanelReport Create(FacePanel p)
    {
        var panel = p.Panel.Region;
        return new(ReportNumber.Round(p.Fit), ReportNumber.Round(panel.Bounds.Width), ReportNumber.Round(panel.Bounds.Height),
            panel.HoleCount, p.Inlays?.Parts.Length ?? 0);
    }
}
