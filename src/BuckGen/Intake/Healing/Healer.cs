using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>Makes an outline of a drawing: fits, removes what is doubled, joins, checks and nests.</summary>
internal static class Healer
{
    /// <summary>The outline that the drawn paths describe.</summary>
    /// <param name="drawing">What was drawn.</param>
    /// <param name="name">Name of the file, for messages.</param>
    /// <param name="options">Tolerances and limits.</param>
    /// <param name="maxPieces">How many lines and arcs it may have.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OutlineException">The paths do not make up closed loops that lie clear of each other, are too large or
    /// too many.</exception>
    public static Outline Heal(Drawing drawing, string name, OutlineOptions options, int maxPieces,
        CancellationToken cancellation)
    {
        var tolerance = options.Tolerance;
        var (fitted, curves) = PathFitting.Fit(drawing.Paths, name, tolerance, maxPieces, cancellation);
        var loose = DoubledPieces.Remove(PiecesOf(fitted.Result), tolerance, cancellation)
            ?? throw new OutlineException(
                $"{name}: too many lines lie on each other to tell what is meant; draw every edge once");
        var joined = Joining.Join(loose.Result, tolerance, cancellation);
        var cleaned =
            LoopCleaning.Clean([.. ClosedOf(fitted.Result, cancellation), .. joined.Result.Loops], tolerance,
                options.MinLoopWidth, cancellation);
        var single = LoopDuplicates.Remove(cleaned.Result, name, tolerance, cancellation);
        var open = OpenEnds.Judge(joined.Result.Open, single.Result, name, tolerance, cancellation);
        if (single.Result.IsEmpty) throw Nothing();

        var (shown, background) = Backgrounds.Judge(single.Result, drawing.Page, options);
        var clear = Crossings.Resolve(shown, name, options, cancellation);
        var filled = FillRules.Apply(clear.Result, cancellation);
        var region = Nesting.Resolve(filled.Loops.Select(l => l.Loop), cancellation);
        // A loop whose areas cancel to nothing is none.
        if (region.IsEmpty) throw Nothing();
        OutlineSize.Require(name, region, tolerance);
        return new(name, region, drawing.Units,
            [.. fitted.Repairs, .. loose.Repairs, .. joined.Repairs, .. cleaned.Repairs, .. single.Repairs, .. open.Repairs,
                .. clear.Repairs],
            [.. drawing.Notes, .. open.Notes, .. background, .. clear.Notes, .. filled.Notes])
        {
            Curves = curves,
        };

        OutlineException Nothing() =>
            new($"{name}: "
                + (drawing.Paths.IsEmpty
                    ? "the drawing holds no geometry to cut"
                    : "the drawing holds no outline that encloses an area")
                + $"{NoteSummary.Format(drawing.Notes)}; draw a closed outline");
    }

    private static ImmutableArray<Piece> PiecesOf(ImmutableArray<FittedPath> paths) =>
        [.. paths.Where(p => !p.Closed).SelectMany(p => p.Segments.Select(s => new Piece(s, p.Path)))];

    private static IEnumerable<SourcedLoop> ClosedOf(ImmutableArray<FittedPath> paths, CancellationToken cancellation)
    {
        foreach (var path in paths)
        {
            cancellation.ThrowIfCancellationRequested();
            if (path.Closed) yield return new(Loop.FromSegments(path.Segments), path.Path);
        }
    }
}
