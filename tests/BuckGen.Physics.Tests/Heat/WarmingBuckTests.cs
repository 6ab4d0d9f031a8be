using BuckGen.Physics.Heat;
using Xunit;

namespace BuckGen.Physics.Tests.Heat;

/// <summary>A sheet on a body that takes up its heat.</summary>
public class WarmingBuckTests
{
    private static readonly SheetMaterial Plastic = new(0.205, 1270, 1500), Wood = new(0.14, 760, 1600);

    /// <summary>
    /// Two bodies in perfect contact, thick enough that nothing has come through: both faces are at once at
    /// (e1 T1 + e2 T2) / (e1 + e2), with e the root of conductivity, density and heat capacity (Carslaw and Jaeger; Incropera and
    /// DeWitt; from memory).
    /// </summary>
    [Theory]
    [InlineData(0.14, 760, 1600)]
    [InlineData(0.05, 300, 1200)]
    [InlineData(15, 7900, 480)]
    public void Thick_bodies_meet_at_the_contact_temperature(double conductivity, double density, double capacity)
    {
        SheetMaterial under = new(conductivity, density, capacity);
        var conduction = new SheetConduction(
            new(60, Plastic), new SheetBacking(new(200, under), 1_000_000, SheetFace.Insulated), SheetFace.Insulated, 240, 0.01);
        double Effusivity(SheetMaterial m) => Math.Sqrt(m.Conductivity * m.Density * m.HeatCapacity);
        var (e1, e2) = (Effusivity(Plastic), Effusivity(under));

        var (states, end) = conduction.Integrate(
            conduction.Grid.Place(145, Enumerable.Repeat(45.0, conduction.Grid.FirstOfSheet)), _ => 1, 20);

        var contact = (e1 * 145 + e2 * 45) / (e1 + e2);
        Assert.Equal(contact, states[^1].Temperatures.First, 0.1);
        Assert.Equal(contact, end[conduction.Grid.FirstOfSheet - 1], 0.1);
        Assert.Equal((145, 45), (Math.Round(end[^1], 6), Math.Round(end[0], 6)));
    }

    [Fact]
    public void What_the_sheet_loses_body_and_air_gain()
    {
        double Lost(SheetFace air, SheetFace far, out double gained)
        {
            var conduction = new SheetConduction(new(3, Plastic), new SheetBacking(new(40, Wood), 200, far), air, 120, 0.001);
            var grid = conduction.Grid;
            var begin = grid.Place(145, Enumerable.Repeat(45.0, grid.FirstOfSheet));
            var (states, end) = conduction.Integrate(begin, _ => 1, 120);
            double Heat(int from, int to) => Enumerable.Range(from, to - from).Sum(i => grid.Capacity[i] * (end[i] - begin[i]));
            // The trapezoidal rule over the steps.
            var intoAir = states.Zip(states.Skip(1)).Sum(s => -(s.Second.Seconds - s.First.Seconds) / 2
                * (air.FluxInto(s.First.Temperatures.Second) + air.FluxInto(s.Second.Temperatures.Second)));
            gained = Heat(0, grid.FirstOfSheet) + intoAir;
            return -Heat(grid.FirstOfSheet, end.Length);
        }

        var alone = Lost(SheetFace.Insulated, SheetFace.Insulated, out var body);
        Assert.InRange(alone, 1e5, 4e5);
        Assert.Equal(alone, body, alone * 1e-9);
        var inAir = Lost(SheetFace.InAir(30, 20), SheetFace.Insulated, out var both);
        Assert.True(inAir > 1.1 * alone);
        Assert.Equal(inAir, both, inAir * 1e-3);
    }

