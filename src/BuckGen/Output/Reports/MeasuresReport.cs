using BuckGen.Geometry;
using BuckGen.Intake.Measuring;

namespace BuckGen.Output.Reports;

/// <summary>What decides how an outline can be cut and how sturdy it is; lengths in mm, angles in degrees.</summary>
/// <param name="NarrowestNeck">The smallest width of the region; null when no two edges face each other across it.</param>
/// <param name="NarrowestGap">The smallest open width; null when no two edges face each other across open space.</param>
/// <param name="MinInsideRadius">The tightest arc that a router bit has to fit into; null without such arcs.</param>
/// <param name="MinOutsideRadius">The tightest arc that sticks out; null without such arcs.</param>
/// <param name="SharpestCorner">The corner with the smallest angle; null when every joint is smooth.</param>
/// <param name="Error">
/// The maximum distance between a drawn curve and the edge that was measured; widths may differ by twice as much.
/// </param>
public sealed record MeasuresReport(
    NeckReport? NarrowestNeck, GapReport? NarrowestGap, RadiusReport? MinInsideRadius, RadiusReport? MinOutsideRadius,
    CornerReport? SharpestCorner, double Error)
{
    internal static MeasuresReport Create(OutlineMeasures measures) => new(
        measures.NarrowestNeck is { } neck ? NeckReport.Create(neck) : null,
        measures.NarrowestGap is { } gap ? GapReport.Create(gap) : null,
        measures.MinInsideRadius is { } inside ? RadiusReport.Create(inside) : null,
        measures.MinOutsideRadius is { } outside ? RadiusReport.Create(outside) : null,
        measures.SharpestCorner is { } corner ? CornerReport.Create(corner) : null,
        ReportNumber.Round(measures.Error));
}

/// <summary>A narrow place of the region, mm.</summary>
/// <param name="Width">How wide it is.</param>
/// <param name="Place">Its middle.</param>
/// <param name="From">One end of the way across.</param>
/// <param name="To">The other end.</param>
public sealed record NeckReport(double Width, PlaceReport Place, PlaceReport From, PlaceReport To)
{
    internal static NeckReport Create(Neck neck)
    {
        var (from, to) = Ends.InOrder(neck.A, neck.B);
        return new(ReportNumber.Round(neck.Width), PlaceReport.Create(neck.Middle), from, to);
    }
}

/// <summary>A narrow open place, mm.</summary>
/// <param name="Width">How wide it is.</param>
/// <param name="Kind">What lies on its two sides: "between-parts", "across-slot" or "inside-hole".</param>
/// <param name="Place">Its middle.</param>
/// <param name="From">One end of the way across.</param>
/// <param name="To">The other end.</param>
public sealed record GapReport(double Width, string Kind, PlaceReport Place, PlaceReport From, PlaceReport To)
{
    internal static GapReport Create(Gap gap)
    {
        var (from, to) = Ends.InOrder(gap.A, gap.B);
        return new(ReportNumber.Round(gap.Width), Word(gap.Kind), PlaceReport.Create(gap.Middle), from, to);
    }

    private static string Word(GapKind kind) => kind switch
    {
        GapKind.BetweenParts => "between-parts",
        GapKind.AcrossSlot => "across-slot",
        _ => "inside-hole",
    };
}

/// <summary>An arc of the edge, mm.</summary>
/// <param name="Radius">Its radius.</param>
/// <param name="Centre">Its centre.</param>
/// <param name="Place">The middle of the arc.</param>
public sealed record RadiusReport(double Radius, PlaceReport Centre, PlaceReport Place)
{
    internal static RadiusReport Create(RoundEdge arc) =>
        new(ReportNumber.Round(arc.Radius), PlaceReport.Create(arc.Centre), PlaceReport.Create(arc.Place));
}

/// <summary>A corner of the edge.</summary>
/// <param name="Angle">The angle between its two sides, degrees: in the region or, at an inside corner, outside it.</param>
/// <param name="Side">"outside" for a corner that sticks out, "inside" for one that goes into the region.</param>
/// <param name="Place">Where it is.</param>
public sealed record CornerReport(double Angle, string Side, PlaceReport Place)
{
    internal static CornerReport Create(EdgeCorner corner) =>
        new(ReportNumber.Round(corner.Angle), corner.IsInside ? "inside" : "outside", PlaceReport.Create(corner.Place));
}

/// <summary>The ends of a way across, in an order that does not depend on where a loop starts.</summary>
internal static class Ends
{
    public static (PlaceReport From, PlaceReport To) InOrder(Vec2 a, Vec2 b)
    {
        var (one, other) = (PlaceReport.Create(a), PlaceReport.Create(b));
        return (one.X, one.Y).CompareTo((other.X, other.Y)) <= 0 ? (one, other) : (other, one);
    }
}
