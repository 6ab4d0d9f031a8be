using System.Collections.Immutable;
using BuckGen.Cutting.Seams;

namespace BuckGen.Output.Reports;

/// <summary>A plate that is cut in pieces.</summary>
/// <param name="Name">Its lettering.</param>
/// <param name="Pieces">Lettering of the pieces.</param>
/// <param name="Seams">The seams between them.</param>
public sealed record PlateReport(string Name, ImmutableArray<string> Pieces, ImmutableArray<SeamReport> Seams)
{
    internal static PlateReport Create(SeamedPlate p) => new(p.Name, p.Pieces, [.. p.Seams.Select(SeamReport.Create)]);
}

/// <summary>A straight seam of a plate.</summary>
/// <param name="Upright">True when it runs up the drawing, false when it runs across.</param>
/// <param name="At">Where it stands: x of an upright seam, y of a level one.</param>
/// <param name="From">Its lower or left end.</param>
/// <param name="To">Its upper or right end.</param>
/// <param name="Joints">Middles of its keys or dowels along it.</param>
public sealed record SeamReport(bool Upright, double At, double From, double To, ImmutableArray<double> Joints)
{
    internal static SeamReport Create(PlateSeam s) => new(
        s.IsUpright, ReportNumber.Round(s.At), ReportNumber.Round(s.From), ReportNumber.Round(s.To),
        [.. s.Joints.Select(j => ReportNumber.Round(j))]);
}