    [Theory]
    [InlineData(1, 60, 200, 8)]
    [InlineData(3, 60, 200, 8)]
    [InlineData(3, 12, 100, 15)]
    [InlineData(2, 30, 500, 40)]
    public void An_explicit_scheme_gives_the_same_times(double gauge, double thickness, double contact, double film)
    {
        FlatSheet sheet = new(gauge, Plastic);
        SheetBacking buck = new(new(thickness, Wood), contact, SheetFace.InAir(5, 20));

        var result = SheetCooling.Until(sheet, buck, SheetFace.InAir(film, 20), 145, 77, 45);

        var other = ExplicitTwoLayers.SecondsUntil(sheet, buck, film, 20, 5, 145, 45, 77, cell: 0.1);
        Assert.Equal(other, result.Seconds!.Value, other * 0.005);
    }

    [Fact]
    public void A_body_that_conducts_very_well_keeps_its_temperature()
    {
        FlatSheet sheet = new(3, Plastic);
        var air = SheetFace.InAir(8, 20);
        SheetBacking massive = new(new(200, new(500, 25_000, 10_000)), 200, SheetFace.Insulated);

        var warming = SheetCooling.Until(sheet, massive, air, 145, 77, 45).Seconds!.Value;
        var fixedTemperature = SheetCooling.Until(sheet, SheetFace.OnBuck(200, 45), air, 145, 77).Seconds!.Value;

        Assert.Equal(fixedTemperature, warming, fixedTemperature * 0.003);
        Assert.True(SheetCooling.Until(sheet, massive with { Body = new(60, Wood) }, air, 145, 77, 45).Seconds
            > 1.5 * fixedTemperature);
    }

    [Fact]
    public void In_the_end_as_much_heat_comes_through_the_body_as_leaves_the_sheet()
    {
        // 90 °C under the body and 20 °C over the sheet: resistances of film, body, contact, sheet and film in a row.
        SheetBacking buck = new(new(20, Wood), 200, SheetFace.InAir(50, 90));
        double[] resistances = [1 / 50.0, 0.020 / 0.14, 1 / 200.0, 0.003 / 0.205, 1 / 10.0];

        var result = SheetCooling.Until(new(3, Plastic), buck, SheetFace.InAir(10, 20), 145, 30, 45);

        double After(int count) => 90 - 70 * resistances.Take(count).Sum() / resistances.Sum();
        Assert.Equal(HeatOutcome.Never, result.Outcome);
        Assert.Equal((After(3), After(4)), (result.Steady!.Value.First, result.Steady.Value.Second), new Near(1e-6));
        Assert.Equal((After(3), After(4)), (result.End.First, result.End.Second), new Near(0.01));
    }

    [Fact]
    public void Without_a_way_out_sheet_and_body_share_their_heat()
    {
        SheetBacking buck = new(new(3, Plastic), 200, SheetFace.Insulated);

        var result = SheetCooling.Until(new(1, Plastic), buck, SheetFace.Insulated, 145, 60, 45);

        Assert.Equal(HeatOutcome.Never, result.Outcome);
        Assert.Equal(70, result.Steady!.Value.Mean, 1e-9);
        Assert.Equal(70, result.End.Mean, 1e-3);
    }

    [Fact]
    public void Numbers_out_of_range_are_refused()
    {
        var fine = new SheetBacking(new(60, Wood), 200, SheetFace.Insulated);
        double? Time(SheetBacking buck, double start) =>
            SheetCooling.Until(new(1, Plastic), buck, SheetFace.Insulated, 145, 77, start).Seconds;

        Assert.NotNull(Time(fine, 45));
        Assert.Contains("contact", Assert.Throws<ArgumentOutOfRangeException>(() => Time(fine with { Contact = 0 }, 45)).Message);
        Assert.Contains("buck", Assert.Throws<ArgumentOutOfRangeException>(() => Time(fine, 2000)).Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => Time(fine with { Body = new(300, Wood) }, 45));
        Assert.Throws<ArgumentOutOfRangeException>(() => Time(fine with { FarFace = SheetFace.InAir(-1, 20) }, 45));
    }

    private sealed class Near(double tolerance) : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) a, (double, double) b) =>
            Math.Abs(a.Item1 - b.Item1) <= tolerance && Math.Abs(a.Item2 - b.Item2) <= tolerance;

        public int GetHashCode((double, double) pair) => 0;
    }
}
