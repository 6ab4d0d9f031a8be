using BuckGen.Geometry;

namespace BuckGen.Tests.Design.Offsets;

/// <summary>
/// Sprinkles an outline with what drawing programs leave behind: spikes, gaps that were closed by a piece of their own, and
/// slivers where a line runs back and forth. All are 1e-6 to 1e-3 mm wide. The same seed gives the same flaws.
/// </summary>
internal sealed class TinyFlaws
{
    private readonly Random random;

    private TinyFlaws(int seed) => random = new(seed);

    /// <summary>The region with one to five flaws.</summary>
    public static Region Sprinkled(Region region, int seed)
    {
        var flaws = new TinyFlaws(seed);
        var loops = region.Loops.Select(l => l.Segments.ToList()).ToList();
        for (var count = flaws.random.Next(1, 6); count > 0; count--) flaws.Spoil(loops[flaws.random.Next(loops.Count)]);
        return Region.FromLoops(loops.Select(Loop.FromSegments));
    }

    private void Spoil(List<Segment> loop)
    {
        var i = random.Next(loop.Count);
        var (piece, next) = (loop[i], (i + 1) % loop.Count);
        switch (random.Next(4))
        {
            case 0:
                // A path that stops short of its start, or beyond it, and is closed then.
                loop[i] = piece with { End = piece.End + Tiny() };
                loop.Insert(i + 1, new(loop[i].End, loop[next == 0 ? 0 : i + 1].Start));
                break;
            case 1:
                // A spike on a corner.
                loop.Insert(i + 1, new(piece.End, piece.End + Tiny()));
                loop.Insert(i + 2, new(loop[i + 1].End, piece.End));
                break;
            case 2:
                // A spike, or a step, within a piece.
                var (before, after, tip) = (piece.Part(0, 0.5), piece.Part(0.5, 1), piece.PointAt(0.5) + Tiny());
                var foot = after.Start + Tiny();
                loop[i] = before;
                loop.InsertRange(i + 1, [new(before.End, tip), new(tip, foot), after with { Start = foot }]);
                break;
            default:
                // A sliver: forth, back and forth again, not quite on the same line.
                var (a, b) = (0.2 + 0.3 * random.NextDouble(), 0.5 + 0.3 * random.NextDouble());
                var (turn, back) = (piece.PointAt(b) + Tiny(), piece.PointAt(a) + Tiny());
                loop[i] = piece.Part(0, b) with { End = turn };
                loop.InsertRange(i + 1,
                    [piece.Part(a, b).Reversed() with { Start = turn, End = back }, piece.Part(a, 1) with { Start = back }]);
                break;
        }
    }

    /// <summary>A displacement of 1e-6 to 1e-3 mm in any direction.</summary>
    private Vec2 Tiny() => new Vec2(Math.Pow(10, -6 + 3 * random.NextDouble()), 0).Turned(2 * Math.PI * random.NextDouble());
}
