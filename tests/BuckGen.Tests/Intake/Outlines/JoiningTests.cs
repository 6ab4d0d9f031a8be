using BuckGen.Geometry;
using BuckGen.Intake.Reading;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Intake.Outlines;

public class JoiningTests
{
    [Fact]
    public void Gaps_within_the_joining_distance_are_closed_and_reported()
    {
        var outline = Reading.Dxf(Line(0, 0, 80, 0), Line(80, 0.05, 80, 50), Line(80, 50, 0, 50), Line(0, 49.98, 0, 0));

        Assert.Equal(1, outline.LoopCount);
        Assert.Equal(4000, outline.Region.Area, 4.0);
        var repair = Assert.Single(outline.Repairs);
        Assert.Equal(("gap-joined", 2), (repair.Kind, repair.Count));
        Assert.Equal(0.05, repair.MaxDistance, 1e-9);
    }

    [Fact]
    public void A_wider_gap_is_refused_with_both_ends_the_distance_and_the_remedy() =>
        Assert.Equal(
            "nothing is closed, only 1 open line: nearest ends at (80.300, 0.000) and (80.000, 0.000), 0.300 mm apart "
            + "(LINE at line 15, layer 0); join them or raise the joining distance (now 0.1 mm)",
            Reading.Refusal(Line(80.3, 0, 100, 40), Line(100, 40, 0, 40), Line(0, 40, 0, 0), Line(0, 0, 80, 0)));

    [Fact]
    public void The_joining_distance_can_be_raised()
    {
        var content = File(Line(0, 0, 80, 0), Line(80.3, 0, 80, 40), Line(80, 40, 0, 40), Line(0, 40, 0, 0));

        var outline = OutlineReader.Read(content, "test.dxf", new(new Tolerance(Join: 0.5)));

        Assert.Equal(0.3, Assert.Single(outline.Repairs).MaxDistance, 1e-9);
        Assert.Equal(new Bounds(0, 0, 80.15, 40), outline.Region.Bounds);
    }

    [Fact]
    public void A_shape_smaller_than_the_joining_distance_is_not_swallowed()
    {
        var outline = Reading.Dxf([.. RectangleLines(0, 0, 50, 50), .. RectangleLines(10, 10, 0.08, 0.06)]);

        Assert.Equal(1, outline.Region.HoleCount);
        Assert.Equal(2500 - 0.0048, outline.Region.Area, 1e-9);
        Assert.Empty(outline.Repairs);
    }

    [Fact]
    public void Outlines_that_share_a_corner_stay_apart()
    {
        var outline = Reading.Dxf([.. RectangleLines(0, 0, 10, 10), .. RectangleLines(10, 10, 10, 10)]);

        Assert.Equal(2, outline.Region.Islands.Length);
        Assert.All(outline.Region.Islands, i => Assert.Equal(100, i.Area, 1e-9));
    }

    [Fact]
    public void Twenty_thousand_shuffled_lines_are_joined()
    {
        var corners = Enumerable.Range(0, 20_000)
            .Select(i => new Vec2(100, 0).Turned(i * Math.PI / 10_000) * (1 + 0.05 * Math.Sin(i * 0.01))).ToArray();
        var lines = corners.Select((p, i) => Format(new Segment(p, corners[(i + 1) % corners.Length]))).ToArray();
        new Random(7).Shuffle(lines);
        var content = File(lines);

        Assert.Equal(1, OutlineReader.Read(content, "test.dxf").LoopCount);
    }
}
