using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Parts;
using BuckGen.Design.Trimming;
using BuckGen.Settings;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Parts;

/// <summary>
/// What the maker gets is the finished part: its sizes are computed here from layer sizes, cut, wall and draft by hand.
/// </summary>
[Trait("Tier", "slow")]
public class FinishedPartTests
{
    private const double Draft = 5, Gauge = 1;

    private static readonly double Slope = Math.Tan(Draft * Math.PI / 180);

    /// <summary>The fault that the specimen box had: cut 24 mm above the flange it was 24 mm deep and 4 mm too small.</summary>
    [Theory]
    [InlineData(BuckKind.Male)]
    [InlineData(BuckKind.Female)]
    public void A_part_ordered_48_mm_deep_is_48_mm_deep_after_the_ring_has_cut_it(BuckKind kind)
    {
        var design = Design(kind, new() { Side = PartSide.Inside });

        var part = design.Part!;
        Assert.Equal(TrimTool.Ring, part.Cut.Tool);
        Assert.Equal(48 + part.Order!.FromBoards, part.InsideDepth, 0.06);
        Assert.InRange(part.Order.FromBoards, -0.5, 0.5);
        Assert.Equal(120, part.Mouth.Inside.Bounds.Width, 0.02);
        Assert.Equal(80, part.Mouth.Inside.Bounds.Height, 0.02);
        Assert.DoesNotContain(design.Findings, f => f.Id is "part-too-small" or "part-cut-short");
    }

    /// <summary>From the layers: a male buck's lowest layer is cut to the outline at the flange.</summary>
    [Fact]
    public void The_mouth_of_a_male_part_is_the_buck_where_the_ring_cuts()
    {
        var design = Design(BuckKind.Male, new());

        Assert.Equal(72, design.Plan.Depth, 1e-9);
        var atFlange = design.Layers[0].Region.Bounds.Width;
        var cut = design.Jig!.Height;
        Assert.Equal(24, cut, 1e-9);
        Assert.Equal(120, atFlange - 2 * cut * Slope, 1e-4);
        // At the face it has lost the draft over the 48 mm of its depth.
        Assert.Equal(120 - 2 * 48 * Slope, design.Part!.Face.Inside.Bounds.Width, 1e-4);
    }

    /// <summary>Both kinds, both sides, both ends: the ordered size comes out where it was ordered.</summary>
    [Theory]
    [MemberData(nameof(Orders))]
    public void The_order_is_met(BuckKind kind, PartSide side, PartEnd at, double cutHeight)
    {
        var spec = Spec(kind) with
        {
            Jig = null,
            Part = new() { Side = side, At = at, CutHeight = cutHeight > 0 ? cutHeight : null },
        };
        var part = Formed.Design(Formed.Rectangle(120, 80), spec).Part!;

        var order = part.Order!;
        // The wall is taken from the outline as drawn, and the boards come in whole millimetres.
        Assert.Equal(0, order.WidthMiss, 0.05);
        Assert.Equal(0, order.HeightMiss, 0.05);
        Assert.InRange(order.DepthMiss, -0.55, 0.55);
        Assert.Equal(order.FromBoards, order.DepthMiss, 0.05);
        Assert.True(part.Mouth.Outside.Bounds.Width > part.Mouth.Inside.Bounds.Width);
        Assert.True(part.OutsideDepth > part.InsideDepth);
        Assert.True(part.Mouth.Inside.Bounds.Width > part.Face.Inside.Bounds.Width);
    }

    public static TheoryData<BuckKind, PartSide, PartEnd, double> Orders()
    {
        var orders = new TheoryData<BuckKind, PartSide, PartEnd, double>();
        foreach (var kind in Enum.GetValues<BuckKind>())
            foreach (var side in Enum.GetValues<PartSide>())
                foreach (var at in Enum.GetValues<PartEnd>())
                    foreach (var cut in (double[])[0, 6.5])
                        orders.Add(kind, side, at, cut);
        return orders;
    }

    /// <summary>
    /// Volume of a frustum of a rectangle, h/3 times the areas of both ends and their mean, here by Simpson's rule, which is
    /// exact for it (definition).
    /// </summary>
    [Fact]
    public void It_holds_the_volume_of_its_inside()
    {
        var part = Design(BuckKind.Male, new()).Part!;

        double Area(double down) => (120 - 2 * down * Slope) * (80 - 2 * down * Slope);
        var volume = (Area(0) + 4 * Area(24) + Area(48)) * 48 / 6;
        Assert.Equal(volume, (part.Volume.Low + part.Volume.High) / 2, volume * 1e-3);
        Assert.InRange(volume, part.Volume.Low, part.Volume.High);
    }

    [Fact]
    public void A_part_shrinks_to_the_ordered_size()
    {
        var design = Formed.Design(Formed.Rectangle(120, 80), Spec(BuckKind.Male) with { Shrinkage = 2, Part = new() });

        var part = design.Part!;
        Assert.Equal(120, part.Mouth.Inside.Bounds.Width, 0.02);
        Assert.Equal(0, part.Order!.DepthMiss - part.Order.FromBoards, 1e-6);
        // The buck itself is larger by the shrinkage.
        Assert.Equal((48 + design.Jig!.Height) / 0.98, design.Plan.Depth - design.Plan.Miss, 1e-6);
    }

