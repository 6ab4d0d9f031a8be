using BuckGen.Cutting.CutPaths;

namespace BuckGen.Cutting.Boards;

/// <summary>A sheet with its parts as a drawing for the machine, kerf applied.</summary>
public static class SheetDrawing
{
    /// <summary>
    /// Every part in turn: marks, holes, outer edge. The sheet's lower left corner is (0, 0); its edge is not drawn.
    /// </summary>
    public static CutDrawing Create(SheetLayout sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new(
            FormattableString.Invariant($"Sheet {sheet.Number}, {sheet.Stock.Name}"),
            [.. sheet.Placements.SelectMany(p => p.Part.Paths.Select(path => path.Transformed(p.Map)))],
            new(0, 0, sheet.Piece.Width, sheet.Piece.Height));
    }
}
