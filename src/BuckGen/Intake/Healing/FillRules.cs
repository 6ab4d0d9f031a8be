using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>Applies each shape's own fill rule, so that the loops left over mean the same under even-odd.</summary>
internal static class FillRules
{
    public static (ImmutableArray<SourcedLoop> Loops, ImmutableArray<ReadNote> Notes) Apply(ImmutableArray<SourcedLoop> loops,
        CancellationToken cancellation)
    {
        var idle = loops.Where(l => l.Path.FillRule == FillRule.NonZero)
            .GroupBy(l => l.Path.Shape)
            .Where(shape => shape.Skip(1).Any())
            .SelectMany(shape => Idle([.. shape], cancellation))
            .ToHashSet();
        return idle.Count == 0 ? (loops, []) : (
            [.. loops.Where(l => !idle.Contains(l))],
            [new("nonzero-applied",
                $"{CountText.Format(idle.Count, "loop")} inside a filled area {CountText.WasOrWere(idle.Count)} left out, "
                + $"as the nonzero fill rule requires, the first in {idle.First().Path.Source}.")]);
    }

    /// <summary>The loops of a nonzero shape that have filled area on both sides.</summary>
    private static IEnumerable<SourcedLoop> Idle(SourcedLoop[] shape, CancellationToken cancellation)
    {
        var interiors = shape.Select(l => new LoopInterior(l.Loop)).ToArray();
        var tree = BoxTree.FromItems(shape, l => l.Loop.Bounds);
        for (var i = 0; i < shape.Length; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            var probe = shape[i].Loop.Segments[0].PointAt(0.5);
            var outside = tree.Query(Bounds.FromCorners(probe, probe)).Where(other => other != i)
                .Sum(other => interiors[other].WindingAround(probe));
            var inside = outside + (shape[i].Loop.IsCounterClockwise ? 1 : -1);
            if (outside != 0 && inside != 0) yield return shape[i];
        }
    }
}
