using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>
/// What draft does to the parts of an outline, found at the height that trigonometry gives: something that needs an offset of
/// w to happen does so at w/tan(draft) from the plane of the outline.
/// </summary>
public class ShapeChangeTests
{
    /// <summary>A drawn outline with one thing in it that happens at an offset of 2 mm.</summary>
    /// <param name="Id">The finding.</param>
    /// <param name="Kind">Male or female.</param>
    /// <param name="At">Where the outline is to size.</param>
    /// <param name="Region">The outline.</param>
    /// <param name="Where">Where it happens.</param>
    private sealed record Case(string Id, BuckKind Kind, OutlineAt At, Region Region, Bounds Where);

    private static readonly Region TwoSquares = Shapes.Union(Shapes.Rectangle(30, 30), Shapes.RectangleAt(34, 0, 30, 30));
    private static readonly Bounds BetweenTheSquares = new(28, -4, 36, 34);

    private static readonly Region SmallHole = Region.FromLoops([Loop.Rectangle(new(0, 0, 60, 60)), Loop.Circle(new(20, 40), 2)]);
    private static readonly Bounds TheSmallHole = new(19.9, 39.9, 20.1, 40.1);

    /// <summary>A chamber that opens upward through a mouth 4 mm wide.</summary>
    private static readonly Region Pot = Shapes.Polygon(
        (0, 0), (60, 0), (60, 60), (32, 60), (32, 50), (45, 50), (45, 20), (15, 20), (15, 50), (28, 50), (28, 60), (0, 60));

    /// <summary>Two squares and a neck 4 mm wide between them.</summary>
    private static readonly Loop Dumbbell = Loop.Polygon(
        new(0, 0), new(30, 0), new(30, 13), new(50, 13), new(50, 0), new(80, 0), new(80, 30), new(50, 30), new(50, 17),
        new(30, 17), new(30, 30), new(0, 30));

    private static readonly Bounds TheNeck = new(26, 10, 54, 20);

    private static readonly Region NarrowHole = Region.FromLoops([Loop.Rectangle(new(-20, -20, 100, 50)), Dumbbell]);

    private static readonly Region SmallIsland = Shapes.Union(Shapes.Rectangle(60, 60), Shapes.DiscAt(80, 30, 2));
    private static readonly Bounds TheSmallIsland = new(79.9, 29.9, 80.1, 30.1);

    private static readonly Region TwoHoles = Region.FromLoops(
        [Loop.Rectangle(new(0, 0, 100, 60)), Loop.Rectangle(new(20, 20, 48, 40)), Loop.Rectangle(new(52, 20, 80, 40))]);

    private static readonly Bounds BetweenTheHoles = new(46, 16, 54, 44);

    private static readonly Region HoleNearTheEdge =
        Region.FromLoops([Loop.Rectangle(new(0, 0, 100, 60)), Loop.Rectangle(new(30, 4, 70, 30))]);
    private static readonly Bounds TheThinWall = new(26, -1, 74, 8);

    private static readonly Case[] Cases =
    [
        new("islands-merge", BuckKind.Male, OutlineAt.Face, TwoSquares, BetweenTheSquares),
        new("pockets-merge", BuckKind.Female, OutlineAt.Base, TwoSquares, BetweenTheSquares),
        new("counter-closes", BuckKind.Male, OutlineAt.Face, SmallHole, TheSmallHole),
        new("post-vanishes", BuckKind.Female, OutlineAt.Base, SmallHole, TheSmallHole),
        new("bay-closes", BuckKind.Male, OutlineAt.Face, Pot, new(14, 19, 46, 62)),
        new("bay-closes", BuckKind.Female, OutlineAt.Base, Pot, new(14, 19, 46, 62)),
        new("counter-splits", BuckKind.Male, OutlineAt.Face, NarrowHole, TheNeck),
        new("post-splits", BuckKind.Female, OutlineAt.Base, NarrowHole, TheNeck),
        new("island-vanishes", BuckKind.Male, OutlineAt.Base, SmallIsland, TheSmallIsland),
        new("pocket-vanishes", BuckKind.Female, OutlineAt.Face, SmallIsland, TheSmallIsland),
        new("neck-pinches", BuckKind.Male, OutlineAt.Base, Region.FromLoops([Dumbbell]), TheNeck),
        new("pocket-neck-pinches", BuckKind.Female, OutlineAt.Face, Region.FromLoops([Dumbbell]), TheNeck),
        new("counters-merge", BuckKind.Male, OutlineAt.Base, TwoHoles, BetweenTheHoles),
        new("posts-merge", BuckKind.Female, OutlineAt.Face, TwoHoles, BetweenTheHoles),
        new("counter-opens", BuckKind.Male, OutlineAt.Base, HoleNearTheEdge, TheThinWall),
        new("post-joins-wall", BuckKind.Female, OutlineAt.Face, HoleNearTheEdge, TheThinWall),
    ];

