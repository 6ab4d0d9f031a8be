using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Facing;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Checks;

/// <summary>Does the round of the upper edge leave a face, and is it as wide as the sheet asks?</summary>
internal sealed class EdgeCheck : IDesignCheck
{
    /// <summary>How exactly the height is found at which the face goes, mm.</summary>
    private const double Resolution = 0.02;

    /// <summary>
    /// An arm or slot is reported when the way round it is this many times longer than it is wide, and a little more, mm. Shorter
    /// ones are the roughness of the outline (our definition, no source).
    /// </summary>
    private const double LongEnough = 4, Rough = 2;

    public string Name => "edge";

    public IEnumerable<Finding> Run(DesignView design)
    {
        var radius = design.Spec.EdgeRadius;
        if (radius == 0) yield break;
        if (Narrowest(design) is { } narrow)
            yield return new("edge-radius-wide",
                design.Shape.Finished.At(design.Face).IsEmpty ? Severity.Error : Severity.Warning,
                FormattableString.Invariant($"An edge radius of {radius:0.##} mm leaves no flat ")
                    + $"{(design.IsMale ? "face" : "rim")} here: the rounds of two edges meet.",
                FormattableString.Invariant($"Use {narrow.Max:0.##} mm or less, or a wider shape."))
            {
                Place = narrow.Place,
                Height = design.Face,
                Value = radius,
                Limit = narrow.Max,
            };
        if (design.Sheet is { } sheet && radius < design.Checks.MinCorner * sheet.Gauge)
            yield return new("edge-radius-small", Severity.Note,
                FormattableString.Invariant($"The edge radius is {radius:0.##} mm, less than the sheet asks for: ")
                    + FormattableString.Invariant($"{design.Checks.MinCorner * sheet.Gauge:0.##} mm for {sheet.Gauge:0.##} mm."),
                FormattableString.Invariant($"Use a radius of {design.Checks.MinCorner * sheet.Gauge:0.##} mm or more."))
            {
                Value = radius,
                Limit = design.Checks.MinCorner * sheet.Gauge,
                Source = "design guidelines of a former: radius at least the starting thickness",
            };
    }

    /// <summary>Where the round first takes something of the face, and the radius that would not; null for nowhere.</summary>
    private static (Vec2 Place, double Max)? Narrowest(DesignView design)
    {
        var (sharp, round) = (design.Shape, design.Shape.Finished);
        double[] heights = [.. round.CloseHeights([sharp.RoundFrom, sharp.Face])];
        var (corner, inward) = (sharp.OffsetAt(sharp.Face), Math.Abs(round.OffsetAt(sharp.Face) - sharp.OffsetAt(sharp.Face)));
        // Pieces come and go; arms and slots go along their whole length without a change of pieces.
        var changes = RegionChanges.Find(h => round.At(h), heights, grows: !design.IsMale, Resolution, default)
            .Select(c => (c.Place, Room: Math.Abs(round.OffsetAt(c.At) - corner)));
        var arms = FacingEdges.Within(sharp.At(sharp.Face), 2 * inward, width => LongEnough * width + Rough)
            .Where(p => p.ThroughWood == design.IsMale).Select(p => (Place: p.Middle, Room: p.Width / 2));
        (Vec2 Place, double Room)[] places = [.. changes.Concat(arms).OrderBy(p => p.Room)];
        return places.Length == 0 ? null
            : (places[0].Place, Math.Floor(100 * design.Spec.EdgeRadius * Math.Min(1, places[0].Room / inward)) / 100);
    }
}
