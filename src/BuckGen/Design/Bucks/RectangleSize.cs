namespace BuckGen.Design.Bucks;

/// <summary>Width and height of a rectangle: a plastic sheet, a machine's bed, the opening of a frame.</summary>
/// <param name="Width">One side, mm.</param>
/// <param name="Height">The other side, mm.</param>
public sealed record RectangleSize(double Width, double Height);
