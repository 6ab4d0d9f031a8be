using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Design.Checks;

/// <summary>
/// Has the base, or the block of a cavity, room in the frame and on the platen? When not, says which margin would do.
/// </summary>
/// <param name="design">The design.</param>
/// <param name="part">What is formed of the buck.</param>
/// <param name="stack">All that stands under the sheet.</param>
internal sealed class BaseRoom(DesignView design, Bounds part, Bounds stack)
{
    /// <summary>Minimum plate beside the foot, mm, for vents and for the sheet to lie on: common practice, no source.</summary>
    private const double MinMargin = 6;

    /// <summary>Rounding of a length, mm.</summary>
    private const double Rounding = 1e-6;

    /// <summary>The side that is too large by more, and its limit; mm.</summary>
    public static (double Side, double Limit) Worst(Bounds what, RectangleSize room) =>
        what.Width - room.Width >= what.Height - room.Height ? (what.Width, room.Width) : (what.Height, room.Height);

    /// <summary>The finding about the platen; null when all lies on it.</summary>
    public Finding? OverPlaten(RectangleSize platen)
    {
        var (side, limit) = Worst(stack, platen);
        return side <= limit + Rounding
            ? null
            : new("platen-too-small", Severity.Error,
                FormattableString.Invariant($"{What} of {Size(stack)} reaches {side - limit:0.#} mm over the platen of ")
                    + FormattableString.Invariant($"{platen.Width:0.#} x {platen.Height:0.#} mm."),
                Remedy(platen, 0, "a larger platen"))
            {
                Value = side,
                Limit = limit,
            };
    }

    /// <summary>The finding about the frame; null when all goes through it, or when a block carries it all round.</summary>
    public Finding? InFrame(RectangleSize opening)
    {
        var (side, limit) = Worst(stack, opening);
        if (side > limit + Rounding) return Carries(opening) ? null : Over(opening, side, limit);
        var (gap, minGap) = ((limit - side) / 2, design.Former.BaseGap);
        // What is formed has a gap of its own, which is larger.
        return stack == part || gap >= minGap - Rounding
            ? null
            : new("base-near-frame", Severity.Warning,
                FormattableString.Invariant($"Only {gap:0.##} mm lie between the frame and {Lower(What)} of {Size(stack)}; the ")
                    + FormattableString.Invariant($"sheet is drawn down there and needs {minGap:0.##} mm on every side."),
                Remedy(opening, minGap, "a larger frame"))
            {
                Value = gap,
                Limit = minGap,
                Source = "common practice, no source",
            };
    }

    private string What => design.Spec.Base is not null ? "The base" : design.IsMale ? "The buck" : "The block";

    private Finding Over(RectangleSize opening, double side, double limit) =>
        new("base-over-frame", Severity.Error,
            FormattableString.Invariant($"{What} of {Size(stack)} does not go through the frame of {opening.Width:0.#} x ")
                + FormattableString.Invariant($"{opening.Height:0.#} mm: it is {side - limit:0.#} mm too large")
                + (design.IsMale ? "." : ", and the block carries the frame on two sides only."),
            Remedy(opening, design.Former.BaseGap, "a larger frame"))
        {
            Value = side,
            Limit = limit,
        };

    /// <summary>True when a frame stands on the block of a cavity all round.</summary>
    private bool Carries(RectangleSize opening)
    {
        if (design.IsMale) return false;
        var block = part.Grown(design.Spec.BlockMargin);
        return block.Width >= opening.Width - Rounding && block.Height >= opening.Height - Rounding;
    }

    /// <summary>
    /// Names the margin that would fit, where one does. A plate cut to the outline reaches as far as a rectangle with the same
    /// margin, so that it would gain nothing.
    /// </summary>
    private string Remedy(RectangleSize room, double gap, string larger)
    {
        var foot = design.IsMale ? part : part.Grown(design.Spec.BlockMargin);
        var margin = Math.Floor((Math.Min(room.Width - foot.Width, room.Height - foot.Height) / 2 - gap) * 10 + Rounding) / 10;
        if (design.Spec.Base is { } plate && margin >= MinMargin)
            return FormattableString.Invariant($"Use a base margin of at most {margin:0.#} mm instead of {plate.Margin:0.#} mm, ")
                + $"or {larger}.";
        var parts = design.IsMale ? "a smaller part" : "a smaller block-margin";
        return design.Shape.At(design.Shape.ReferenceHeight).Islands.Length == 1 ? $"Use {larger} or {parts}."
            : $"Use {larger} or {parts}, or make several bucks with the table [groups] of the job.";
    }

    private static string Size(Bounds bounds) => FormattableString.Invariant($"{bounds.Width:0.#} x {bounds.Height:0.#} mm");

    private static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
