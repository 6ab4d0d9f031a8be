using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Cutting.Boards;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Templates;
using BuckGen.Output.Reports;
using BuckGen.Output.Reports.Card;
using BuckGen.Settings;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Trimming;

/// <summary>The jig is as high as the cut, the part goes through it, and no blade on it meets the core.</summary>
public class JigTests
{
    private const double Wall = 0.02;

    public static TheoryData<BuckKind, double, double> Kinds => new()
    {
        { BuckKind.Male, 5, 12 }, { BuckKind.Male, 3, 18 }, { BuckKind.Female, 4, 12 }, { BuckKind.Male, 8, 15 },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void It_is_as_high_as_the_cut(BuckKind kind, double draft, double height)
    {
        var jig = Design(kind, draft, height).Jig!;

        Assert.InRange(jig.Height, height - 0.5, height + 0.5);
        Assert.Equal(jig.Height, jig.Ring[^1].Top, 1e-9);
        Assert.Equal(0, jig.Ring[0].Bottom);
        Assert.All(jig.Ring.Skip(1).Zip(jig.Ring), pair => Assert.Equal(pair.Second.Top, pair.First.Bottom, 1e-9));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_part_passes_with_the_clearance(BuckKind kind, double draft, double height)
    {
        var design = Design(kind, draft, height);

        foreach (var layer in design.Jig!.Ring)
            foreach (var at in (double[])[layer.Bottom, (layer.Bottom + layer.Top) / 2, layer.Top])
            {
                var wood = layer.Region;
                var points = Outside(design, at).ToList();
                Assert.NotEmpty(points);
                Assert.All(points, p => Assert.True(!wood.Contains(p) && wood.DistanceToEdge(p) >= 0.5 - Wall, $"{p} at {at}"));
            }

        // And it is held: the guiding layer is no wider than the clearance where it is narrowest.
        var guide = design.Jig.Ring[^1];
        Assert.All(Outside(design, guide.Bottom), p => Assert.InRange(guide.Region.DistanceToEdge(p), 0.5 - Wall, 0.5 + Wall));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_blade_on_the_ring_never_meets_the_core(BuckKind kind, double draft, double height)
    {
        var jig = Design(kind, draft, height).Jig!;

        Assert.NotEmpty(jig.Core);
        Assert.True(jig.Core[^1].Top <= jig.Height - 2 + 1e-9);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_core_goes_into_the_part(BuckKind kind, double draft, double height)
    {
        var design = Design(kind, draft, height);

        foreach (var layer in design.Jig!.Core)
            Assert.All(layer.Region.Segments, s =>
            {
                var inside = Inside(design, layer.Top);
                Assert.True(inside.Contains(s.Start) && inside.DistanceToEdge(s.Start) >= 0.5 - Wall);
            });
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_bed_carries_ring_and_core_and_shows_where_the_core_is_glued(BuckKind kind, double draft, double height)
    {
        var design = Design(kind, draft, height);
        var (bed, core, ring) = (design.Jig!.Bed!, design.Jig.Core[0].Region, design.Jig.Ring[0].Region);

        Assert.Equal(core.Loops, bed.GlueUp);
        Assert.Equal((0, -6), (bed.Top, bed.Bottom));
        Assert.All(core.Segments.Concat(ring.Segments),
            s => Assert.True(bed.Region.Contains(s.PointAt(0.5)) || bed.Region.DistanceToEdge(s.PointAt(0.5)) < 1e-6));
        Assert.Contains(bed, design.Accessories);
        // The lettering keeps clear of the lines.
        var label = bed.Parts.Single().Label!.Box;
        Assert.All(core.Segments, s => Assert.False(s.Enters(label)));
    }

    [Fact]
    public void Without_a_core_there_is_nothing_for_a_bed_to_carry()
    {
        var spec = Spec(BuckKind.Male, 5, 12);

        Assert.Null(Formed.Design(Shape, spec with { Jig = spec.Jig! with { Core = false } }).Jig!.Bed);
        Assert.Null(Formed.Design(Shape, spec with { Jig = spec.Jig! with { Bed = false } }).Jig!.Bed);
    }

    [Fact]
    public void The_flange_has_room_under_a_ring_of_several_boards()
    {
        var design = Design(BuckKind.Male, 5, 12);

        var lowest = design.Jig!.Ring[0].Region;
        Assert.All(Outside(design, 0), p => Assert.True(lowest.DistanceToEdge(p) >= 12.5 - Wall));
        Assert.DoesNotContain(design.Findings, f => f.Id == "jig-on-flange");
        Assert.Contains(Formed.Design(Shape, Spec(BuckKind.Male, 5, 6)).Findings, f => f.Id == "jig-on-flange");
    }

    /// <summary>The part stands on its flange. A ring of several boards stands beside it, one of a single board on it.</summary>
    [Theory]
    [InlineData(BuckKind.Male, 12, 12, FlangeFace.Underside, 12)]
    [InlineData(BuckKind.Female, 12, 12, FlangeFace.Underside, 12 - 1.2)]
    [InlineData(BuckKind.Male, 6, 12, FlangeFace.Upper, 6 + 1.2)]
    [InlineData(BuckKind.Female, 6, 12, FlangeFace.Upper, 6)]
    [InlineData(BuckKind.Male, 6, 0, FlangeFace.Underside, 6)]
    public void Heights_name_the_face_of_the_flange_that_they_count_from(
        BuckKind kind, double height, double room, FlangeFace from, double overTheWood)
    {
        var spec = Spec(kind, 5, height);
        var design = Formed.Design(Shape, spec with { Jig = spec.Jig! with { FlangeRoom = room }, Part = new() });
        var (jig, cut) = (design.Jig!, design.Part!.Cut);

        Assert.Equal((height, from), (jig.Height, jig.HeightFrom));
        // The wood touches the underside of the flange of a male buck and the upper side of that of a cavity.
        Assert.Equal(kind == BuckKind.Male ? FlangeFace.Underside : FlangeFace.Upper, cut.HeightFrom);
        Assert.Equal(overTheWood, cut.Height, 1e-9);
        var words = from == FlangeFace.Upper ? "upper side of the flange" : "underside of the flange";
        Assert.Contains($"mm above the {words}.", string.Join(' ', new OrderOfWork().Lines(CutPlan.Create(design, new()))));
        Assert.Contains($"mm above the {words}.", TrimTemplates.Create(design).Single().Words[0]);
        Assert.Equal(from == FlangeFace.Upper ? "upper" : "underside", JigReport.Create(jig).HeightFrom);
        var ends = PartRows.Create(PartReport.Create(design.Part, null)).Single(r => r.What == "Ends").Text;
        Assert.EndsWith(kind == BuckKind.Male ? "over the underside of the flange" : "over the upper side of the flange", ends);
    }

    [Fact]
    public void Every_layer_has_the_same_dowels_in_wood()
    {
        var jig = Design(BuckKind.Male, 5, 18).Jig!;

        Assert.True(jig.Ring.Length >= 3);
        var holes = jig.Ring[0].Parts.SelectMany(p => p.Dowels).ToList();
        Assert.InRange(holes.Count, 2, 6);
        Assert.All(jig.Ring, l => Assert.Equal(holes, l.Parts.SelectMany(p => p.Dowels)));
        Assert.All(jig.Ring,
            l => Assert.All(holes, h => Assert.True(
                l.Region.Contains(h.Centre) && l.Region.DistanceToEdge(h.Centre) >= h.Diameter / 2 + 4 - 1e-4)));
    }

    [Fact]
    public void The_ring_has_its_land_all_round()
    {
        var design = Design(BuckKind.Male, 5, 12);
        var outer = design.Jig!.Ring[^1].Parts[0].Shape.Outer;

        // In a bay of the outline the land is wider; nowhere is it narrower.
        var lands = Outside(design, 0).Select(p => outer.DistanceTo(p)).ToList();
        Assert.InRange(lands.Min(), 40.5 - Wall, 40.5 + Wall);
        Assert.True(lands.Count(l => l < 40.5 + Wall) > lands.Count * 0.8);
    }

    [Fact]
    public void A_cut_above_the_part_is_refused() =>
        Assert.Contains("only 24 mm deep", Assert.Throws<SpecException>(() => Design(BuckKind.Male, 5, 24)).Message);

    [Fact]
    public void A_height_the_stock_misses_is_reported() =>
        Assert.Contains(Formed.Design(Shape, Spec(BuckKind.Male, 5, 9)).Findings,
            f => f is { Id: "jig-height-missed", Value: -3 });

    /// <summary>Left open, it is 12 mm where that is at most two thirds of the depth, and lower on a low part.</summary>
    [Theory]
    [InlineData(24, 6, 12)]
    [InlineData(18, 6, 12)]
    [InlineData(12, 6, 6)]
    [InlineData(12, 3, 6)]
    [InlineData(9, 3, 6)]
    [InlineData(6, 3, 3)]
    public void A_height_that_is_left_open_suits_the_depth(double depth, double board, double height)
    {
        var spec = Spec(BuckKind.Male, 5, 0) with { Depth = depth, Stock = [new("board", board)], Jig = new() };

        var jig = Formed.Design(Shape, spec).Jig!;

        Assert.Equal((height, height), (jig.TrimHeight, jig.Height));
    }

    [Fact]
    public void A_part_lower_than_every_board_can_not_be_cut_by_a_ring()
    {
        var spec = Spec(BuckKind.Male, 5, 0) with { Depth = 6, Jig = new() };

        Assert.Contains("but the part is only 6 mm deep",
            Assert.Throws<SpecException>(() => Formed.Design(Shape, spec)).Message);
    }

    private static readonly Region Shape = Region.FromLoops(
        [Loop.FromCorners([(new(0, 0), 0), (new(90, 0), 0.4), (new(90, 60), 0), (new(45, 45), 0), (new(0, 60), 0)])]);

    private static BuckSpec Spec(BuckKind kind, double draft, double height) =>
        Formed.Spec(kind, 24, draft, gauge: 1.2) with
        {
            Stock = [Formed.Mdf6],
            Jig = new() { TrimHeight = height },
            Corners = BuckGen.Geometry.Offsetting.CornerJoin.Round
        };

    // The lowest layer of the ring then lay round the place where its wood should be.
    [Theory]
    [InlineData(10, 12)]
    [InlineData(12, 12)]
    public void A_flange_room_that_leaves_no_land_is_refused(double land, double room)
    {
        var spec = Spec(BuckKind.Male, 5, 12);

        var refusal = Assert.Throws<SpecException>(() =>
            Formed.Design(Shape, spec with { Jig = spec.Jig! with { Land = land, FlangeRoom = room } }));

        Assert.Contains("Use less flange room or more land", refusal.Message, StringComparison.Ordinal);
    }

    private static BuckDesign Design(BuckKind kind, double draft, double height) =>
        Formed.Design(Shape, height == 15
            ? Spec(kind, draft, height) with { Stock = [Formed.Mdf6, new("board 3", 3, 2000, 2000)] }
            : Spec(kind, draft, height));

    /// <summary>
    /// Points on the part's outside, found without the offsetter: on the outline, moved out by draft and wall along the
    /// normal.
    /// </summary>
    private static IEnumerable<Vec2> Outside(BuckDesign design, double fromFlange) =>
        Moved(design, Reach(design, fromFlange) + (design.Spec.Kind == BuckKind.Male ? WallOf(design) : 0));

    private static IEnumerable<Vec2> Moved(BuckDesign design, double distance) =>
        Shape.Segments.SelectMany(s => Enumerable.Range(1, 9)
        .Select(i => s.PointAt(i / 10.0) - s.DirectionAt(i / 10.0).Left * distance))
        .Where(p => Math.Abs(Shape.DistanceToEdge(p) - Math.Abs(distance)) < 1e-6
            && (distance == 0 || Shape.Contains(p) == distance < 0));

    private static Region Inside(BuckDesign design, double fromFlange) => new PolygonOracle(Shape).Moved(
        Reach(design, fromFlange) - (design.Spec.Kind == BuckKind.Male ? 0 : WallOf(design)));

    /// <summary>How far the touching face stands outside the outline, which is to size at the face of the stack.</summary>
    private static double Reach(BuckDesign design, double fromFlange) =>
        (design.Spec.Kind == BuckKind.Male ? design.Spec.Depth - fromFlange : -fromFlange) * Math
            .Tan(design.Spec.Draft * Math.PI / 180);

    private static double WallOf(BuckDesign design) => design.Blank!.MeanThickness / Math.Cos(design.Spec.Draft * Math.PI / 180);

    /// <summary>An offset made by the geometry library alone.</summary>
    private sealed class PolygonOracle(Region region)
    {
        public Region Moved(double distance) =>
            new BuckGen.Geometry.Offsetting.PolygonOffsetter(0.001)
                .Offset(region, distance, BuckGen.Geometry.Offsetting.CornerJoin.Round);
    }
}
