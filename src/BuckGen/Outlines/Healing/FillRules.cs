using System.Collections.Immutable;

namespace BuckGen.Outlines.Healing;

/// <summary>Applies each shape's own fill rule, so that the loops left over mean the same under even-odd.</summary>
internal static class FillRules
{
    public static (ImmutableArray<SourcedLoop> Loops, ImmutableArray<ReadNote> Notes) Apply(ImmutableArray<SourcedLoop> loops)
    {
        var idle = loops.Where(l => l.Path.FillRule == FillRule.NonZero)
            .GroupBy(l => l.Path.Shape)
            .Where(shape => shape.Skip(1).Any())
            .SelectMany(shape => Idle([.. shape]))
            .ToHashSet();
        return idle.Count == 0 ? (loops, []) : (
            [.. loops.Where(l => !idle.Contains(l))],
            [new("nonzero-applied", $"{Counted.Of(idle.Count, "loop")} inside a filled area {Counted.Were(idle.Count)} left out, as the nonzero fill rule has it, the first in {idle.First().Path.Source}.")]);
    }

    /// <summary>The loops of a nonzero shape that have filled area on both sides.</summary>
    private static IEnumerable<SourcedLoop> Idle(SourcedLoop[] shape) => shape.Where(loop =>
    {
        var probe = loop.Loop.Segments[0].PointAt(0.5);
        var outside = shape.Where(other => other != loop).Sum(other => other.Loop.WindingAround(probe));
        var inside = outside + (loop.Loop.IsCounterClockwise ? 1 : -1);
        return outside != 0 && inside != 0;
    });
}
