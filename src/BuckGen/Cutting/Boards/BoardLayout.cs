using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Geometry;

namespace BuckGen.Cutting.Boards;

/// <summary>A part on a board.</summary>
/// <param name="Part">The part.</param>
/// <param name="Map">From the design's coordinates to the board's: a shift, perhaps with a quarter turn.</param>
/// <param name="Bounds">Where its outer cut lies on the board.</param>
public sealed record Placement(CutPart Part, Affine Map, Bounds Bounds);

/// <summary>
/// One board of stock with parts on it, or the piece of it that the machine's bed holds; its lower left corner is (0, 0).
/// </summary>
/// <param name="Number">1 for the first board of the whole job.</param>
/// <param name="Stock">What it is.</param>
/// <param name="Placements">The parts on it.</param>
public sealed record BoardLayout(int Number, Stock Stock, ImmutableArray<Placement> Placements)
{
    /// <summary>The piece of the board that goes on the machine: all of it, or what its bed holds.</summary>
    public RectangleSize Piece { get; init; } = new(Stock.BoardWidth, Stock.BoardHeight);

    /// <summary>How many such pieces a whole board gives, all lying the same way.</summary>
    public int PiecesPerBoard => Math.Max(1, Math.Max(InRows(Piece.Width, Piece.Height), InRows(Piece.Height, Piece.Width)));

    /// <summary>Area of the finished parts over area of the piece, 0 to 1.</summary>
    public double Utilisation => Placements.Sum(p => p.Part.Area) / (Piece.Width * Piece.Height);

    private int InRows(double width, double height) => (int)(Stock.BoardWidth / width) * (int)(Stock.BoardHeight / height);
}
