using BuckGen.Cutting.CutPaths;

namespace BuckGen.Cutting.Boards;

/// <summary>A board with its parts as a drawing for the machine, kerf applied.</summary>
public static class BoardDrawing
{
    /// <summary>
    /// Every part in turn: marks, holes, outer edge. The board's lower left corner is (0, 0); its edge is not drawn.
    /// </summary>
    public static CutDrawing Create(BoardLayout board)
    {
        ArgumentNullException.ThrowIfNull(board);
        return new(
            FormattableString.Invariant($"Board {board.Number}, {board.Stock.Name}") + FaceDown(board),
            [.. board.Placements.SelectMany(p => p.Part.Paths.Select(path => path.Transformed(p.Map)))],
            new(0, 0, board.Piece.Width, board.Piece.Height));
    }

    private static string FaceDown(BoardLayout board) =>
        string.Join(", ", board.Placements.Where(p => p.Part.IsFaceDown).Select(p => p.Part.Name)) is { Length: > 0 } names
            ? $"; face down: {names}"
            : "";
}
