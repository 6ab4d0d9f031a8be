using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>A place where two loops, or two stretches of one, go through each other.</summary>
/// <param name="Place">The place.</param>
/// <param name="LoopA">Number of the first loop.</param>
/// <param name="LoopB">Number of the second, or the same again.</param>
/// <param name="Twice">True where a loop does not go through itself but runs along itself in one direction.</param>
internal readonly record struct Crossing(Vec2 Place, int LoopA, int LoopB, bool Twice = false);

/// <summary>Loops that do not cross, the repairs made for that, and the notes.</summary>
internal sealed record ClearLoops(ImmutableArray<SourcedLoop> Result, ImmutableArray<Repair> Repairs,
    ImmutableArray<ReadNote> Notes);

/// <summary>
/// Crossings where the drawing shows one area are resolved; all others are refused with their places. Reports edges drawn twice.
/// </summary>
internal static class Crossings
{
    private const int PlacesNamed = 5;

    /// <summary>The loops without crossings, and notes about loops that share edges.</summary>
    /// <exception cref="OutlineException">Two loops, or two stretches of one, cross.</exception>
    public static ClearLoops Resolve(ImmutableArray<SourcedLoop> loops, string name, OutlineOptions options,
        CancellationToken cancellation)
    {
        var tolerance = options.Tolerance;
        var search = Search(loops, name, tolerance, cancellation);
        var united = OverlapUniting.Unite(loops, search, options.Unite, tolerance, cancellation);
        if (!united.Repairs.IsEmpty) search = Search(united.Result, name, tolerance, cancellation);
        if (!search.Crossings.IsEmpty) throw new OutlineException($"{name}: {Describe(search.Crossings, united.Result)}");
        return new(united.Result, united.Repairs, search.SharedLength == 0 ? [] : [new("shared-edge", FormattableString.Invariant(
            $"Outlines share {search.SharedLength:F3} mm of edge, at first near {search.FirstShared}; a cutter would cut ")
            + "it twice.")]);
    }

    private static CrossingSearch.Findings Search(ImmutableArray<SourcedLoop> loops, string name, Tolerance tolerance,
        CancellationToken cancellation)
    {
        var search = CrossingSearch.Run([.. loops.Select(l => l.Loop)], tolerance, cancellation);
        return search.Entangled
            ? throw new OutlineException(
                $"{name}: the loops run through each other in too many places to be sorted out; simplify the drawing")
            : search;
    }

    private static string Describe(ImmutableArray<Crossing> crossings, ImmutableArray<SourcedLoop> loops)
    {
        var first = crossings[0];
        if (first.Twice)
            return $"the outline runs the same way twice at {first.Place} ({loops[first.LoopA].Path.Source}); draw it once round";
        var (a, b) = (loops[first.LoopA].Path.Source, loops[first.LoopB].Path.Source);
        var alike = crossings.Where(c => (c.LoopA == c.LoopB) == (first.LoopA == first.LoopB)).ToList();
        var places = string.Join(", ", alike.Take(PlacesNamed).Select(c => c.Place))
            + (alike.Count > PlacesNamed ? $" and {alike.Count - PlacesNamed} more places" : "");
        return first.LoopA == first.LoopB
            ? $"the outline crosses itself at {places} ({a}); redraw it without crossings, or split it there into separate "
                + "outlines"
            : $"outlines cross at {places} (first {a} and {b}); make one shape of them with --unite, or move them "
                + "apart";
    }
}
