using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Intake.Outlines;

/// <summary>A place in a drawing that was repaired so that the drawing could be used.</summary>
/// <param name="Kind">A short stable word for programs, such as "gap-joined".</param>
/// <param name="Count">How many places were repaired.</param>
/// <param name="MaxDistance">The maximum distance, mm, by which anything was moved or left out; 0 when nothing moved.</param>
/// <param name="Places">Where, in drawing order; one for each repaired place that has one (a path without any point has
/// none).</param>
/// <param name="Message">The whole story in plain words.</param>
public sealed record Repair(string Kind, int Count, double MaxDistance, ImmutableArray<Vec2> Places, string Message);

/// <summary>How the curves of a drawing (splines, Béziers, ellipses) became lines and arcs.</summary>
/// <param name="Count">How many curves there were; lines and circular arcs are none.</param>
/// <param name="Pieces">How many lines and arcs replace them.</param>
/// <param name="MaxError">The maximum distance found between a curve and its replacement, mm.</param>
public sealed record FittedCurves(int Count, int Pieces, double MaxError)
{
    /// <summary>A drawing of lines and arcs alone.</summary>
    public static FittedCurves None { get; } = new(0, 0, 0);
}

/// <summary>A drawn outline, read and healed: closed loops in mm with islands and holes resolved.</summary>
/// <param name="Name">Name of the file or of the shape, for titles and messages.</param>
/// <param name="Region">The islands and their holes; arcs stay arcs where the source had arcs.</param>
/// <param name="Units">Where the scale came from, in words: "mm ($INSUNITS 4)".</param>
/// <param name="Repairs">What was repaired.</param>
/// <param name="Notes">What was left out or assumed.</param>
public sealed record Outline(
    string Name, Region Region, string Units, ImmutableArray<Repair> Repairs, ImmutableArray<ReadNote> Notes)
{
    /// <summary>An outline made in code, in mm.</summary>
    public static Outline FromRegion(string name, Region region) => new(name, region, "mm", [], []);

    /// <summary>How its curves became lines and arcs.</summary>
    public FittedCurves Curves { get; init; } = FittedCurves.None;

    /// <summary>How many times as large as drawn it is.</summary>
    public double Scale { get; init; } = 1;

    /// <summary>Number of closed loops.</summary>
    public int LoopCount => Region.Islands.Length + Region.HoleCount;
}
