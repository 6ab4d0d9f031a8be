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
        { Rim: FlangeRim.Rectangle } =>
            RoundedRectangle.Create(shell, part.Bounds.Grown(flange.Margin ?? flange.Width), flange.CornerRadius, "flange"),
        _ => PartShell.Filled(shell.Moved(part, flange.Width)),
    };
}
