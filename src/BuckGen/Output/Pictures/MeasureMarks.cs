using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Intake.Measuring;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures;

/// <summary>The measures of an outline as lettered marks: widths as lines across, radii and corners as rings.</summary>
internal static class MeasureMarks
{
    private static readonly Ink Across = new(PictureColours.Measure, 0.5);

    /// <summary>A mark: where its letter stands, what it says, and the line it draws, if any.</summary>
    public sealed record Mark(string Letter, Vec2 Place, string Words, PictureItem? Line);

    /// <summary>The marks, with their places on paper.</summary>
    /// <param name="measures">The measures.</param>
    /// <param name="place">From the drawing to the paper.</param>
    public static ImmutableArray<Mark> Create(OutlineMeasures measures, Affine place)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        if (measures.NarrowestNeck is { } neck) marks.Add(Width("N", "narrowest neck", neck.A, neck.B));
        if (measures.NarrowestGap is { } gap) marks.Add(Width("G", "narrowest gap", gap.A, gap.B));
        if (measures.MinInsideRadius is { } inside) marks.Add(Round("I", "minimum inside radius", inside));
        if (measures.MinOutsideRadius is { } outside) marks.Add(Round("O", "minimum outside radius", outside));
        if (measures.SharpestCorner is { } corner)
            marks.Add(new("C", place.Apply(corner.Place),
                FormattableString.Invariant($"C: sharpest corner {corner.Angle:0.#} degrees"), null));
        return marks.ToImmutable();

        Mark Width(string letter, string what, Vec2 a, Vec2 b) => new(
            letter, place.Apply(a.MidpointTo(b)), $"{letter}: {what} {Dimension.Text(a.DistanceTo(b))}",
            PictureShape.Line(place.Apply(a), place.Apply(b), Across));

        Mark Round(string letter, string what, RoundEdge edge) =>
            new(letter, place.Apply(edge.Place), $"{letter}: {what} {Dimension.Text(edge.Radius)}", null);
    }
}
