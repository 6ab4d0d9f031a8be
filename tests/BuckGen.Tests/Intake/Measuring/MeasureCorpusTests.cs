using BuckGen.Geometry;
using BuckGen.Intake.Measuring;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Intake.Measuring;

/// <summary>The measures of drawings of many programs against slow and plain ways to find them.</summary>
[Trait("Tier", "slow")]
public class MeasureCorpusTests
{
    /// <summary>What chords within 0.001 mm of arcs may change in a distance of NetTopologySuite's, on both sides, mm.</summary>
    private const double Chords = 0.0021;

    /// <summary>
    /// Widths from this many steps up can be found by points: they miss the true ends by up to half a step each, so that the edge
    /// enters the circle by 1/4050 of its radius.
    /// </summary>
    private const double Tellable = 45;
    private const double Slack = 2.5e-4;

    /// <summary>All pairs of points of outlines with more pieces would take minutes.</summary>
    private const int ManyPieces = 1500;

    private static readonly Lazy<IReadOnlyList<(string Name, Outline Outline, OutlineMeasures Measures)>> All = new(() =>
        [.. Corpus.Files.Select(f => (f.Name, Outline: Read(f))).Where(f => f.Outline is not null)
            .Select(f => (f.Name, f.Outline!, OutlineMeasures.Measure(f.Outline!)))]);

    [Fact]
    public void Most_drawings_have_measures()
    {
        Assert.InRange(All.Value.Count(f => f.Measures.NarrowestNeck is not null), 115, int.MaxValue);
        Assert.InRange(All.Value.Count(f => f.Measures.NarrowestGap is not null), 80, int.MaxValue);
        Assert.All(Enum.GetValues<GapKind>(),
            kind => Assert.InRange(All.Value.Count(f => f.Measures.NarrowestGap?.Kind == kind), 5, int.MaxValue));
        Assert.InRange(All.Value.Count(f => f.Measures.MinInsideRadius is not null), 70, int.MaxValue);
        Assert.InRange(All.Value.Count(f => f.Measures.MinOutsideRadius is not null), 70, int.MaxValue);
        Assert.InRange(All.Value.Count(f => f.Measures.SharpestCorner is { IsInside: true }), 15, int.MaxValue);
        Assert.InRange(All.Value.Count(f => f.Measures.SharpestCorner is { IsInside: false }), 60, int.MaxValue);
    }

    [Fact]
    public void Every_narrow_place_joins_two_edges_and_holds_no_other()
    {
        foreach (var (name, outline, measures) in All.Value)
        {
            var edge = new SampledEdge(outline.Region, 4000);
            if (measures.NarrowestNeck is { } neck) AssertPlace(name, outline, edge, neck.A, neck.B, wood: true);
            if (measures.NarrowestGap is { } gap) AssertPlace(name, outline, edge, gap.A, gap.B, wood: false);
        }
    }

    [Fact]
    public void No_gap_between_parts_is_narrower_than_the_one_reported()
    {
        var compared = 0;
        foreach (var (name, outline, measures) in All.Value.Where(f => f.Outline.Region.Islands.Length > 1))
        {
            // NetTopologySuite: Geometry.Distance.
            var parts = new SampledEdge(outline.Region, 1).Parts;
            var distance = parts.SelectMany((p, i) => parts[..i].Select(p.Distance)).Min();
            if (distance < 1e-5) continue;
            Assert.True(measures.NarrowestGap is not null, name);
            Assert.True(measures.NarrowestGap.Width <= distance + Chords, $"{name}: {measures.NarrowestGap} but {distance}");
            if (measures.NarrowestGap.Kind != GapKind.BetweenParts) continue;
            Assert.True(measures.NarrowestGap.Width >= distance - Chords, $"{name}: {measures.NarrowestGap} but {distance}");
            compared++;
        }

        Assert.InRange(compared, 15, int.MaxValue);
    }

    [Fact]
    public void No_pair_of_points_of_the_edge_makes_a_narrower_place_and_some_pair_makes_as_narrow_a_one()
    {
        var (compared, seen) = (0, 0);
        foreach (var (name, outline, measures) in All.Value.Where(f => f.Outline.Region.Segments.Count() <= ManyPieces))
        {
            var edge = new SampledEdge(outline.Region, 2000);
            foreach (var wood in (bool[])[true, false])
            {
                var told = (wood ? measures.NarrowestNeck?.Width : measures.NarrowestGap?.Width) ?? double.PositiveInfinity;
                var found = edge.Narrowest(wood, Tellable * edge.Step, 1.01 * told, Slack);
                compared++;
                if (found is not { } pair) continue;
                seen++;
                Assert.True(pair.A.DistanceTo(pair.B) >= 0.99 * told,
                    $"{name}: {(wood ? "neck" : "gap")} {told}, but {pair.A.DistanceTo(pair.B)} at {pair}");
            }
        }

        Assert.InRange(seen, 110, int.MaxValue);
        Assert.InRange(compared, 240, int.MaxValue);
    }

    private static void AssertPlace(string name, Outline outline, SampledEdge edge, Vec2 a, Vec2 b, bool wood)
    {
        var (middle, width) = (a.MidpointTo(b), a.DistanceTo(b));
        Assert.True(outline.Region.DistanceToEdge(a) < 1e-6 && outline.Region.DistanceToEdge(b) < 1e-6, $"{name}: {a}, {b}");
        Assert.True(edge.IsWood(middle) == wood, $"{name}: {middle}");
        var allowed = width / 2 * (1 - Math.Cos(15.1 * Math.PI / 180) * 0.999) + 2 * outline.Curves.MaxError;
        Assert.True(edge.DistanceTo(middle) >= width / 2 - allowed - 1e-9,
            $"{name}: {middle}, {width}, {edge.DistanceTo(middle)}");
    }

    private static Outline? Read(CorpusFile file)
    {
        try
        {
            return OutlineReader.Read(file.Content, file.Name, OutlineOptions.Default with { Units = file.Unit });
        }
        catch (OutlineException)
        {
            return null;
        }
    }
}
