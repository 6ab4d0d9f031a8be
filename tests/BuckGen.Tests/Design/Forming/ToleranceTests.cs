using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Physics.Heat;
using Xunit;

namespace BuckGen.Tests.Design.Forming;

/// <summary>What a part may be off, against a former's published page, and how it grows.</summary>
public class ToleranceTests
{
    /// <summary>
    /// Source: Profile Plastics, thermoforming dimensional tolerances: so much for the first 300 mm, 0.025 mm more for each 25
    /// mm.
    /// </summary>
    [Fact]
    public void Trimmed_dimensions_and_holes_as_the_page_has_them()
    {
        Assert.Equal(1.05, PartTolerance.Trimmed.At(600), 1e-9);
        Assert.Equal(0.70, PartTolerance.TrimmedByMachine.At(500), 1e-9);
        Assert.Equal(0.65, PartTolerance.HoleSpacing.At(400), 1e-9);
        Assert.Equal(0.75, PartTolerance.Trimmed.At(299), 1e-9);
    }

    /// <summary>Source: Mayfield Plastics, tolerances: a 20 in part moves 0.020 in over 20 degrees F.</summary>
    [Fact]
    public void A_warm_part_grows()
    {
        Assert.Equal(0.020, ThermalGrowth.LengthChange(20, 5e-5, 20), 1e-12);
        // The same in millimetres and degrees C: 9e-5 per degree.
        Assert.Equal(0.020 * 25.4, ThermalGrowth.LengthChange(508, 9e-5, 20 / 1.8), 1e-9);
    }

    [Fact]
    public void A_design_tells_the_tolerance_of_its_largest_dimension()
    {
        var sizing = Formed.Design(Formed.Rectangle(600, 100), Formed.Spec(BuckKind.Female, 20, 2)).Sizing;

        Assert.Equal((1.5, 1.05), (Math.Round(sizing.FormedTolerance, 9), Math.Round(sizing.TrimmedTolerance, 9)));
    }
}
