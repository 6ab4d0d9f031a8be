using System.Collections.Immutable;
using BuckGen.Design;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Design.Checks;

/// <summary>What is found in several places is one sentence that can be read, counted as a person would.</summary>
public class FindingWordsTests
{
    /// <summary>
    /// Four concentric circles make two rings. At 6 mm the gap between them narrows from 3.5 mm by 2·6·tan 5° to 2.45 mm, which
    /// divides nothing. A row of its own: drawn with 256 corners each, their gap once counted as 767 close places.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(256)]
    public void Rings_close_together_are_one_pair_and_nothing_is_divided(int corners)
    {
        Loop Circle(double radius) => corners == 0 ? Loop.Circle(new(60, 60), radius)
            : Loop.Polygon([.. Enumerable.Range(0, corners).Select(i => new Vec2(60, 60) + new Vec2(radius, 0)
                .Turned(2 * Math.PI * i / corners))]);
        var rings = Region.FromLoops([Circle(50), Circle(46.5), Circle(43), Circle(39.5)]);

        var findings = Design(rings, 6);

        Assert.DoesNotContain(findings, f => f.Id is "counter-splits" or "counter-closes" or "islands-merge");
        var web = Assert.Single(findings, f => f.Id == "web-between");
        Assert.StartsWith("Two parts 6 mm high stand 2.45 mm apart at their foot: ", web.Message);
        Assert.StartsWith("2 parts are too deep for their width. The narrowest is 4.5 mm wide and 6 mm deep, 1.3",
            Assert.Single(findings, f => f.Id == "too-deep").Message);
    }

    [Fact]
    public void Parts_in_a_row_are_counted_by_pairs()
    {
        var row = Shapes.Union([.. Enumerable.Range(0, 4).Select(i => Shapes.RectangleAt(i * 40, 0, 30, 60))]);

        var web = Assert.Single(Design(row, 24), f => f.Id == "web-between");

        // 10 mm less two walls of 24·tan 5°.
        Assert.StartsWith("3 pairs of parts stand too close. The closest, 24 mm high, stand 5.8 mm apart at their foot: ",
            web.Message);
        Assert.Contains("[groups]", web.Remedy);
    }

    [Theory]
    [InlineData(1, "A counter is 9.9 mm wide at the face and 18 mm deep, 1.82 times its width: ")]
    [InlineData(2, "2 counters are too deep for their width. The narrowest is 9.9 mm wide at the face and 18 mm deep, 1.82")]
    public void Counters_are_named_with_the_narrowest(int count, string words)
    {
        var holes = Enumerable.Range(0, count).Select(i => Loop.Circle(new(40 + 40 * i, 50), 4.95 + 2 * i));
        var plate = Region.FromLoops([Loop.Rectangle(new(0, 0, 140, 100)), .. holes]);

        Assert.StartsWith(words, Assert.Single(Design(plate, 18), f => f.Id == "counter-deep").Message);
    }

    private static ImmutableArray<Finding> Design(Region region, double depth) =>
        BuckDesign.Create(Outline.FromRegion("drawing", region),
            new() { Depth = depth, Stock = [new("MDF 6", 6)], Sheet = new() { Gauge = 1 } }).Findings;
}
