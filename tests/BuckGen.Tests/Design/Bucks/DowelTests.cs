using System.Collections.Immutable;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

[Trait("Tier", "slow")]
public class DowelTests
{
    // A hole in the middle of each layer must keep this distance to every edge: 6.15/2 + 4 (the spec's defaults).
    private const double FromEdge = 7.075;

    [Fact]
    public void Three_dowels_go_through_every_layer()
    {
        var design = Create(Shapes.Rectangle(100, 60));

        var columns = design.Layers.Select(l => Assert.Single(l.Parts).Dowels.Select(d => d.Centre).ToHashSet()).ToArray();
        Assert.Equal(3, columns[0].Count);
        Assert.All(columns, c => Assert.Equal(columns[0], c));
        Assert.All(design.Layers.SelectMany(l => l.Parts).SelectMany(p => p.Dowels), d => Assert.Equal(6.15, d.Diameter, 1e-9));
    }

    [Theory]
    [InlineData(BuckKind.Male)]
    [InlineData(BuckKind.Female)]
    public void Upright_walls_share_their_dowels(BuckKind kind)
    {
        var design =
            Create(Shapes.Union(Shapes.Disc(40), Shapes.Slot(40, 15).Moved(80, 0)),
                PlainBuck.Spec with { Draft = 0, Kind = kind });

        var columns = design.Layers.Select(l => l.Parts.SelectMany(p => p.Dowels).Select(d => d.Centre).ToHashSet()).ToArray();
        Assert.Equal(kind == BuckKind.Male ? 6 : 3, columns[0].Count);
        Assert.All(columns, c => Assert.Equal(columns[0], c));
    }

    [Fact]
    public void They_stand_as_far_apart_as_the_smallest_layer_allows()
    {
        // The top is sanded down to 100 x 60: centres lie in 85.85 x 45.85, whose diagonal is 97.33 mm (Pythagoras).
        var places = Create(Shapes.Rectangle(100, 60)).Layers[^1].Parts[0].Dowels.Select(d => d.Centre).ToArray();

        Assert.Equal(97.33, MaxDistance(places), 0.5);
    }

    [Fact]
    public void Wood_is_left_round_every_hole_even_after_sanding() =>
        Gen.Select(RandomRegion.Islands, Gen.Enum<Steps>(), Gen.Enum<BuckKind>()).Sample((region, steps, kind) =>
        {
            var design = Create(region, PlainBuck.Spec with { Steps = steps, Kind = kind, Depth = 24 });

            foreach (var layer in design.Layers)
                foreach (var part in layer.Parts)
                    foreach (var dowel in part.Dowels)
                    {
                        Assert.True(part.Shape.Contains(dowel.Centre));
                        Assert.True(part.Shape.Loops.Min(l => l.DistanceTo(dowel.Centre)) >= FromEdge - 0.011);
                        Assert.All(layer.SandTo, l => Assert.True(l.DistanceTo(dowel.Centre) >= FromEdge - 0.011));
                    }
        }, iter: 60);

    [Fact]
    public void Holes_never_meet_each_other() =>
        RandomRegion.Islands.Sample(region =>
        {
            foreach (var part in Create(region).Layers.SelectMany(l => l.Parts))
                Assert.All(Pairs([.. part.Dowels.Select(d => d.Centre)]),
                    p => Assert.True(p.A.DistanceTo(p.B) >= 2 * 6.15 - 1e-9));
        }, iter: 40);

    [Theory]
    [InlineData(100, 60)]
    [InlineData(60, 60)]
    [InlineData(200, 30)]
    public void No_turned_or_flipped_layer_goes_onto_its_dowels(double width, double height)
    {
        var design = Create(Shapes.Rectangle(width, height));

        AssertOneWayOnly(design.Layers[0].Parts[0]);
        Assert.Empty(design.Named("dowels-turnable"));
    }

    [Fact]
    public void A_disc_a_ring_and_a_hexagon_go_on_one_way_only() =>
        Assert.All((Region[])[Shapes.Disc(40), Shapes.Ring(50, 25), Shapes.Polygon(
            [.. Enumerable.Range(0, 6).Select(i => new Vec2(40, 0).Turned(i * Math.PI / 3)).Select(p => (p.X, p.Y))])],
            region => AssertOneWayOnly(Create(region).Layers[0].Parts[0]));

    [Fact]
    public void Every_island_has_dowels_of_its_own()
    {
        var design = Create(Shapes.Union(Shapes.Rectangle(60, 60), Shapes.RectangleAt(100, 0, 60, 60)));

        Assert.All(design.Layers, l => Assert.Equal(2, l.Parts.Length));
        Assert.All(design.Layers.SelectMany(l => l.Parts), p => Assert.InRange(p.Dowels.Length, 2, 3));
    }

