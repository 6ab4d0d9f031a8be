using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Intake.Healing;

/// <summary>Looks for crossings among all pieces of all loops; only pieces near each other are compared.</summary>
internal sealed class CrossingSearch
{
    /// <summary>The search ends at this many crossings; there may be more then.</summary>
    public const int MaxCrossings = 1000;
    private const long MaxComparisons = 5_000_000;
    private const long MaxSteps = 3_000_000;
    private const long MaxProbes = 10_000_000;

    private readonly ImmutableArray<Loop> loops;
    private readonly Tolerance tolerance;
    private readonly CancellationToken cancellation;
    private readonly List<(int Loop, int Index)> pieces = [];
    private readonly BoxTree tree;
    private readonly List<Crossing> crossings = [];
    private readonly Dictionary<(int A, int B), Vec2> sharing = [];
    private long steps;
    private double sharedLength;
    private Vec2 firstShared;

    private CrossingSearch(ImmutableArray<Loop> loops, Tolerance tolerance, CancellationToken cancellation)
    {
        (this.loops, this.tolerance, this.cancellation) = (loops, tolerance, cancellation);
        for (var l = 0; l < loops.Length; l++)
            for (var i = 0; i < loops[l].Segments.Length; i++) pieces.Add((l, i));
        tree = BoxTree.FromItems(pieces, p => Box(loops[p.Loop].Segments[p.Index]));
    }

    /// <summary>What was found.</summary>
    /// <param name="Crossings">Places where loops cross, in drawing order.</param>
    /// <param name="SharedLength">Length of straight edges that lie on each other, mm.</param>
    /// <param name="FirstShared">A place on the first of them.</param>
    /// <param name="Touching">A place of each pair of loops that run along each other.</param>
    /// <param name="Entangled">True when the search stopped early.</param>
    public sealed record Findings(ImmutableArray<Crossing> Crossings, double SharedLength, Vec2 FirstShared,
        ImmutableArray<Crossing> Touching, bool Entangled);

    public static Findings Run(ImmutableArray<Loop> loops, Tolerance tolerance, CancellationToken cancellation)
    {
        var search = new CrossingSearch(loops, tolerance, cancellation);
        var entangled = !search.CompareAll() || !search.AddStraddling();
        return new([.. search.crossings], search.sharedLength, search.firstShared,
            [.. search.sharing.Select(s => new Crossing(s.Value, s.Key.A, s.Key.B))], entangled);
    }

    private bool CompareAll()
    {
        var comparisons = 0L;
        for (var p = 0; p < pieces.Count; p++)
            foreach (var q in tree.Query(Box(SegmentOf(p))))
            {
                if (q <= p) continue;
                if (++comparisons > MaxComparisons) return false;
                cancellation.ThrowIfCancellationRequested();
                Compare(p, q);
                if (steps > MaxSteps) return crossings.Count > 0;
                if (crossings.Count >= MaxCrossings) return true;
            }

        return true;
    }

    private void Compare(int p, int q)
    {
        var (a, b) = (SegmentOf(p), SegmentOf(q));
        var (ofA, ofB) = (pieces[p], pieces[q]);
        Span<Vec2> points = stackalloc Vec2[2];
        var count = SegmentIntersection.Find(a, b, tolerance.Coincident, points);
        for (var i = 0; i < count; i++)
        {
            var place = points[i];
            if (crossings.Exists(c => c.Place.DistanceTo(place) <= tolerance.Chord)) continue;
            if (ofA.Loop == ofB.Loop && AreNeighbours(loops[ofA.Loop], ofA.Index, ofB.Index, place)) continue;
            var crosses =
                Passing.Crosses(loops[ofA.Loop], ofA.Index, loops[ofB.Loop], ofB.Index, place, tolerance.Chord, ref steps);
            if (crosses is true) crossings.Add(new(place, ofA.Loop, ofB.Loop));
            else if (crosses is null && ofA.Loop != ofB.Loop) sharing.TryAdd((ofA.Loop, ofB.Loop), place);
        }

        if (count > 0 || SharedStretch.Find(a, b, tolerance) is not { } shared) return;
        if (sharedLength == 0) firstShared = shared.Place;
        sharedLength += shared.Straight;
        if (ofA.Loop != ofB.Loop) sharing.TryAdd((ofA.Loop, ofB.Loop), shared.Place);
        // Back along itself a loop may run, as in a slit; along the same way it goes round twice.
        else if (shared.SameWay && crossings.TrueForAll(c => !c.Twice))
            crossings.Add(new(shared.Place, ofA.Loop, ofB.Loop, true));
    }

    /// <summary>
    /// Adds the loops that run along each other and cross without a point that shows it; false when there are too many to check.
    /// </summary>
    private bool AddStraddling()
    {
        if (crossings.Count > 0) return true;
        var (interiors, probes) = (new Dictionary<int, LoopInterior>(), 0L);
        foreach (var ((a, b), place) in sharing)
        {
            cancellation.ThrowIfCancellationRequested();
            if (!interiors.TryGetValue(b, out var around)) interiors[b] = around = new(loops[b]);
            if (Straddling.Straddles(loops[a], loops[b], around, tolerance.Chord, ref probes)) crossings.Add(new(place, a, b));
            if (probes > MaxProbes) return crossings.Count > 0;
        }

        return true;
    }

    /// <summary>True when the way along the loop from one piece to the other, past the place, is within the tolerance.</summary>
    private bool AreNeighbours(Loop loop, int first, int second, Vec2 place) =>
        IsShortWay(loop, first, second, place) || IsShortWay(loop, second, first, place);

    private bool IsShortWay(Loop loop, int from, int to, Vec2 place)
    {
        var segments = loop.Segments;
        var way = segments[from].End.DistanceTo(place) + segments[to].Start.DistanceTo(place);
        for (var i = (from + 1) % segments.Length; i != to && way <= 2 * tolerance.Chord; i = (i + 1) % segments.Length)
            way += segments[i].Length;
        return way <= 2 * tolerance.Chord;
    }

    private Segment SegmentOf(int piece) => loops[pieces[piece].Loop].Segments[pieces[piece].Index];

    private Bounds Box(Segment s) => s.Bounds.Grown(tolerance.Coincident);
}
