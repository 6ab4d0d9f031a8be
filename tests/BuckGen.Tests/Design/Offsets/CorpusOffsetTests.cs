using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests.Offsetting;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Design.Offsets;

/// <summary>The laws of offsets over every outline of tests/corpus that can be read.</summary>
[Trait("Tier", "slow")]
public class CorpusOffsetTests
{
    // Outlines of more pieces are left to the benchmarks; checking each point of them against each piece takes minutes.
    private const int MaxPieces = 3000;

    // 36 mm at 5° of draft, and the bare step of one 12 mm layer inward. Trigonometry.
    private static readonly double[] Distances = [36 * Math.Tan(5 * Math.PI / 180), -12 * Math.Tan(5 * Math.PI / 180)];

    private static readonly Lazy<IReadOnlyDictionary<string, Region>> Read = new(() => Corpus.Files
        .Select(f => (f.Name, Region: RegionOf(f)))
        .Where(f => f.Region is { IsEmpty: false } && f.Region.Segments.Count() <= MaxPieces)
        .ToDictionary(f => f.Name, f => f.Region!));

    // Loops that touch at a point leave the exact rung without a way on; the polygon rung takes them.
    private static readonly string[] LeftToTheSafeRung = ["dxf/ez_touching.dxf"];

    // By less than a tolerance; the direction in which they are drawn tells nothing then.
    private static readonly string[] CrossThemselves = ["svg/h_petals_stop_short.svg"];

    public static TheoryData<string> Names => [.. Read.Value.Keys];

    [Fact]
    public void Enough_outlines_are_offset() => Assert.InRange(Read.Value.Count, 110, int.MaxValue);

    [Theory]
    [MemberData(nameof(Names))]
    public void The_ladder_keeps_every_law(string name)
    {
        var region = Read.Value[name];
        foreach (var distance in Distances)
        {
            foreach (var join in (CornerJoin[])[CornerJoin.Round, CornerJoin.Mitre])
            {
                var result = CheckedOffsetter.Standard(Tolerance.Default).Offset(region, distance, join);
                var polygon = new TidiedOffsetter(new PolygonOffsetter(0.01)).Offset(region, distance, join);

                Assert.True(distance > 0 ? result.Area > region.Area : result.Area < region.Area);
                Assert.Null(OffsetCheck.Fault(region, result, distance, join, 0.01));
                Assert.InRange(Math.Abs(result.Area - polygon.Area), 0, 0.01 * (region.Perimeter + result.Perimeter));
                if (join.Corners == Corners.Round)
                    Assert.Null(DistanceOracle.Disagreement(region, result, distance, 0.02, across: 24));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Ten_layers_lie_one_inside_the_other(string name)
    {
        var region = Read.Value[name];
        var offsetter = CheckedOffsetter.Standard(Tolerance.Default);
        var inner = region;
        for (var layer = 1; layer <= 10; layer++)
        {
            var outer = offsetter.Offset(region, layer * 0.315, CornerJoin.Round);

            Assert.True(outer.Area > inner.Area);
            foreach (var segment in inner.Segments)
                Assert.True(outer.Contains(segment.Start), $"layer {layer} at {segment.Start}");
            inner = outer;
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Another_library_finds_the_same_offset(string name)
    {
        var region = Read.Value[name];
        foreach (var distance in Distances)
        {
            var result = CheckedOffsetter.Standard(Tolerance.Default).Offset(region, distance, CornerJoin.Round);

            Assert.InRange(PolygonJudge.DifferingArea(region, result, distance, CrossThemselves.Contains(name)), 0,
                0.012 * (region.Perimeter + result.Perimeter));
        }
    }

    [Fact]
    public void An_exact_rung_serves_all_but_a_few()
    {
        var refused = new List<string>();
        foreach (var (name, region) in Read.Value.Where(r => !LeftToTheSafeRung.Contains(r.Key)))
            foreach (var distance in Distances)
                if (Refusal(new ArcOffsetter(), region, distance) is { } drawn
                    && (!CrossThemselves.Contains(name)
                        || Refusal(new ArcOffsetter(MovedSides.Both), region, distance) is not null))
                    refused.Add($"{name}: {drawn}");

        Assert.True(refused.Count == 0, string.Join('\n', refused));
    }

    private static string? Refusal(ArcOffsetter offsetter, Region region, double distance)
    {
        try
        {
            return OffsetCheck.Fault(region, offsetter.Offset(region, distance, CornerJoin.Round), distance,
                CornerJoin.Round, 0.01);
        }
        catch (OffsetFailedException failure)
        {
            return failure.Message;
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
