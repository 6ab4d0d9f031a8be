using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Design.Trimming;

/// <summary>Makes the finished edge of a flange.</summary>
internal static class FlangeEdge
{
    /// <summary>The rim.</summary>
    /// <param name="shell">Makes the offsets.</param>
    /// <param name="part">The part's outside where it meets the flange, without its counters.</param>
    /// <param name="flange">What is wanted.</param>
    /// <exception cref="SpecException">The corner radius is too large for the rectangle.</exception>
    public static Region Create(PartShell shell, Region part, FlangeSpec flange) => flange switch
    {
        { Rim: FlangeRim.Drawn, Outline: { } drawn } => drawn,
        { Rim: FlangeRim.Rectangle } => Rectangle(shell, part.Bounds.Grown(flange.Margin ?? flange.Width), flange.CornerRadius),
        _ => PartShell.Filled(shell.Moved(part, flange.Width)),
    };

    private static Region Rectangle(PartShell shell, Bounds box, double radius)
    {
        var max = Math.Min(box.Width, box.Height) / 2;
        if (radius >= max)
            throw new SpecException(FormattableString.Invariant(
                $"The corner radius of the flange is {radius:0.##} mm; a rim of {box.Width:0.##} x {box.Height:0.##} mm has ")
                + FormattableString.Invariant($"corners below {max:0.##} mm."));
        return radius == 0
            ? new([new(Loop.Rectangle(box), [])])
            : shell.Moved(new([new(Loop.Rectangle(box.Grown(-radius)), [])]), radius);
    }
}
