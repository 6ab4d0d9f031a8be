using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Forming;

/// <summary>The piece of sheet that is clamped. Lengths in mm.</summary>
/// <param name="Width">Width of the blank.</param>
/// <param name="Height">Height of the blank.</param>
/// <param name="Opening">What of it lies free inside the frame.</param>
/// <param name="Gap">
/// From the part of the buck that is formed to the inside of the frame, where it is narrowest; below 0 when it is too large.
/// </param>
/// <param name="Surface">Flat and formed areas.</param>
/// <param name="Ratios">How far the sheet is drawn.</param>
/// <param name="Gauge">Thickness before forming.</param>
/// <param name="MeanThickness">
/// Mean thickness after forming, of part and skirt over a male buck, of the part in a cavity; by areas alone, so corners end up
/// thinner.
/// </param>
/// <param name="GaugeForMinWall">Gauge whose mean thickness is the wanted thinnest wall; null when none is given.</param>
/// <param name="PlugWall">
/// Mean thickness of a cavity's walls when a plug carries the floor's sheet down at full gauge; null without a plug. Source:
/// Crawford, Plastics Engineering, 3rd ed., example 4.7.
/// </param>
/// <param name="Yields">How many blanks each sheet of the shop gives.</param>
public sealed record Blank(
    double Width, double Height, RectangleSize Opening, double Gap, FormedSurface Surface, DrawRatios Ratios,
    double Gauge, double MeanThickness, double? GaugeForMinWall, double? PlugWall, ImmutableArray<BlankYield> Yields)
{
    /// <summary>
    /// From all that stands under the sheet, the base included, to the inside of the frame, where it is narrowest; below 0 when
    /// it does not go through the frame.
    /// </summary>
    public double BaseGap { get; init; }

    /// <summary>True when the frame of the former lies turned by a quarter over the drawing.</summary>
    public bool IsTurned { get; init; }

    /// <summary>Minimum gap between buck and frame, mm (common practice, no source).</summary>
    public const double MinGap = 25;

    /// <summary>Minimum gap between a plate and the frame with which the plate goes through the frame, mm.</summary>
    internal const double MinClearance = 0.5;

    /// <summary>
    /// The blank of a buck; null when the sheet is not known, or when nothing is left of the plane it is clamped in.
    /// </summary>
    internal static Blank? Compute(
        DraftedShape shape, StackSpec spec, SheetSpec? sheet, FormerSpec former, double depth, IReadOnlyList<double> heights,
        IOffsetter offsetter, CancellationToken cancellation)
    {
        var finished = shape.Finished;
        var plane = finished.At(spec.Kind == BuckKind.Male ? shape.Foot : shape.Face, cancellation);
        if (sheet is null || plane.IsEmpty) return null;
        var footprint = plane.Bounds;
        var isMale = spec.Kind == BuckKind.Male;
        // A frame that is not given is made large enough for the plates.
        var wanted = former.Gap ?? Math.Max(MinGap, isMale ? depth + shape.Foot : 0);
        var stack = new StackedSolid(shape, spec).Plan;
        var place = FormerPlace.Find(former, footprint, stack);
        // A male buck goes through the frame with its base; on the block of a cavity the frame may stand.
        var around = isMale
            ? Math.Max(wanted, (stack.Width - footprint.Width) / 2 + former.BaseGap)
            : wanted;
        var opening = place.Opening ?? new RectangleSize(footprint.Width + 2 * around, footprint.Height + 2 * around);
        var gap = GapTo(opening, footprint);
        var edge = 2 * (former.Grip + former.Lip);
        var plates = isMale ? RiseThrough(opening, spec, shape, depth) - depth : 0;
        var surface = FormedSurface.Compute(
            finished, spec.Kind, opening.Width * opening.Height, 2 * (stack.Width + stack.Height) * plates, heights,
            cancellation);
        var across = footprint.Width <= footprint.Height ? opening.Width : opening.Height;
        var (width, height) = (opening.Width + edge, opening.Height + edge);
        return new(
            width, height, opening, gap, surface, DrawRatios.Compute(surface, finished, spec.Kind, depth, plates, across),
            sheet.Gauge, sheet.Gauge / surface.ArealRatio, sheet.MinWall * surface.ArealRatio,
            former.PlugGap is { } plugGap && spec.Kind == BuckKind.Female
                ? PlugWallOf(shape, plugGap, sheet.Gauge, surface, offsetter)
                : null,
            [.. sheet.Sizes.Select(s => BlankYield.Compute(s, width, height))])
        {
            BaseGap = GapTo(opening, stack),
            IsTurned = place.IsTurned,
        };
    }

    /// <summary>
    /// Height of what goes through a frame, mm. The frame rests on plates that are larger. It counts as resting on the block of a
    /// cavity too: the sheet round the cavity sticks to the block before it is drawn.
    /// </summary>
    /// <param name="opening">Clear opening of the frame.</param>
    /// <param name="spec">The stack.</param>
    /// <param name="shape">Its drafted outline.</param>
    /// <param name="depth">Depth of the buck, mm.</param>
    internal static double RiseThrough(RectangleSize opening, StackSpec spec, DraftedShape shape, double depth)
    {
        if (spec.Kind != BuckKind.Male) return 0;
        return depth + (GapTo(opening, new StackedSolid(shape, spec).Plan) >= MinClearance ? shape.Foot : 0);
    }

    /// <summary>What <see cref="MeanThickness"/> averages, in words.</summary>
    internal static string AveragedOver(BuckKind kind) => kind == BuckKind.Male ? "part and skirt" : "the part";

    private static double GapTo(RectangleSize opening, Bounds inside) =>
        Math.Min(opening.Width - inside.Width, opening.Height - inside.Height) / 2;

    /// <summary>What the plug does not take is spread over the walls.</summary>
    private static double? PlugWallOf(DraftedShape shape, double gap, double gauge, FormedSurface surface, IOffsetter offsetter)
    {
        var floor = shape.At(shape.Foot);
        if (floor.IsEmpty) return null;
        var plug = gap == 0 ? floor : offsetter.Offset(floor, -gap, CornerJoin.Round);
        return gauge * (surface.Flat - plug.Area) / surface.Wall;
    }
}

/// <summary>How many blanks are cut from a sheet, all lying the same way.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Count">How many blanks it gives; 0 when it is too small.</param>
/// <param name="Share">Share of the sheet that becomes blanks, 0 to 1.</param>
public sealed record BlankYield(RectangleSize Sheet, int Count, double Share)
{
    // Rounding does not keep a blank from fitting.
    private const double Rounding = 1e-6;

    internal static BlankYield Compute(RectangleSize sheet, double width, double height)
    {
        var count = Math.Max(InRows(sheet.Width, sheet.Height, width, height), InRows(sheet.Width, sheet.Height, height, width));
        return new(sheet, count, count * width * height / (sheet.Width * sheet.Height));
    }

    private static int InRows(double sheetWidth, double sheetHeight, double width, double height) =>
        (int)(sheetWidth / width + Rounding) * (int)(sheetHeight / height + Rounding);
}
