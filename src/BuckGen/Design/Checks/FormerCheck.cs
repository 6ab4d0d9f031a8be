using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Design.Checks;

/// <summary>Does all that stands under the sheet fit the former: the frame, the platen, the lift, the sheets to buy?</summary>
internal sealed class FormerCheck : IDesignCheck
{
    public string Name => "former";

    /// <summary>Rounding of a gap, mm.</summary>
    private const double Rounding = 1e-6;

    public IEnumerable<Finding> Run(DesignView design)
    {
        if (LiftFinding.Find(design) is { } lift) yield return lift;
        var part = design.Shape.At(design.IsMale ? design.Shape.Foot : design.Shape.Face).Bounds;
        var stack = new StackedSolid(design.Shape, design.Spec).Plan;
        var place = FormerPlace.Find(design.Former, part, stack);
        var room = new BaseRoom(design, part, stack);
        if (place.Platen is { } platen && room.OverPlaten(platen) is { } over) yield return over;
        // A frame that the blank decides is large enough.
        if (place.Opening is { } opening)
            foreach (var finding in InFrame(design, room, part, opening)) yield return finding;
        if (design.Blank is { } blank && SheetTooSmall(blank) is { } small) yield return small;
    }

    private static IEnumerable<Finding> InFrame(DesignView design, BaseRoom room, Bounds part, RectangleSize opening)
    {
        if (part.Width > opening.Width + Rounding || part.Height > opening.Height + Rounding)
        {
            var (side, limit) = BaseRoom.Worst(part, opening);
            yield return new("frame-too-small", Severity.Error,
                FormattableString.Invariant(
                    $"The part of {part.Width:0.#} x {part.Height:0.#} mm does not fit the frame of {opening.Width:0.#} x ")
                    + FormattableString.Invariant($"{opening.Height:0.#} mm: it is {side - limit:0.#} mm too large."),
                design.Shape.At(design.Shape.ReferenceHeight).Islands.Length == 1
                    ? "Use a larger former, or make the part smaller."
                    : "Use a larger former, make the part smaller, or make several bucks with the table [groups] of the job.")
            {
                Value = side,
                Limit = limit,
            };
            yield break;
        }

        if (room.InFrame(opening) is { } finding) yield return finding;
        if (FrameTight(design, part, opening) is { } tight) yield return tight;
    }

    /// <summary>What drapes needs sheet to drape from; in a cavity only the seal needs its land.</summary>
    private static Finding? FrameTight(DesignView design, Bounds part, RectangleSize opening)
    {
        var rise = Blank.RiseThrough(opening, design.Spec, design.Shape, design.Plan.Depth);
        var minGap = Math.Max(Blank.MinGap, design.Checks.MinFrameGap * rise);
        var gap = Math.Min(opening.Width - part.Width, opening.Height - part.Height) / 2;
        return gap >= minGap - Rounding
            ? null
            : new("frame-tight", Severity.Warning,
                FormattableString.Invariant(
                    $"Only {gap:0.#} mm lie between buck and frame; under {minGap:0.#} mm the walls thin, and ")
                    + FormattableString.Invariant(
                        $"{Math.Max(Blank.MinGap, rise):0.#} mm is comfortable."),
                "Use a larger frame, a lower buck, thinner plates under it, or a smaller part.")
            {
                Value = gap,
                Limit = minGap,
                Source = "Takahashi and Bando, Dental Traumatology 2018 (measured); the limit is common practice, no source",
            };
    }

    private static Finding? SheetTooSmall(Blank blank)
    {
        if (blank.Yields.IsEmpty || blank.Yields.Any(y => y.Count > 0)) return null;
        // Of the sheets the one that misses least, laid the way it misses least.
        var (side, limit) = blank.Yields.SelectMany(y => (RectangleSize[])[y.Sheet, new(y.Sheet.Height, y.Sheet.Width)])
            .Select(s => BaseRoom.Worst(new(0, 0, blank.Width, blank.Height), s)).MinBy(w => w.Side - w.Limit);
        return new("sheet-too-small", Severity.Error,
            FormattableString.Invariant($"The blank of {blank.Width:0.#} x {blank.Height:0.#} mm can't be cut from any sheet: ")
                + FormattableString.Invariant($"the best of them is {side - limit:0.#} mm too small."),
            "Buy a larger sheet, or use a smaller frame.")
        {
            Value = side,
            Limit = limit,
        };
    }
}
