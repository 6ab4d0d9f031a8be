using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Geometry;

namespace BuckGen.Design.Grouping;

/// <summary>Does a buck round some islands go through the frame and stand on the platen? The arithmetic of the checks.</summary>
/// <param name="Former">The former; its frame is known.</param>
/// <param name="IsMale">True for raised bucks.</param>
/// <param name="StackMargin">How far what stands under the sheet reaches beyond what is formed, mm on every side.</param>
/// <param name="Gap">Minimum distance from what is formed to the frame, mm.</param>
/// <param name="BaseGap">Minimum distance from what stands under the sheet to the frame, mm.</param>
internal sealed record FrameRoom(FormerSpec Former, bool IsMale, double StackMargin, double Gap, double BaseGap)
{
    /// <summary>Rounding of a length, mm.</summary>
    private const double Rounding = 1e-6;

    /// <summary>True when a buck for what is formed within these bounds fits, either way round.</summary>
    public bool Holds(Bounds formed) => Missing(formed) <= Rounding;

    /// <summary>How much too large it is, mm, the better way round; 0 or less when it fits.</summary>
    public double Missing(Bounds formed) => Math.Min(Missing(formed, false), Missing(formed, true));

    private double Missing(Bounds formed, bool turned)
    {
        var stack = formed.Grown(StackMargin);
        var frame = Math.Max(Over(formed, Former.Opening!, Gap, turned), Carried(formed, turned) ? double.NegativeInfinity
            : Over(stack, Former.Opening!, BaseGap, turned));
        return Former.Platen is { } platen ? Math.Max(frame, Over(stack, platen, 0, turned)) : frame;
    }

    /// <summary>True when the frame stands on the block of a cavity all round.</summary>
    private bool Carried(Bounds formed, bool turned)
    {
        var (block, opening) = (formed.Grown(StackMargin), Turned(Former.Opening!, turned));
        return !IsMale && block.Width >= opening.Width - Rounding && block.Height >= opening.Height - Rounding;
    }

    private static double Over(Bounds what, RectangleSize room, double gap, bool turned)
    {
        var size = Turned(room, turned);
        return Math.Max(what.Width + 2 * gap - size.Width, what.Height + 2 * gap - size.Height);
    }

    private static RectangleSize Turned(RectangleSize size, bool turned) => turned ? new(size.Height, size.Width) : size;
}
