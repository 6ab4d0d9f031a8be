using BuckGen.Geometry;
using BuckGen.Intake.Reading;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Intake.Outlines;

/// <summary>How an outline is chopped up, ordered and directed in its file must not change what it is.</summary>
public class ExplosionProperties
{
    public static TheoryData<string> Names =>
    [
        "dxf/ez_gear_line_arc_r2010.dxf", "dxf/ez_islands_r2004.dxf", "dxf/ez_keyplate_r2000.dxf", "dxf/fc_quay_r14_lw.dxf",
        "dxf/os_tag.dxf", "dxf/ez_puzzle_bulge_gt1.dxf", "dxf/ez_fish_kinked_spline.dxf", "dxf/ez_comb_necks.dxf",
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public void Shuffled_reversed_and_jittered_pieces_give_the_same_region(string name)
    {
        var region = Region(name);
        var segments = region.Segments.ToArray();
        // Gaps stay below the joining distance and well below the shortest piece.
        var jitter = Math.Min(0.03, segments.Min(s => s.Chord.Length) / 8);
        Gen.Int.Sample(seed =>
        {
            var random = new Random(seed);
            var pieces = segments.Select(s => random.Next(2) == 0 ? s : s.Reversed())
                .Select(s => s with { Start = s.Start + Shift(), End = s.End + Shift() }).ToArray();
            random.Shuffle(pieces);

            AssertSame(region, Reread(pieces), region.Perimeter * jitter);

            Vec2 Shift() => new Vec2(jitter * random.NextDouble(), 0).Turned(random.NextDouble() * 7);
        }, iter: 20);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pieces_drawn_again_change_nothing(string name)
    {
        var region = Region(name);
        var segments = region.Segments.ToArray();
        Gen.Int.Sample(seed =>
        {
            var random = new Random(seed);
            var pieces = segments.Concat(segments.Where(_ => random.Next(3) == 0).Select(s => s.Reversed())).ToArray();
            random.Shuffle(pieces);

            AssertSame(region, Reread(pieces), 1e-6 * region.Area);
        }, iter: 10);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_direction_of_a_loop_changes_nothing(string name)
    {
        var region = Region(name);

        var reversed = Reread([.. region.Loops.Reverse().SelectMany(l => l.Reversed().Segments)]);

        AssertSame(region, reversed, 1e-6 * region.Area);
        Assert.Equal(region.Perimeter, reversed.Perimeter, 1e-6);
    }

    private static Region Region(string name) => OutlineReader.Read(Corpus.File(name).Content, name).Region;

    private static Region Reread(Segment[] pieces) => Reading.Dxf(pieces.Select(DxfText.Format)).Region;

    private static void AssertSame(Region expected, Region actual, double area)
    {
        Assert.Equal(expected.Islands.Length, actual.Islands.Length);
        Assert.Equal(expected.HoleCount, actual.HoleCount);
        Assert.Equal(expected.Area, actual.Area, area);
    }
}
