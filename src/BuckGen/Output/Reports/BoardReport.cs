using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;

namespace BuckGen.Output.Reports;

/// <summary>One board to cut.</summary>
/// <param name="Stock">Name of the stock.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="File">The board's DXF, or null when it was not written.</param>
/// <param name="Utilisation">Area of parts over area of board, 0 to 1.</param>
/// <param name="Parts">Lettering of the parts on it.</param>
public sealed record BoardReport(
    string Stock, double Thickness, double Width, double Height, string? File, double Utilisation, ImmutableArray<string> Parts)
{
    internal static BoardReport Create(BoardLayout b, ImmutableArray<string> files) => new(
        b.Stock.Name, ReportNumber.Round(b.Stock.Thickness), ReportNumber.Round(b.Piece.Width),
        ReportNumber.Round(b.Piece.Height),
        Summary.Listed(CutFilePaths.Board(b), files), ReportNumber.Round(b.Utilisation),
        [.. b.Placements.Select(p => p.Part.Name)]);
}
