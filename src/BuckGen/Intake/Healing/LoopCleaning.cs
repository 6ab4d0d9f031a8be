using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>Takes spikes and crossed corners off loops and leaves out loops that enclose nothing a tool could cut.</summary>
internal static class LoopCleaning
{
    public static Healed<ImmutableArray<SourcedLoop>> Clean(
        ImmutableArray<SourcedLoop> loops, Tolerance tolerance, double minWidth, CancellationToken cancellation)
    {
        var kept = ImmutableArray.CreateBuilder<SourcedLoop>(loops.Length);
        var (empty, widest, firstEmpty, spikes, longest) = (new List<Vec2>(), 0.0, "", new List<Vec2>(), 0.0);
        var (crossed, farthest) = (new List<Vec2>(), 0.0);
        foreach (var loop in loops)
        {
            cancellation.ThrowIfCancellationRequested();
            var trimmed = Spikes.Trim(loop.Loop.Segments, tolerance);
            var width = trimmed.Length < 2 ? 0 : Width(trimmed);
            if (width < minWidth || width == 0)
            {
                widest = Math.Max(widest, width);
                if (empty.Count == 0) firstEmpty = loop.Path.Source;
                empty.Add(loop.Loop.Bounds.Centre);
                continue;
            }

            var cleaned = loop;
            if (trimmed.Length != loop.Loop.Segments.Length)
            {
                cleaned = loop with { Loop = Loop.FromSegments(trimmed) };
                spikes.Add(TipOf(loop.Loop, trimmed));
                longest = Math.Max(longest, (loop.Loop.Length - cleaned.Loop.Length) / 2);
            }

            var uncrossed = CrossedCorners.CutOff(trimmed, 2 * tolerance.Chord, tolerance.Coincident);
            if (uncrossed != trimmed)
            {
                crossed.Add(TipOf(cleaned.Loop, uncrossed));
                farthest = Math.Max(farthest, (cleaned.Loop.Length - uncrossed.Sum(s => s.Length)) / 2);
                cleaned = loop with { Loop = Loop.FromSegments(uncrossed) };
            }

            kept.Add(cleaned);
        }

        var repairs = ImmutableArray.CreateBuilder<Repair>();
        if (empty.Count > 0)
            repairs.Add(new("empty-loop-dropped", empty.Count, widest, [.. empty], FormattableString.Invariant(
                $"{CountText.Format(empty.Count, "closed path")} narrower than {minWidth:0.####} mm ")
                + FormattableString.Invariant($"{CountText.WasOrWere(empty.Count)} left out, the first {firstEmpty}.")));
        if (spikes.Count > 0)
            repairs.Add(
                new("spike-trimmed", spikes.Count, longest, [.. spikes],
                    $"{CountText.Format(spikes.Count, "loop")} ran out and back on the same line; that was cut off."));
        if (crossed.Count > 0)
            repairs.Add(new("crossed-corner-cut", crossed.Count, farthest, [.. crossed],
                $"{CountText.Format(crossed.Count, "loop")} crossed {(crossed.Count == 1 ? "itself" : "themselves")} "
                + FormattableString.Invariant($"up to {farthest:0.####} mm beside a corner; that was cut off.")));
        return new(kept.ToImmutable(), repairs.ToImmutable());
    }

    /// <summary>A corner of the loop that went with its spikes.</summary>
    private static Vec2 TipOf(Loop loop, ImmutableArray<Segment> trimmed)
    {
        var kept = trimmed.Select(s => s.Start).ToHashSet();
        return loop.Segments.Select(s => s.Start).FirstOrDefault(p => !kept.Contains(p), loop.Segments[0].Start);
    }

    /// <summary>
    /// The width of the narrowest strip along the loop's longest reach that holds all of it, mm; the reach itself when that is
    /// shorter.
    /// </summary>
    private static double Width(ImmutableArray<Segment> loop)
    {
        var points = loop.SelectMany(s => s.IsArc ? new[] { s.Start, s.PointAt(0.5) } : [s.Start]).ToList();
        var far = points.MaxBy(p => (p - points[0]).LengthSquared);
        var along = far - points[0];
        if (along.LengthSquared == 0) return 0;
        var across = along.Left.Unit();
        var offsets = points.Select(p => (p - points[0]).Dot(across)).ToList();
        return Math.Min(along.Length, offsets.Max() - offsets.Min());
    }
}