    [Fact]
    public void Islands_that_have_grown_together_carry_the_dowels_of_both()
    {
        // A gap of 1 mm is closed below 0.5/tan 5° = 5.7 mm from the face: only the top layer, cut at 12 mm below it, has one
        // part.
        var design = Create(
            Shapes.Union(Shapes.Rectangle(60, 60), Shapes.RectangleAt(63, 0, 60, 60)),
            PlainBuck.Spec with { Depth = 36, Steps = Steps.Inside });

        // Steps inside: the top layer is cut at the face, 3 mm apart; the next at 12 mm, 0.9 mm apart; the lowest has grown
        // together.
        Assert.Equal([1, 2, 2], design.Layers.Select(l => l.Parts.Length));
        Assert.Equal(design.Layers[1].Parts.Sum(p => p.Dowels.Length), design.Layers[0].Parts[0].Dowels.Length);
    }

    [Fact]
    public void The_base_plate_is_drilled_too()
    {
        var design = Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Base = new(PlainBuck.Mdf12) });

        Assert.Equal(LayerRole.Base, design.Layers[0].Role);
        Assert.Equal(
            design.Layers[1].Parts[0].Dowels.Select(d => d.Centre).OrderBy(p => p.X),
            design.Layers[0].Parts[0].Dowels.Select(d => d.Centre).OrderBy(p => p.X));
    }

    [Fact]
    public void An_island_too_small_for_two_is_reported_and_named()
    {
        var design = Create(Shapes.Union(Shapes.Rectangle(60, 60), Shapes.DiscAt(90, 30, 10)));

        var finding = Assert.Single(design.Named("dowels-no-room"));
        Assert.Contains("sland B", finding.Message);
        Assert.Equal(0, finding.Place!.Value.DistanceTo(new(90, 30)), 0.1);
        Assert.Empty(design.Layers[2].Parts[1].Dowels);
    }

    [Fact]
    public void A_slim_island_with_two_dowels_that_looks_the_same_turned_round_is_reported()
    {
        // 16 mm wide: the centres lie in a strip 1.85 mm wide, too narrow for a third that tells the ways apart.
        var finding = Assert.Single(Create(Shapes.Rectangle(80, 16)).Named("dowels-turnable"));

        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Contains("island A", finding.Message);
    }

    [Fact]
    public void A_slim_island_whose_outline_shows_the_way_is_not_reported()
    {
        // A wedge: 16 mm wide at one end, 30 mm at the other, with two dowels or three.
        Assert.Empty(Create(Shapes.Polygon((0, 0), (80, 0), (80, 30), (0, 16))).Named("dowels-turnable"));
    }

    [Fact]
    public void A_single_layer_needs_no_dowels()
    {
        var design = Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Depth = 12 });

        Assert.Empty(Assert.Single(design.Layers).Parts[0].Dowels);
        Assert.Empty(design.Findings);
    }

    /// <summary>Whether two dowels and an outline betray the wrong way, by trying the three wrong ways by hand.</summary>
    [Theory]
    [InlineData(true, 0.0)]
    [InlineData(false, 2.0)]
    public void A_corner_off_by_two_millimetres_is_noticed(bool fits, double off)
    {
        var piece = new Island(Loop.Polygon(new(0, 0), new(80, 0), new(80, 20 + off), new(0, 20)), []);

        Assert.Equal(fits, TurnCheck.FitsWrongWay(piece, [new(10, 10), new(70, 10)]));
    }

    /// <summary>With holes right through, so that every layer shows where they are.</summary>
    private static BuckDesign Create(Region region, BuckSpec? spec = null) => PlainBuck.Create(
        region, (spec ?? PlainBuck.Spec) with { Dowels = new() { ThroughFace = true } });

    private static void AssertOneWayOnly(LayerPart part)
    {
        Assert.Equal(3, part.Dowels.Length);
        var sides = Pairs([.. part.Dowels.Select(d => d.Centre)]).Select(p => p.A.DistanceTo(p.B)).Order().ToArray();
        // Unlike by at least 3 mm: a wrong fit is felt. Common practice, no source.
        Assert.True(sides[1] - sides[0] >= 3 - 1e-9 && sides[2] - sides[1] >= 3 - 1e-9, string.Join(", ", sides));
        // And not on one line, or a flip over that line would fit.
        Assert.True(sides[0] + sides[1] - sides[2] > 0.1);
    }

    private static double MaxDistance(Vec2[] places) => Pairs([.. places]).Max(p => p.A.DistanceTo(p.B));

    private static IEnumerable<(Vec2 A, Vec2 B)> Pairs(ImmutableArray<Vec2> places) =>
        from i in Enumerable.Range(0, places.Length)
        from j in Enumerable
            .Range(i + 1, places.Length - i - 1)
        select (places[i], places[j]);
}
