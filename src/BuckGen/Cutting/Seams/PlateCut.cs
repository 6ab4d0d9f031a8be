using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Cutting.Seams;

/// <summary>Cuts a plate in two along a seam.</summary>
internal static class PlateCut
{
    /// <summary>The stretches of wood of a line through a plate, without joints; none when the line cuts it badly.</summary>
    public static ImmutableArray<SeamStretch> Stretches(Island plate, double at) =>
        Crossings.Cut(plate.Outer, at) is { } chains && Heights(chains) is { } heights
            ? [.. heights.Chunk(2).Select(pair => new SeamStretch(pair[0], pair[1], []))]
            : [];

    /// <summary>What lies left of a seam, then what lies right of it.</summary>
    /// <param name="plate">The plate; no hole of it touches the seam.</param>
    /// <param name="seam">The seam, with stretches found by <see cref="Stretches"/>.</param>
    /// <param name="spec">Kind and size of the joints.</param>
    public static (ImmutableArray<Island> Left, ImmutableArray<Island> Right) Apart(Island plate, Seam seam, SeamSpec spec)
    {
        var chains = Crossings.Cut(plate.Outer, seam.At)!;
        var heights = Heights(chains)!;
        return (Side(true), Side(false));

        ImmutableArray<Island> Side(bool left)
        {
            var open = chains.Where(c => c.IsLeft == left).ToList();
            var loops = new List<Loop>();
            while (open.Count > 0)
            {
                var (first, edge) = (open[0], new List<Segment>());
                for (var chain = first; ;)
                {
                    open.Remove(chain);
                    edge.AddRange(chain.Segments);
                    var crossing = Array.IndexOf(heights, chain.End.Y);
                    edge.AddRange(left ? seam.LeftEdge(chain.End.Y, spec) : seam.RightEdge(chain.End.Y, spec));
                    var next = heights[left ? crossing + 1 : crossing - 1];
                    if (next == first.Start.Y) break;
                    chain = open.Find(c => c.Start.Y == next)!;
                }

                loops.Add(Loop.FromSegments(edge));
            }

            return [.. loops.Select(l => new Island(l, [.. plate.Holes.Where(h => l.Contains(h.Segments[0].Start))]))];
        }
    }

    /// <summary>
    /// Where the edge crosses the line, rising; null when the line is no clean cut. With the plate to its left the edge goes left
    /// at the upper end of every stretch of wood.
    /// </summary>
    private static double[]? Heights(List<EdgeChain> chains)
    {
        double[] heights = [.. chains.Select(c => c.Start.Y).Order()];
        return heights.Length % 2 == 0 && heights.Distinct().Count() == heights.Length
            && chains.TrueForAll(c => Array.IndexOf(heights, c.Start.Y) % 2 == (c.IsLeft ? 1 : 0)
                && Array.IndexOf(heights, c.End.Y) % 2 == (c.IsLeft ? 0 : 1))
            ? heights
            : null;
    }
}
