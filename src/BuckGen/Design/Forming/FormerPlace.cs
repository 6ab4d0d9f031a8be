using BuckGen.Design.Bucks;
using BuckGen.Geometry;

namespace BuckGen.Design.Forming;

/// <summary>How the former lies over the drawing: frame and platen turn together, by a quarter, to suit the buck.</summary>
/// <param name="Opening">Clear opening of the frame, across and up the drawing, mm; null when it is not given.</param>
/// <param name="Platen">The platen, across and up the drawing, mm; null when it is not given.</param>
/// <param name="IsTurned">True when they are turned.</param>
internal sealed record FormerPlace(RectangleSize? Opening, RectangleSize? Platen, bool IsTurned)
{
    /// <summary>The way with more room; of two with the same, the one with its longer side along that of the part.</summary>
    /// <param name="former">The former.</param>
    /// <param name="part">What is formed of the buck.</param>
    /// <param name="stack">All that stands under the sheet.</param>
    public static FormerPlace Find(FormerSpec former, Bounds part, Bounds stack)
    {
        var given = new FormerPlace(former.Opening, former.Platen, false);
        var turned = new FormerPlace(Turn(former.Opening), Turn(former.Platen), true);
        var longer = former.Opening ?? former.Platen;
        var (first, second) = longer is null || longer.Width >= longer.Height == part.Width >= part.Height
            ? (given, turned)
            : (turned, given);
        return second.Room(stack) > first.Room(stack) ? second : first;
    }

    /// <summary>Room beside a rectangle, mm, where it is least; below 0 where it is too large.</summary>
    private double Room(Bounds stack) => Math.Min(Room(Opening, stack), Room(Platen, stack));

    private static double Room(RectangleSize? size, Bounds stack) =>
        size is null ? double.PositiveInfinity : Math.Min(size.Width - stack.Width, size.Height - stack.Height);

    private static RectangleSize? Turn(RectangleSize? size) => size is null ? null : new(size.Height, size.Width);
}
