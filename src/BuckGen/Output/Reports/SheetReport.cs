using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;

namespace BuckGen.Output.Reports;

/// <summary>One sheet to cut.</summary>
/// <param name="Stock">Name of the sheet.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="File">The sheet's DXF, or null when it was not written.</param>
/// <param name="Utilisation">Area of parts over area of sheet, 0 to 1.</param>
/// <param name="Parts">Lettering of the parts on it.</param>
public sealed record SheetReport(
    string Stock, double Thickness, double Width, double Height, string? File, double Utilisation, ImmutableArray<string> Parts)
{
    internal static SheetReport Create(SheetLayout s, ImmutableArray<string> files) => new(
        s.Stock.Name, ReportNumber.Round(s.Stock.Thickness), ReportNumber.Round(s.Piece.Width), ReportNumber.Round(s.Piece.Height),
        Summary.Listed(CutFilePaths.Sheet(s), files), ReportNumber.Round(s.Utilisation), [.. s.Placements.Select(p => p.Part.Name)]);
}
