using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures;

/// <summary>Where a drawing stands on paper: its scale, and the map from real to paper.</summary>
/// <param name="Scale">The scale.</param>
/// <param name="Corner">Lower left corner of the drawing, on paper.</param>
/// <param name="Real">What is shown, mm in the design's coordinates.</param>
internal sealed record PaperView(DrawingScale Scale, Vec2 Corner, Bounds Real)
{
    /// <summary>Width of a page of the report, mm: A4 and Letter with their margins hold it.</summary>
    public const double PageWidth = 180;

    /// <summary>From the edge of the page to what stands on it, and room for a dimension, mm.</summary>
    public const double Margin = 6, DimensionRoom = 12;

    /// <summary>Size on paper, mm.</summary>
    public double Width => Real.Width * Scale.Factor;

    /// <summary>Size on paper, mm.</summary>
    public double Height => Real.Height * Scale.Factor;

    /// <summary>From real to paper.</summary>
    public Affine Map => Affine.Translation(-Real.LowerLeft).Then(new(Scale.Factor, 0, 0, Scale.Factor, Corner.X, Corner.Y));

    /// <summary>A drawing in the middle of a page of the usual width, with room for dimensions on the left and below.</summary>
    /// <param name="real">What is shown.</param>
    /// <param name="maxHeight">Maximum height on paper, mm.</param>
    /// <param name="below">Room below the drawing, mm.</param>
    /// <param name="right">Room on its right, mm.</param>
    /// <param name="left">Room on its left, mm.</param>
    public static PaperView Centred(Bounds real, double maxHeight, double below, double left = DimensionRoom, double right = 0)
    {
        var room = PageWidth - 2 * Margin - left - right;
        var scale = DrawingScale.ToFit(real.Width, real.Height, room, maxHeight);
        return new(scale, new(Margin + left + (room - real.Width * scale.Factor) / 2, below), real);
    }

    /// <summary>The words that say the scale, at the right end of a line.</summary>
    /// <param name="height">Where the line stands.</param>
    /// <param name="right">The right edge of the page.</param>
    public PictureText ScaleAt(double height, double right = PageWidth) =>
        new(new(right - Margin, height), $"Scale {Scale}", TextLines.Height, TextAlign.End, PictureColours.Grey);
}
