using System.Collections.Immutable;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>Groups the shapes that make up one area, by where they cross or touch.</summary>
internal sealed class OneArea(ImmutableArray<SourcedLoop> loops, CrossingSearch.Findings meetings, bool asked)
{
    /// <summary>Shapes that become one, by number, and where they meet.</summary>
    internal sealed record Group(HashSet<int> Shapes, List<Crossing> Meetings);

    /// <summary>The groups in drawing order; shapes that meet no other are in none.</summary>
    public IEnumerable<Group> Groups()
    {
        var groups = new List<Group>();
        var found = meetings.Crossings.Where(c => AreOne(c, false)).Concat(meetings.Touching.Where(c => AreOne(c, true)));
        foreach (var meeting in found)
        {
            int[] shapes = [ShapeOf(meeting.LoopA), ShapeOf(meeting.LoopB)];
            var joined = groups.FindAll(g => g.Shapes.Overlaps(shapes));
            groups.RemoveAll(joined.Contains);
            groups.Add(new([.. joined.SelectMany(g => g.Shapes), .. shapes], [.. joined.SelectMany(g => g.Meetings), meeting]));
        }

        return groups;
    }

    private bool AreOne(Crossing meeting, bool touches)
    {
        var (a, b) = (loops[meeting.LoopA], loops[meeting.LoopB]);
        if (a.Path.Shape == b.Path.Shape) return !touches && (asked || a.Path.FillRule == FillRule.NonZero);
        return (asked || (a.Path.Paint?.Fill is { } fill && fill == b.Path.Paint?.Fill))
            // A hole that touches the edge round it is no neighbour of it.
            && !(touches && (a.Loop.Bounds.Contains(b.Loop.Bounds) || b.Loop.Bounds.Contains(a.Loop.Bounds)));
    }

    private int ShapeOf(int loop) => loops[loop].Path.Shape;
}
