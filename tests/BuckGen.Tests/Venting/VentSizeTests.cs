using BuckGen.Bucks;
using Xunit;

namespace BuckGen.Tests.Venting;

public sealed class VentSizeTests
{
    [Fact]
    public void The_hole_is_no_wider_than_the_formed_sheet_is_thick_on_average()
    {
        // Upright walls round a 100 x 60 mm block 24 mm high, 25 mm from the frame: areal ratio (16500 + 320*24)/16500 = 1.465
        // (geometry; the reciprocal of the ratio is the mean thickness: SPE Thermoforming Quarterly 24(4), 2005).
        var spec = Vented.Spec() with { Draft = 0 };
        var vents = Vented.Design(Vented.Rectangle(100, 60), spec).Vents!;
        Assert.Equal(1 + 320 * 24 / (150 * 110.0), vents.Sizing.ArealRatio, 6);
        Assert.Equal(1 / vents.Sizing.ArealRatio, vents.Sizing.FormedThickness, 9);
        Assert.Equal(0.65, vents.Diameter, 9);
    }

    [Fact]
    public void A_wider_hole_on_request_is_drilled_and_told_of()
    {
        var spec = Vented.Spec();
        var design = Vented.Design(Vented.Rectangle(100, 60), spec with { Vents = spec.Vents! with { Diameter = 1.2 } });
        Assert.Equal(1.2, design.Vents!.Diameter);
        Assert.Contains(design.Findings, f => f.Id == "vents-too-wide");
    }

    [Fact]
    public void More_vents_are_placed_when_the_shape_alone_lets_the_air_out_too_slowly()
    {
        var spec = Vented.Spec(depth: 48);
        var slow = Vented.Design(Vented.Rectangle(100, 60), spec with { Vents = spec.Vents! with { Diameter = 0.4, Spacing = 60 } });
        Assert.True(slow.Vents!.Air.RuledByFlow);
        Assert.True(slow.Vents.Spacing < 60);
        var fast = Vented.Design(Vented.Rectangle(100, 60), spec with { Vents = spec.Vents! with { Diameter = 1.5, Spacing = 25 } });
        Assert.False(fast.Vents!.Air.RuledByFlow);
    }

    [Fact]
    public void The_trapped_air_is_the_box_over_the_plate_less_the_wood()
    {
        var vents = Vented.Design(Vented.Rectangle(100, 60), Vented.Spec() with { Draft = 0 }).Vents!;
        Assert.Equal((140 * 100 - 100 * 60) * 24 / 1e6, vents.Air.Volume, 9);
        var cavity = Vented.Design(Vented.Rectangle(100, 60), Vented.Spec(BuckKind.Female) with { Draft = 0 }).Vents!;
        Assert.Equal(100 * 60 * 24 / 1e6, cavity.Air.Volume, 9);
    }
}
