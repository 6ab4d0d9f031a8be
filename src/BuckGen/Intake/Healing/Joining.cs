using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Intake.Healing;

/// <summary>The loops and leftovers after the ends of loose pieces are joined.</summary>
internal sealed record Joined(ImmutableArray<SourcedLoop> Loops, ImmutableArray<OpenChain> Open);

/// <summary>Joins loose lines and arcs into closed loops, whatever their order and direction.</summary>
internal static class Joining
{
    public static Healed<Joined> Join(ImmutableArray<Piece> pieces, Tolerance tolerance, CancellationToken cancellation)
    {
        var nodes = GapClosing.Close(EndNodes.Find(pieces, tolerance, cancellation), tolerance, cancellation);
        return new(new Walk(pieces, nodes.Result).All(cancellation), nodes.Repairs);
    }

    /// <summary>
    /// Walks every piece once; whenever the way comes back to a node it passed, the round is cut off as a loop.
    /// </summary>
    private sealed class Walk
    {
        private readonly ImmutableArray<Piece> pieces;
        private readonly EndNodes nodes;
        private readonly List<int>[] atNode;
        private readonly int[] firstUnused;
        private readonly bool[] used;
        private readonly int[] stepAtNode;
        private readonly List<(int Piece, bool Backward)> steps = [];
        private readonly ImmutableArray<SourcedLoop>.Builder loops = ImmutableArray.CreateBuilder<SourcedLoop>();
        private readonly ImmutableArray<OpenChain>.Builder open = ImmutableArray.CreateBuilder<OpenChain>();

        public Walk(ImmutableArray<Piece> pieces, EndNodes nodes)
        {
            (this.pieces, this.nodes) = (pieces, nodes);
            atNode = [.. nodes.Places.Select(_ => new List<int>(2))];
            for (var i = 0; i < pieces.Length; i++)
            {
                atNode[nodes.From[i]].Add(i);
                atNode[nodes.To[i]].Add(i);
            }

            (firstUnused, used) = (new int[atNode.Length], new bool[pieces.Length]);
            stepAtNode = [.. atNode.Select(_ => -1)];
        }

        public Joined All(CancellationToken cancellation)
        {
            // From the open ends first, so that what is left afterwards closes everywhere.
            var openEnds = Enumerable.Range(0, atNode.Length).Where(n => atNode[n].Count % 2 != 0);
            foreach (var node in openEnds) From(node, cancellation);
            for (var i = 0; i < pieces.Length; i++)
                if (!used[i]) From(nodes.From[i], cancellation);
            return new(loops.ToImmutable(), open.ToImmutable());
        }

        private void From(int node, CancellationToken cancellation)
        {
            stepAtNode[node] = 0;
            var start = node;
            while (Next(node) is { } piece)
            {
                cancellation.ThrowIfCancellationRequested();
                used[piece] = true;
                var backward = nodes.From[piece] != node;
                steps.Add((piece, backward));
                node = backward ? nodes.From[piece] : nodes.To[piece];
                if (stepAtNode[node] >= 0) CutOffLoop(stepAtNode[node]);
                else stepAtNode[node] = steps.Count;
            }

            if (steps.Count > 0) open.Add(new(Segments(0), pieces[steps[0].Piece].Path));
            foreach (var step in steps) stepAtNode[EndOf(step)] = -1;
            stepAtNode[start] = -1;
            steps.Clear();
        }

        private int? Next(int node)
        {
            // Where more than two pieces meet, the one drawn next is meant.
            if (steps.Count > 0)
            {
                var (last, backward) = steps[^1];
                var follower = backward ? last - 1 : last + 1;
                if (follower >= 0 && follower < used.Length && !used[follower]
                    && (nodes.From[follower] == node || nodes.To[follower] == node)) return follower;
            }

            var here = atNode[node];
            while (firstUnused[node] < here.Count && used[here[firstUnused[node]]]) firstUnused[node]++;
            return firstUnused[node] < here.Count ? here[firstUnused[node]] : null;
        }

        private void CutOffLoop(int firstStep)
        {
            // A lone piece that returns to its own node is too short to be distinguished from a point.
            if (steps.Count - firstStep > 1)
                loops.Add(new(Loop.FromSegments(Segments(firstStep)), pieces[steps[firstStep].Piece].Path));
            for (var i = firstStep; i < steps.Count - 1; i++) stepAtNode[EndOf(steps[i])] = -1;
            steps.RemoveRange(firstStep, steps.Count - firstStep);
        }

        private int EndOf((int Piece, bool Backward) step) => step.Backward ? nodes.From[step.Piece] : nodes.To[step.Piece];

        private ImmutableArray<Segment> Segments(int firstStep) => [.. steps.Skip(firstStep).Select(step =>
        {
            var onNodes = new Segment(
                nodes.Places[nodes.From[step.Piece]], nodes.Places[nodes.To[step.Piece]], pieces[step.Piece].Segment.Bulge);
            return step.Backward ? onNodes.Reversed() : onNodes;
        })];
    }
}