    [Fact]
    public void A_drawing_is_scaled_to_the_ordered_size()
    {
        var part = Design(BuckKind.Male, new() { Size = new(60, 40) }).Part!;

        Assert.Equal(60, part.Mouth.Inside.Bounds.Width, 0.02);
        Assert.Equal(40, part.Mouth.Inside.Bounds.Height, 0.02);
    }

    /// <summary>A drawing of 120 x 80.1 mm can't be 120 x 80: the misses are counted from the order.</summary>
    [Fact]
    public void A_drawing_a_hair_off_the_ordered_proportions_misses_the_order()
    {
        var spec = Spec(BuckKind.Male) with { Part = new() { Size = new(120, 80) } };
        var design = Formed.Design(Formed.Rectangle(120, 80.1), spec);

        var order = design.Part!.Order!;
        Assert.Equal((120, 80), (order.Width, order.Height));
        Assert.Equal(-0.075, order.WidthMiss, 0.002);
        Assert.Equal(0.05, order.HeightMiss, 0.002);
    }

    [Fact]
    public void Ordered_proportions_that_are_not_drawn_are_refused() =>
        Assert.Contains("order that size, or draw it in the ordered proportions",
            Assert.Throws<SpecException>(() => Design(BuckKind.Male, new() { Size = new(60, 50) })).Message);

    /// <summary>Boards of 25 mm miss 72 mm by 3 mm: the part comes out too deep or too shallow.</summary>
    [Fact]
    public void A_part_shallower_than_ordered_is_an_error()
    {
        var spec = Spec(BuckKind.Male) with
        {
            Part = new() { CutHeight = 5 },
            Jig = null,
            Stock = [new("board 25", 25, 2000, 2000)],
        };

        var design = Formed.Design(Formed.Rectangle(120, 80), spec);

        var finding = Assert.Single(design.Findings, f => f.Id == "part-too-small");
        Assert.Equal(50 - 53, finding.Value!.Value, 1e-6);
    }

    [Fact]
    public void A_cut_that_shortens_a_buck_of_the_wanted_depth_is_reported()
    {
        var design = Formed.Design(Formed.Rectangle(120, 80), Spec(BuckKind.Male) with { OutlineAt = OutlineAt.Base });

        Assert.Equal(24, Assert.Single(design.Findings, f => f.Id == "part-cut-short").Value!.Value, 1e-6);
        Assert.Equal(120 - 2 * 24 * Slope, design.Part!.Mouth.Inside.Bounds.Width, 1e-4);
    }

    /// <summary>
    /// Boards of 11.9 and 3.8 mm: with a ring of three thin boards five thick ones make the buck. With a ring of two thick boards
    /// it would need 19 thin ones to come within half a millimetre.
    /// </summary>
    [Fact]
    public void A_ring_left_open_is_as_high_as_suits_the_boards()
    {
        var spec = Spec(BuckKind.Male) with
        {
            Stock = [new("board 11.9", 11.9, 2000, 2000), new("board 3.8", 3.8, 2000, 2000)],
            Shrinkage = 0.45,
            Part = new(),
        };

        var open = Formed.Design(Formed.Rectangle(120, 80), spec with { Jig = new() });
        var two = Formed.Design(Formed.Rectangle(120, 80), spec with { Jig = new() { TrimHeight = 23.8 } });

        Assert.Equal(11.4, open.Jig!.Height, 1e-9);
        Assert.Equal(3, open.Jig.Ring.Length);
        Assert.Equal(5, open.Plan.LayerStocks.Length);
        Assert.Equal(19, two.Plan.LayerStocks.Length);
        Assert.Equal(12, Formed.Design(Formed.Rectangle(120, 80), spec with { Jig = new(), Part = null }).Jig!.TrimHeight);
    }

    [Fact]
    public void Ring_and_cut_height_together_are_refused() =>
        Assert.Contains("cut by the ring of the jig",
            Assert.Throws<SpecException>(() => Design(BuckKind.Male, new() { CutHeight = 5 })).Message);

    [Fact]
    public void With_a_prediction_the_wall_is_the_predicted_one()
    {
        var spec = Spec(BuckKind.Male) with { Part = new() { Side = PartSide.Outside }, Prediction = new() };

        var part = Formed.Design(Formed.Rectangle(120, 80), spec).Part!;

        Assert.Equal(BuckGen.Design.Prediction.WallBasis.Predicted, part.Wall.Basis);
        // The sheet touches the face first, and it stays thickest there.
        Assert.True(part.Wall.Face > part.Mouth.Wall.Mean);
        Assert.InRange(part.Mouth.Wall.Mean, part.Mouth.Wall.Min, part.Mouth.Wall.Max);
        Assert.Equal(0, part.Order!.WidthMiss, 0.1);
        Assert.Equal(part.Order.FromBoards, part.Order.DepthMiss, 0.1);
    }

    private static BuckDesign Design(BuckKind kind, PartSpec part) =>
        Formed.Design(Formed.Rectangle(120, 80), Spec(kind) with { Part = part });

    private static BuckGen.Design.Specs.BuckSpec Spec(BuckKind kind) => Formed.Spec(kind, 48, Draft, Gauge) with
    {
        DepthTolerance = 0.5,
        Jig = new() { TrimHeight = 24 },
    };
}
