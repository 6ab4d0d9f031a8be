using BuckGen.Geometry;

namespace BuckGen.Intake.Outlines;

/// <summary>How large an outline may be: one rule for drawings that are read and for outlines made in code.</summary>
internal static class OutlineSize
{
    /// <summary>
    /// Maximum width and height, mm; beyond it no board, sheet or frame is made, and most likely the unit is wrong.
    /// </summary>
    private const double MaxSize = 100_000;

    /// <summary>Refuses an outline that is too large, or of which nothing is wider than rounding.</summary>
    /// <exception cref="OutlineException">The outline is too large or too small; the message names its size and the
    /// limit.</exception>
    public static void Require(string name, Region region, Tolerance tolerance)
    {
        var (width, height) = (region.Bounds.Width, region.Bounds.Height);
        if (NegligibleLoops.Remove(region, tolerance.Chord).IsEmpty)
            throw new OutlineException(FormattableString.Invariant(
                $"{name}: the outline is {width:0.####} x {height:0.####} mm and nowhere wider than ")
                + FormattableString.Invariant(
                    $"{tolerance.Chord / 4:0.####} mm, which is as good as nothing; say which unit it is drawn in, or make ")
                    + "the drawing larger");
        if (Math.Max(width, height) > MaxSize)
            throw new OutlineException(FormattableString.Invariant(
                $"{name}: the outline is {width:0.#} x {height:0.#} mm, the limit is {MaxSize} mm; say which unit it is ")
                + "drawn in, or make the drawing smaller");
    }
}