    public static TheoryData<int, string> Rows
    {
        get
        {
            var rows = new TheoryData<int, string>();
            for (var i = 0; i < Cases.Length; i++) rows.Add(i, $"{Cases[i].Id}, {Cases[i].Kind}");
            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Each_change_is_found_once_at_its_height_and_place(int index, string what)
    {
        var row = Cases[index];
        var design = PlainBuck.Create(row.Region, PlainBuck.Spec with { Kind = row.Kind, OutlineAt = row.At });

        var fromOutline = 2 / PlainBuck.Tan5;
        var height = row.At == OutlineAt.Face ? 36 - fromOutline : fromOutline;
        var about = design.Findings.Where(f => Cases.Any(c => c.Id == f.Id)).ToArray();
        Assert.Equal([row.Id], about.Select(f => f.Id));
        var finding = about[0];
        Assert.Equal(height, finding.Height!.Value, 0.05);
        Assert.True(row.Where.Contains(finding.Place!.Value), $"{what}: {finding.Place}");
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Contains(FormattableString.Invariant($"{finding.Height:F2} mm"), finding.Message);
        Assert.NotEmpty(finding.Remedy);
    }

    [Fact]
    public void Every_kind_of_change_has_a_case_on_both_kinds_of_buck() =>
        // One row a kind and buck; a bay closes alike on both.
        Assert.Equal(2 * Enum.GetValues<RegionChangeKind>().Length, Cases.Length);

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_other_way_round_nothing_is_found(int index, string what)
    {
        // Where a male buck grows a cavity shrinks: neither closes what the other does.
        var row = Cases[index];
        var at = row.At == OutlineAt.Face ? OutlineAt.Base : OutlineAt.Face;

        var design = PlainBuck.Create(row.Region, PlainBuck.Spec with { Kind = row.Kind, OutlineAt = at });

        Assert.False(design.Findings.Any(f => f.Id == row.Id), what);
    }

    [Fact]
    public void Two_counters_close_at_two_heights()
    {
        var region =
            Region.FromLoops([Loop.Rectangle(new(0, 0, 100, 60)), Loop.Circle(new(30, 30), 1), Loop.Circle(new(70, 30), 3)]);

        var design = PlainBuck.Create(region);

        Assert.Equal([36 - 3 / PlainBuck.Tan5, 36 - 1 / PlainBuck.Tan5],
            Within(design.Named("counter-closes").Select(f => f.Height!.Value), 0.05,
                [36 - 3 / PlainBuck.Tan5, 36 - 1 / PlainBuck.Tan5]));
    }

    [Fact]
    public void Letters_of_a_word_that_run_together_are_reported_pair_by_pair()
    {
        var word = Shapes.Union([.. Enumerable.Range(0, 4).Select(i => Shapes.RectangleAt(24 * i, 0, 20, 30))]);

        var places = PlainBuck.Create(word).Named("islands-merge").Select(f => f.Place!.Value.X).Order().ToArray();

        Assert.Equal(3, places.Length);
        for (var i = 0; i < 3; i++) Assert.InRange(places[i], 24 * i + 18, 24 * i + 26);
    }

    [Fact]
    public void Without_draft_nothing_changes() =>
        Assert.All(Cases, c => Assert.DoesNotContain(
            PlainBuck.Create(c.Region, PlainBuck.Spec with { Kind = c.Kind, OutlineAt = c.At, Draft = 0 }).Findings,
            f => f.Id == c.Id));

    [Fact]
    public void A_base_plate_raises_the_heights_by_its_thickness()
    {
        var design = PlainBuck.Create(SmallHole, PlainBuck.Spec with { Base = new(new("MDF 9", 9)) });

        Assert.Equal(9 + 36 - 2 / PlainBuck.Tan5, Assert.Single(design.Named("counter-closes")).Height!.Value, 0.05);
    }

    private static double[] Within(IEnumerable<double> found, double tolerance, double[] expected) =>
        [.. found.Zip(expected, (f, e) => Math.Abs(f - e) <= tolerance ? e : f)];
}
