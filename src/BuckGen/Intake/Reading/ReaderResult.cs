using BuckGen.Findings;
using BuckGen.Geometry.Curves;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Reading;

/// <summary>What a reader finds in a file.</summary>
internal static class ReaderResult
{
    /// <summary>Maximum number of paths, of curves of a path, and of notes that a plug-in's reader may give.</summary>
    private const int MaxPaths = 100_000, MaxCurves = 100_000, MaxNotes = 1000;

    private const int MaxWordLength = 200, MaxTextLength = 2000;

    /// <summary>The drawing, a copy.</summary>
    /// <exception cref="ForeignResultException">A plug-in's reader returned something that can't be used.</exception>
    /// <exception cref="OutlineException">The reader refuses the file.</exception>
    public static Drawing Read(IOutlineFormat format, byte[] content, string name, OutlineOptions options,
        CancellationToken cancellation)
    {
        if (!ForeignCode.IsForeign(format)) return format.Read(content, name, options, cancellation);
        // A copy of the file too: other readers may be asked after this one.
        var drawing = format.Read([.. content], name, options, cancellation)
            ?? throw new ForeignResultException("it gave nothing");
        if (ForeignResult.WordsFault(drawing.Units, MaxWordLength) is { } units)
            throw new ForeignResultException($"its unit {units}");
        return new(
            [.. ForeignResult.List(drawing.Paths, MaxPaths, "path", Fault)
                .Select(p => p with { Curves = ForeignResult.List(p.Curves, MaxCurves, "curve", Fault) })], drawing.Units,
            ForeignResult.List(drawing.Notes, MaxNotes, "note", n => ForeignResult.WordsFault(n.Kind, MaxWordLength)
                ?? ForeignResult.WordsFault(n.Message, MaxTextLength)));
    }

    private static string? Fault(DrawnPath path) =>
        ForeignResult.WordsFault(path.Source, MaxWordLength) is { } source ? $"has a source that {source}"
        : ForeignResult.WordsFault(path.Layer, MaxWordLength) is { } layer ? $"has a layer that {layer}"
        : !Enum.IsDefined(path.FillRule) ? "has an unknown fill rule" : null;

    /// <summary>
    /// Only the kinds of curves of the library are taken: the code of another would run on, long after this door.
    /// </summary>
    private static string? Fault(Curve curve) => curve switch
    {
        LineCurve line => Places([line.From.X, line.From.Y, line.To.X, line.To.Y]),
        BezierCurve bezier =>
            Places([bezier.P0.X, bezier.P0.Y, bezier.P1.X, bezier.P1.Y, bezier.P2.X, bezier.P2.Y, bezier.P3.X, bezier.P3.Y]),
        EllipseCurve ellipse =>
            Places([ellipse.Centre.X, ellipse.Centre.Y, ellipse.U.X, ellipse.U.Y, ellipse.V.X, ellipse.V.Y, ellipse.Phi0,
                ellipse.Phi1]),
        _ => "is none of the library's curves: LineCurve, BezierCurve, EllipseCurve",
    };

    private static string? Places(ReadOnlySpan<double> coordinates)
    {
        foreach (var coordinate in coordinates)
            if (!ForeignResult.IsPlace(coordinate)) return "has a coordinate that is not a place within 1 km";
        return null;
    }
}
