using BuckGen.Design.Bucks;
using BuckGen.Intake.Catalogs;
using BuckGen.Physics.Air;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

public sealed class VentSizeTests
{
    [Fact]
    public void The_hole_is_no_wider_than_the_formed_sheet_is_thick_on_average()
    {
        // Upright walls round a 100 x 60 mm block 24 mm high on a plate of 140 x 100 x 12 mm, the 36 mm of both from the frame:
        // areal ratio (22704 + 320*24 + 480*12)/22704 = 1.592 (geometry; the reciprocal of the ratio is the mean thickness: SPE
        // Thermoforming Quarterly 24(4), 2005).
        var spec = Vented.Spec() with { Draft = 0 };
        var vents = Vented.Design(Vented.Rectangle(100, 60), spec).Vents!;
        Assert.Equal(1 + (320 * 24 + 480 * 12) / (172 * 132.0), vents.Sizing.ArealRatio, 6);
        Assert.Equal(1 / vents.Sizing.ArealRatio, vents.Sizing.FormedThickness, 9);
        Assert.Equal(0.6, vents.Diameter, 9);
    }

    [Fact]
    public void A_wider_hole_on_request_is_drilled_and_reported()
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
        var slow = Vented
            .Design(Vented.Rectangle(100, 60), spec with { Vents = spec.Vents! with { Diameter = 0.4, Spacing = 60 } });
        Assert.True(slow.Vents!.Air.RuledByFlow);
        Assert.True(slow.Vents.Spacing < 60);
        var fast = Vented
            .Design(Vented.Rectangle(100, 60), spec with { Vents = spec.Vents! with { Diameter = 1.5, Spacing = 25 } });
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

    [Fact]
    public void The_hole_goes_through_the_upper_plate_and_the_air_presses_on_all_of_it()
    {
        // The upper plate is 2 mm thick; of a thicker one the bore from below would leave 3 mm.
        var spec = Vented.Spec() with { Draft = 0, Base = new(new("board 2", 2, 2000, 2000), 20, Vented.Mdf6) };
        var vents = Vented.Design(Vented.Rectangle(100, 60), spec).Vents!;
        Assert.Equal(DrawDown.MinHoleCount(vents.Air.Volume, vents.Diameter, 2, spec.Vents!.Air), vents.Air.Needed);
        // 140 x 100 mm under 101,325 Pa outside and 33,600 Pa inside.
        Assert.Equal(0.014 * 67725, vents.BoardForce, 1e-6);
    }

    [Fact]
    public void Of_thick_sheet_the_hole_is_no_wider_than_leaves_no_mark() =>
        // 4 mm of sheet stay 2.7 mm thick; holes of more than 1.5 mm show on any.
        Assert.Equal(1.5,
            Vented.Design(Vented.Rectangle(100, 60),
                Vented.Spec() with { Draft = 0, Sheet = new() { Gauge = 4 } }).Vents!.Diameter);

    /// <summary>Holes of 1.0 mm under thin sheet: SPI Plastics Engineering Handbook; Rosato (from memory).</summary>
    [Fact]
    public void A_plastic_has_a_widest_hole_of_its_own() =>
        // 2 mm of sheet stay 1.365 mm thick.
        Assert.Equal(1.0,
            Vented.Design(Vented.Rectangle(100, 60),
                Vented.Spec() with
                {
                    Draft = 0,
                    Sheet = new() { Gauge = 2, Plastic = Catalog.BuiltIn.FindPlastic("abs") }
                }).Vents!.Diameter);
}
