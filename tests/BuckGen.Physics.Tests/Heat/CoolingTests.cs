using BuckGen.Physics.Heat;
using Xunit;

namespace BuckGen.Physics.Tests.Heat;

public class CoolingTests
{
    private static readonly FlatSheet Sheet = new(2, new(0.2, 1100, 1700));

    [Fact]
    public void A_perfect_contact_cools_by_the_series_of_a_wall_with_cold_faces()
    {
        // One face suddenly at the buck's 40 °C, the other insulated: the hottest place is the insulated face, first term 4/π.
        var result = SheetCooling.Until(Sheet, SheetFace.OnBuck(100_000, 40), SheetFace.Insulated, 150, 80);

        var diffusivity = Sheet.Material.Diffusivity;
        var seconds = Math.Log(4 / Math.PI * 110 / 40) * Math.Pow(2 * 2 / Math.PI, 2) / diffusivity;
        Assert.Equal(seconds, result.Seconds!.Value, seconds * 0.005);
        Assert.Equal(result.End.Hottest, result.End.Second, 1e-9);
    }

    [Fact]
    public void The_mean_is_cold_before_the_hottest_place_is()
    {
        var (buck, air) = (SheetFace.OnBuck(300, 40), SheetFace.InAir(15, 20));

        var mean = SheetCooling.Until(Sheet, buck, air, 150, 80, SheetPlace.Mean).Seconds;
        var hottest = SheetCooling.Until(Sheet, buck, air, 150, 80).Seconds;

        Assert.True(mean < hottest);
    }

    [Fact]
    public void A_buck_hotter_than_the_set_temperature_never_sets_the_sheet()
    {
        var result = SheetCooling.Until(Sheet, SheetFace.OnBuck(300, 90), SheetFace.InAir(5, 20), 150, 80);

        Assert.Equal(HeatOutcome.Never, result.Outcome);
        Assert.InRange(result.Steady!.Value.Hottest, 80, 90);
    }

    [Fact]
    public void Better_contact_or_a_colder_buck_is_quicker()
    {
        double Time(double conductance, double buck) =>
            SheetCooling.Until(Sheet, SheetFace.OnBuck(conductance, buck), SheetFace.InAir(10, 20), 150, 80).Seconds!.Value;

        Assert.True(Time(500, 40) < Time(200, 40));
        Assert.True(Time(200, 30) < Time(200, 40));
    }
}
