using System.Collections.Immutable;
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

/// <summary>One continuous stroke of the pen, in millimetres, y up.</summary>
/// <param name="Curves">Pieces in order, each starting where the one before ends.</param>
/// <param name="Closed">True when the drawing itself closes the path (a closing line is already among the curves).</param>
/// <param name="Source">Where it stands in the file, for messages: "path #hull", "LINE at line 120".</param>
/// <param name="Layer">Layer name, or empty.</param>
/// <param name="Shape">Number of the drawn element it belongs to; one element may hold several paths.</param>
/// <param name="FillRule">How the element's paths decide what is inside.</param>
public sealed record DrawnPath(
    ImmutableArray<Curve> Curves, bool Closed, string Source, string Layer = "", int Shape = 0,
    FillRule FillRule = FillRule.EvenOdd);

/// <summary>A remark about a file that was read despite an oddity.</summary>
/// <param name="Kind">A short stable word for programs, such as "text-ignored".</param>
/// <param name="Message">The details in plain words, with names, counts and places.</param>
public sealed record ReadNote(string Kind, string Message);

/// <summary>What a file holds before ends are joined and loops are found.</summary>
/// <param name="Paths">The drawn paths in file order.</param>
/// <param name="Units">Where the scale came from, in words: "mm ($INSUNITS 4)".</param>
/// <param name="Notes">What was left out or assumed.</param>
public sealed record Drawing(ImmutableArray<DrawnPath> Paths, string Units, ImmutableArray<ReadNote> Notes);
