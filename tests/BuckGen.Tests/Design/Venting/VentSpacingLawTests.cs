using BuckGen.Geometry;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>
/// Along the foot of every wall of the corpus no two neighbouring vents lie farther apart than the spacing, or a finding says so.
/// </summary>
[Trait("Tier", "slow")]
public sealed class VentSpacingLawTests
{
    /// <summary>Distance of the places checked along the foot, mm.</summary>
    private const double Step = 0.5;

    [Fact]
    public void Between_neighbouring_vents_the_foot_of_a_wall_is_no_longer_than_the_spacing()
    {
        var (faults, kept) = (new Faults(), 0);
        foreach (var c in VentCase.All)
        {
            var floor = new FlatFloor(c.Foot, c.IsMale);
            var places = c.Vents.Vents.Where(v => v.Layer == c.Surface.Number).Select(v => v.Centre).ToArray();
            var told = c.ReportedFindings.Where(f => f.Height is { } h && Math.Abs(h - c.Surface.Top) < 1e-6)
                .Select(f => f.Place!.Value).ToArray();
            // A vent does the work of another whose bore would run into its own.
            var reach = c.Distance + c.Vents.Spec.BoreDiameter + c.Vents.Spec.Land;
            // What is all but closed holds no air.
            foreach (var loop in c.Foot.Loops.Where(l => 2 * Math.Abs(l.SignedArea) > 0.05 * l.Length))
            {
                var samples = Samples(loop);
                var feet = places.SelectMany(v => Feet(samples, v, reach, floor)).Order().ToArray();
                var marks = told.SelectMany(t => Feet(samples, t, reach, null)).Order().ToArray();
                foreach (var (from, to) in Gaps(feet, loop.Length))
                {
                    var isKept = to - from <= c.Vents.Spacing + 2 * Step;
                    if (isKept) kept++;
                    faults.Check(
                        isKept || Array.Exists(marks, m => Within(m, from, to, loop.Length)),
                        () =>
                            $"{c.Name}: {to - from:0.#} mm without a vent from {At(loop, from)} to {At(loop, to)}, "
                            + $"{feet.Length} feet on a loop of {loop.Length:0.#}");
                }
            }
        }

        faults.None(3300);
        // What is reported must stay the exception.
        Assert.InRange(kept, 0.9 * faults.CheckedCount, faults.CheckedCount);
    }

    private static List<(Vec2 Place, double Along)> Samples(Loop loop)
    {
        var (samples, before) = (new List<(Vec2, double)>(), 0.0);
        foreach (var s in loop.Segments)
        {
            var count = Math.Max(1, (int)Math.Ceiling(s.Length / Step));
            for (var i = 0; i < count; i++) samples.Add((s.PointAt((double)i / count), before + s.Length * i / count));
            before += s.Length;
        }

        return samples;
    }

    /// <summary>The places of the foot that lie nearest to a vent, each on its own stretch.</summary>
    private static IEnumerable<double> Feet(List<(Vec2 Place, double Along)> samples, Vec2 vent, double reach, FlatFloor? floor)
    {
        for (var i = 0; i < samples.Count; i++)
        {
            var d = samples[i].Place.DistanceTo(vent);
            if (d > reach + Step || d > samples[(i + 1) % samples.Count].Place.DistanceTo(vent)
                || d > samples[(i + samples.Count - 1) % samples.Count].Place.DistanceTo(vent)) continue;
            if (floor is null || floor.Sees(vent, samples[i].Place)) yield return samples[i].Along;
        }
    }

    /// <summary>From each foot to the next, round the loop; the whole loop when there is none or one.</summary>
    private static IEnumerable<(double From, double To)> Gaps(double[] feet, double length)
    {
        if (feet.Length == 0) yield return (0, double.PositiveInfinity);
        for (var i = 0; i < feet.Length; i++) yield return (feet[i], i + 1 < feet.Length ? feet[i + 1] : feet[0] + length);
    }

    private static bool Within(double along, double from, double to, double length) =>
        (along >= from - 2 && along <= to + 2) || (along + length >= from - 2 && along + length <= to + 2);

    private static Vec2 At(Loop loop, double along)
    {
        if (!double.IsFinite(along)) return loop.Segments[0].Start;
        along %= loop.Length;
        foreach (var s in loop.Segments)
        {
            if (along <= s.Length) return s.PointAt(along / s.Length);
            along -= s.Length;
        }

        return loop.Segments[0].Start;
    }
}
