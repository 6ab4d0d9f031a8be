using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>The area that several shapes fill, each by its own rule.</summary>
internal sealed class FilledArea(ImmutableArray<SourcedLoop> loops)
{
    private readonly ImmutableArray<(FillRule Rule, Bounds Bounds, ImmutableArray<LoopInterior> Loops)> shapes =
        [.. loops.GroupBy(l => l.Path.Shape).Select(s => (s.First().Path.FillRule,
            s.Aggregate(Bounds.Nothing, (b, l) => b.With(l.Loop.Bounds)),
            s.Select(l => new LoopInterior(l.Loop)).ToImmutableArray()))];

    /// <summary>True when one of the shapes fills the point.</summary>
    public bool Contains(Vec2 p)
    {
        foreach (var (rule, bounds, interiors) in shapes)
        {
            if (!bounds.Contains(p)) continue;
            var winding = interiors.Sum(l => l.WindingAround(p));
            if (rule == FillRule.NonZero ? winding != 0 : winding % 2 != 0) return true;
        }

        return false;
    }
}
