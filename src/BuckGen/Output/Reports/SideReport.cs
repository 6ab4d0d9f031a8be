using BuckGen.Design.Bucks;

namespace BuckGen.Output.Reports;

/// <summary>A stretch of the side of the buck.</summary>
/// <param name="From">Where it starts, mm from the plane of the flange.</param>
/// <param name="To">Where it ends, mm from the plane of the flange.</param>
/// <param name="Draft">Its slope away from upright, degrees; null for a ledge.</param>
/// <param name="Inset">How far it leads in on every side, mm.</param>
public sealed record SideReport(double From, double To, double? Draft, double Inset)
{
    internal static SideReport Create(SidePiece piece)
    {
        // The height that a ledge is computed with is none to a maker.
        var middle = Math.Round((piece.Start.FromFlange + piece.End.FromFlange) / 2, 3);
        return piece.IsLedge ? new(middle, middle, null, Inset())
            : new(Height(piece.Start), Height(piece.End), ReportNumber.Round(piece.Draft), Inset());

        double Inset() => Math.Round(piece.End.Inset - piece.Start.Inset, 3);
    }

    private static double Height(SideBend bend) => Math.Round(bend.FromFlange, 2);
}
