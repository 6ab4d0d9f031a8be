using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Design.Trimming;

/// <summary>An upright rectangle with rounded corners: the edge of a panel or a flange.</summary>
internal static class RoundedRectangle
{
    /// <summary>The rectangle.</summary>
    /// <param name="shell">Makes the offsets.</param>
    /// <param name="box">Its size and place.</param>
    /// <param name="radius">Radius of its corners, mm, less than half of its shorter side; 0 for sharp ones.</param>
    /// <param name="owner">Whose edge it is, as the message names it.</param>
    /// <exception cref="SpecException">The radius is too large.</exception>
    public static Region Create(PartShell shell, Bounds box, double radius, string owner)
    {
        var max = Math.Min(box.Width, box.Height) / 2;
        if (radius >= max)
            throw new SpecException(FormattableString.Invariant(
                $"The corner radius of the {owner} is {radius:0.##} mm; an edge of {box.Width:0.##} x {box.Height:0.##} mm has ")
                + FormattableString.Invariant($"corners below {max:0.##} mm."));
        return radius == 0
            ? new([new(Loop.Rectangle(box), [])])
            : shell.Moved(new([new(Loop.Rectangle(box.Grown(-radius)), [])]), radius);
    }
}
