using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests.Offsetting;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Intake.Fuzzing;
using BuckGen.Tests.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Design.Offsets;

/// <summary>
/// Outlines of the corpus with tiny flaws sprinkled on are offset all the same, and nothing is lost or invented. Few of them in
/// the usual run; BUCKGEN_FUZZ=10000 tries as many, BUCKGEN_FUZZ_SEED and BUCKGEN_FUZZ_FIRST show one again.
/// </summary>
[Trait("Tier", "slow")]
public class TinyFlawTests
{
    private const int Usual = 200, MaxPieces = 600, MaxReported = 20;

    // From a kerf to the largest steps of deep bucks.
    private static readonly double[] Distances = [0.1, 1.05, 3.1496, 6.69, -0.1, -1.05, -2.1, -5.02];

    private static readonly Lazy<IReadOnlyList<(string Name, Region Region)>> Outlines = new(() =>
        [.. Corpus.Files.Select(f => (f.Name, Region: RegionOf(f)))
            .Where(f => f.Region is { IsEmpty: false } && f.Region.Segments.Count() <= MaxPieces)
            .Select(f => (f.Name, f.Region!))]);

    /// <summary>Flawed outlines that failed once: the file, the seed of its flaws, the offset, and what was wrong.</summary>
    public static TheoryData<string, int, double, Corners, string> Failed => new()
    {
        { "dxf/b_insert_missing.dxf", 0, 0.1, Corners.Round,
            "a piece shorter than the uncertainty of a tangent ran past the end it belongs to" },
        { "dxf/ez_keyplate_r2007.dxf", 25, 6.69, Corners.Round,
            "the arc round a cusp had just half a turn, a little too much, and came too near to its own corner" },
        { "dxf/lc_ellipses_r14.dxf", 55, -5.02, Corners.Round,
            "an arc moved nearly to its centre was taken away by what it came from" },
        { "svg/b_bad_utf8.svg", 73, 3.1496, Corners.Round,
            "an arc that touches the edge of a zone without crossing it was judged as a whole" },
        { "svg/svgo_layers.svg", 121, 1.05, Corners.Round,
            "two pieces of one edge lay on each other, and one of them led nowhere" },
        { "dxf/ez_cp1252_r2000.dxf", 133, 6.69, Corners.Round,
            "two arcs a billionth apart ran beside each other for a tenth of a millimetre" },
        { "svg/h_white_over_black.svg", 233, 1.05, Corners.Mitre,
            "a mitre over a corner of tiny pieces was taken for a missing edge" },
        { "dxf/mk_plate.dxf", 427, -1.05, Corners.Round,
            "the arc of a sliver began a second time where it had been cut already" },
        { "dxf/dl_slotplate_r12.dxf", 742, 3.1496, Corners.Mitre, "a sliver on an arc left two arcs of nearly one circle" },
        { "dxf/os_tag.dxf", 1167, -2.1, Corners.Mitre,
            "the side of a mitre beside another edge was taken for one the wrong way round" },
        { "dxf/ez_binary_r2000.dxf", 4311, -5.02, Corners.Mitre, "neither exact rung closes it; the polygon rung does" },
    };

    [Theory]
    [MemberData(nameof(Failed))]
    public void What_failed_once_is_offset(string file, int seed, double distance, Corners corners, string why)
    {
        var complaint = OffsetFault(Outlines.Value.Single(o => o.Name == file).Region, seed, distance, new(corners));

        Assert.True(complaint is null, $"{why}: {complaint}");
    }

    [Fact]
    public void Flawed_outlines_are_offset_as_their_definition_says()
    {
        var (count, seed, first, _) = FuzzSettings.Or(Usual);
        Assert.InRange(Outlines.Value.Count, 110, int.MaxValue);

        var wrong = Enumerable.Range(first, count).Select(n => FindFault(n, n + 1_000_003 * (seed - 1))).OfType<string>()
            .Take(MaxReported).ToList();

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    private static string? FindFault(int number, int seed)
    {
        var (name, clean) = Outlines.Value[number % Outlines.Value.Count];
        var (distance, join) = (Distances[number / 7 % Distances.Length], number / 3 % 2 == 0 ? CornerJoin.Round
            : CornerJoin.Mitre);
        return OffsetFault(clean, seed, distance, join) is { } complaint
            ? FormattableString.Invariant($"{number}: {name}, seed {seed}, by {distance} mm, {join.Corners}: {complaint}")
            : null;
    }

    /// <summary>What is wrong with the offset of an outline when flaws are sprinkled on it, or null.</summary>
    private static string? OffsetFault(Region clean, int seed, double distance, CornerJoin join)
    {
        var region = TinyFlaws.Sprinkled(clean, seed);
        Region result;
        try
        {
            result = CheckedOffsetter.Standard(Tolerance.Default).Offset(region, distance, join);
        }
        catch (OffsetFailedException failure)
        {
            return failure.Message;
        }

        if (distance > 0 && result.IsEmpty) return "nothing is left after growing";
        // The corners of mitres are beyond the definition by distance; the clean outline's mitres are the judge there.
        return join.Corners == Corners.Round
            ? PlainJudge.Create(region).Disagreement(result, distance, 0.012, Points(region, result, distance, seed))
            : Difference(clean, result, distance, join);
    }

    private static string? Difference(Region clean, Region result, double distance, CornerJoin join)
    {
        var expected = CheckedOffsetter.Standard(Tolerance.Default).Offset(clean, distance, join);
        var slack = 0.01 * (expected.Perimeter + result.Perimeter + clean.Perimeter);
        return Math.Abs(expected.Area - result.Area) <= slack
            ? null
            : FormattableString.Invariant($"mitred it has {result.Area:F3} mm², without flaws {expected.Area:F3} mm²");
    }

    /// <summary>Points anywhere and points a little to either side of the result's edge.</summary>
    private static IEnumerable<Vec2> Points(Region region, Region result, double distance, int seed)
    {
        var (random, bounds, edges) = (new Random(seed), region.Bounds.Grown(Math.Max(0, distance) + 1),
            result.Segments.ToArray());
        for (var i = 0; i < 40; i++)
        {
            yield return new(bounds.MinX + bounds.Width * random.NextDouble(), bounds.MinY + bounds.Height * random.NextDouble());
            if (edges.Length == 0) continue;
            var edge = edges[random.Next(edges.Length)];
            yield return edge.PointAt(0.5) + edge.DirectionAt(0.5).Left * (i % 2 == 0 ? 0.03 : -0.03);
        }
    }

    private static Region? RegionOf(CorpusFile file)
    {
        try
        {
            return OutlineReader.Read(file.Content, file.Name, OutlineOptions.Default with { Units = file.Unit }).Region;
        }
        catch (OutlineException)
        {
            return null;
        }
    }
}
