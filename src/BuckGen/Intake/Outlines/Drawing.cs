using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;

namespace BuckGen.Intake.Outlines;

/// <summary>How overlapping loops of one drawn shape decide what is inside.</summary>
public enum FillRule
{
    /// <summary>Inside where a ray crosses the loops an odd number of times.</summary>
    EvenOdd,

    /// <summary>Inside where the loops wind round a point, whichever way.</summary>
    NonZero,
}

/// <summary>How a shape is painted.</summary>
/// <param name="Fill">Colour of its fill as red, green and blue, 0xRRGGBB; null for none, or for one that is no plain
/// colour.</param>
/// <param name="HasLine">True when its edge is drawn as a line.</param>
public readonly record struct Paint(int? Fill, bool HasLine);

/// <summary>One continuous stroke of the pen, in millimetres, y up.</summary>
/// <param name="Curves">Pieces in order, each starting where the one before ends.</param>
/// <param name="Closed">True when the drawing itself closes the path (a closing line is already among the curves).</param>
/// <param name="Source">Where it stands in the file, for messages: "path #hull", "LINE at line 120".</param>
/// <param name="Layer">Layer name, or empty.</param>
/// <param name="Shape">Number of the drawn element it belongs to; one element may hold several paths.</param>
/// <param name="FillRule">How the element's paths decide what is inside.</param>
public sealed record DrawnPath(
    ImmutableArray<Curve> Curves, bool Closed, string Source, string Layer = "", int Shape = 0,
    FillRule FillRule = FillRule.EvenOdd)
{
    /// <summary>How it is painted; null when the drawing does not say.</summary>
    public Paint? Paint { get; init; }
}

/// <summary>A remark about a file that was read despite an oddity.</summary>
/// <param name="Kind">A short stable word for programs, such as "text-ignored".</param>
/// <param name="Message">The details in plain words, with names, counts and places.</param>
public sealed record ReadNote(string Kind, string Message);

/// <summary>What a file holds before ends are joined and loops are found.</summary>
/// <param name="Paths">The drawn paths in file order.</param>
/// <param name="Units">Where the scale came from, in words: "mm ($INSUNITS 4)".</param>
/// <param name="Notes">What was left out or assumed.</param>
public sealed record Drawing(ImmutableArray<DrawnPath> Paths, string Units, ImmutableArray<ReadNote> Notes)
{
    /// <summary>The page it is drawn on, mm; null when it has none.</summary>
    public Bounds? Page { get; init; }

    /// <summary>The approximate bounds of paths: of a line its ends count, of another curve nine points.</summary>
    internal static Bounds BoundsOf(ImmutableArray<DrawnPath> paths, CancellationToken cancellation = default)
    {
        var bounds = Bounds.Nothing;
        foreach (var path in paths)
            foreach (var curve in path.Curves)
            {
                cancellation.ThrowIfCancellationRequested();
                var steps = curve is LineCurve ? 1 : 8;
                for (var i = 0; i <= steps; i++) bounds = bounds.With(curve.PointAt((double)i / steps));
            }

        return bounds;
    }

    /// <summary>The drawing moved or scaled evenly.</summary>
    internal Drawing Transformed(Affine map) => this with
    {
        Paths = [.. Paths.Select(p => p with { Curves = [.. p.Curves.Select(c => c.Transformed(map))] })],
        Page = Page is { } page
            ? Bounds.FromCorners(map.Apply(page.LowerLeft), map.Apply(new(page.MaxX, page.MaxY))) : null,
    };
}
