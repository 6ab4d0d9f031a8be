using BuckGen.Physics.Heat;
using CsCheck;
using Xunit;

namespace BuckGen.Physics.Tests.Heat;

public class HeatingTests
{
    /// <summary>Like most plastics: 0.2 W/(m·K), 1100 kg/m³, 1700 J/(kg·K); round numbers, no source.</summary>
    private static readonly SheetMaterial Plastic = new(0.2, 1100, 1700);

    private static readonly SheetFace Heater = SheetFace.Heated(400, 0.8, 10, 80);

    /// <summary>
    /// A slab that takes a constant flux at one face and none at the other: Carslaw and Jaeger, 2nd edition, section 3.8 (from
    /// memory).
    /// </summary>
    [Theory]
    [InlineData(5)]
    [InlineData(20)]
    [InlineData(120)]
    public void Constant_flux_into_one_face_follows_the_series(double seconds)
    {
        var (thickness, flux) = (0.003, 5000.0);
        var diffusivity = Plastic.Diffusivity / 1e6;
        double Rise(double x)
        {
            var series = Enumerable.Range(1, 200).Sum(n => (n % 2 == 0 ? 1 : -1) / (double)(n * n)
                * Math.Exp(-diffusivity * Math.Pow(n * Math.PI / thickness, 2) * seconds)
                * Math.Cos(n * Math.PI * x / thickness));
            return flux * seconds / (Plastic.Density * Plastic.HeatCapacity * thickness)
                + flux * thickness / Plastic.Conductivity
                * ((3 * x * x - thickness * thickness) / (6 * thickness * thickness) - 2 / (Math.PI * Math.PI) * series);
        }

        var warm = SheetHeating.After(new(3, Plastic), new() { Flux = flux }, SheetFace.Insulated, seconds);

        Assert.Equal(20 + Rise(thickness), warm.First, 0.03);
        Assert.Equal(20 + Rise(thickness / 2), warm.Core, 0.03);
        Assert.Equal(20 + Rise(0), warm.Second, 0.03);
        Assert.Equal(20 + flux * seconds / (Plastic.Density * Plastic.HeatCapacity * thickness), warm.Mean, 1e-6);
    }

    /// <summary>
    /// A foil so thin that it has one temperature, warmed by radiation alone: the closed form by separation of variables
    /// (Incropera and DeWitt, lumped capacitance with radiation, from memory).
    /// </summary>
    [Fact]
    public void A_thin_foil_below_a_heater_warms_as_the_closed_form_says()
    {
        var (heater, start, wanted) = (400 + 273.15, 20 + 273.15, 150 + 273.15);
        double Part(double t) => Math.Log((heater + t) / (heater - t)) + 2 * Math.Atan(t / heater);
        var seconds =
            Plastic.Density * Plastic.HeatCapacity * 0.0001 / (4 * 2 * 0.8 * 5.670374e-8 * Math.Pow(heater, 3))
            * (Part(wanted) - Part(start));
        var face = SheetFace.Heated(400, 0.8, 0, 20);

        var result = SheetHeating.Until(new(0.1, Plastic), face, face, 150, SheetPlace.Mean);

        // The foil is not wholly of one temperature: its Biot number is about 0.01.
        Assert.Equal(seconds, result.Seconds!.Value, seconds * 0.002);
    }

    [Fact]
    public void A_thin_foil_in_air_cools_by_an_exponential()
    {
        var face = SheetFace.InAir(10, 20);
        var seconds = Plastic.Density * Plastic.HeatCapacity * 0.0001 / (2 * 10) * Math.Log(130 / 30.0);

        Assert.Equal(seconds, SheetCooling.Until(new(0.1, Plastic), face, face, 150, 50, SheetPlace.Mean).Seconds!.Value,
            seconds * 0.002);
    }

    [Fact]
    public void What_enters_by_the_faces_is_what_warms_the_sheet()
    {
        var (first, second) = (Heater, SheetFace.InAir(8, 30));
        var moments = new SheetConduction(new(4, Plastic), first, second, stepTolerance: 0.0005).Integrate(20, _ => 1, 120);

        var entered = moments.Zip(moments.Skip(1)).Sum(m => (m.Second.Seconds - m.First.Seconds) / 2
            * (Flux(m.First.Temperatures) + Flux(m.Second.Temperatures)));

        var held = Plastic.Density * Plastic.HeatCapacity * 0.004 * (moments[^1].Temperatures.Mean - 20);
        Assert.Equal(held, entered, held * 1e-4);

        double Flux(SheetTemperatures t) => first.FluxInto(t.First) + second.FluxInto(t.Second);
    }

    [Fact]
    public void A_sheet_at_rest_passes_on_what_it_takes_in()
    {
        var second = SheetFace.InAir(8, 30);

        var result = SheetHeating.Until(new(4, Plastic), Heater, second, 1000);

        Assert.Equal((HeatOutcome.Never, null as double?), (result.Outcome, result.Seconds));
        var rest = result.Steady!.Value;
        Assert.Equal(-second.FluxInto(rest.Second), Heater.FluxInto(rest.First), 1e-6);
        Assert.Equal(Plastic.Conductivity * (rest.First - rest.Second) / 0.004, Heater.FluxInto(rest.First), 1e-6);
        // Followed in time it comes to rest just there.
        Assert.Equal(rest.First, result.End.First, 0.0011);
        Assert.Equal(rest.Second, result.End.Second, 0.0011);
    }

    [Fact]
    public void A_heater_too_cool_never_does_it_and_a_little_more_does()
    {
        var face = SheetFace.InAir(10, 140);

        Assert.Equal(HeatOutcome.Never, SheetHeating.Until(new(2, Plastic), face, face, 140).Outcome);
        Assert.Equal(140, SheetHeating.Until(new(2, Plastic), face, face, 140).Steady!.Value.Coldest, 1e-6);
        Assert.Equal(HeatOutcome.Reached, SheetHeating.Until(new(2, Plastic), face, face, 139.9).Outcome);
        Assert.Equal(HeatOutcome.TooSlow,
            SheetHeating.Until(new(200, Plastic), SheetFace.InAir(0.1, 140), SheetFace.Insulated, 139.9).Outcome);
        Assert.Equal(HeatOutcome.Never,
            SheetHeating.Until(new(2, Plastic), SheetFace.Insulated, SheetFace.Insulated, 30).Outcome);
        Assert.Equal(HeatOutcome.Reached,
            SheetHeating.Until(new(2, Plastic), SheetFace.Insulated, SheetFace.Insulated, 20).Outcome);
        Assert.Null(SheetHeating.Until(new(2, Plastic), new() { Flux = 1000 }, SheetFace.Insulated, 30).Steady);
    }

    [Fact]
    public void A_face_that_is_warm_for_a_while_only_is_noticed()
    {
        // The heated face warms before the cold of the other reaches it, and in the end rests colder than it began.
        var (heated, cold) = (new SheetFace { Flux = 1000 }, SheetFace.OnBuck(5000, 0));
        var rest = SheetHeating.Until(new(5, Plastic), heated, cold, 103, SheetPlace.First, start: 100);

        Assert.Equal(HeatOutcome.Reached, rest.Outcome);
        Assert.True(rest.Steady!.Value.First < 100);
    }

    [Fact]
    public void A_sheet_warm_enough_already_takes_no_time()
    {
        var result = SheetHeating.Until(new(2, Plastic), Heater, Heater, 120, start: 130);

        Assert.Equal((HeatOutcome.Reached, 0.0, 130.0), (result.Outcome, result.Seconds, result.End.Core));
        Assert.Single(result.Samples);
    }

    [Fact]
    public void Heating_from_one_side_takes_longer_and_leaves_the_faces_apart()
    {
        var sheet = new FlatSheet(3, Plastic);
        var both = SheetHeating.Until(sheet, Heater, Heater, 140);
        var one = SheetHeating.Until(sheet, Heater, SheetFace.InAir(8, 40), 140);

        // With one heater at least twice as long: half the heat comes in, and some goes out again.
        Assert.True(one.Seconds > 2 * both.Seconds);
        Assert.Equal(one.End.Coldest, one.End.Second, 1e-9);
        Assert.True(one.End.First - one.End.Second > both.End.First - both.End.Core);
    }

    [Fact]
    public void Thicker_sheet_takes_longer_hotter_heaters_less() =>
        Gen.Select(Gen.Double[0.3, 8], Gen.Double[1.05, 2], Gen.Double[250, 600], Gen.Double[0, 20])
        .Sample((thickness, factor, heater, film) =>
        {
            double Time(double mm, double degrees)
            {
                var face = SheetFace.Heated(degrees, 0.85, film, 100);
                return SheetHeating.Until(new(mm, Plastic), face, face, 140).Seconds!.Value;
            }

            var time = Time(thickness, heater);
            Assert.True(Time(thickness * factor, heater) > time * factor * 0.999);
            Assert.True(Time(thickness * factor, heater) < time * factor * factor * 1.001);
            Assert.True(Time(thickness, heater * 1.05) < time);
        }, iter: 20);

    [Fact]
    public void Time_grows_with_the_thickness_of_foil_and_with_its_square_in_thick_sheet()
    {
        double Ratio(double thickness, double film)
        {
            var face = SheetFace.InAir(film, 180);
            return SheetHeating.Until(new(2 * thickness, Plastic), face, face, 140).Seconds!.Value
                / SheetHeating.Until(new(thickness, Plastic), face, face, 140).Seconds!.Value;
        }

        Assert.Equal(2, Ratio(0.05, 10), 0.01);
        Assert.Equal(4, Ratio(10, 20_000), 0.01);
    }

    [Fact]
    public void The_moments_run_evenly_to_the_end()
    {
        var result = SheetHeating.Until(new(3, Plastic), Heater, Heater, 140);

        Assert.Equal(21, result.Samples.Length);
        Assert.All(result.Samples, (m, i) => Assert.Equal(result.Seconds!.Value * i / 20, m.Seconds, 1e-9));
        Assert.Equal((20.0, result.End), (result.Samples[0].Temperatures.Core, result.Samples[^1].Temperatures));
    }

    [Fact]
    public void Grey_faces_see_each_other_by_the_handbooks_formula()
    {
        // 1/(1/0.9 + 1/0.8 - 1), and black ones by the share of the view alone.
        Assert.Equal(1 / (1 / 0.9 + 1 / 0.8 - 1), SheetFace.EffectiveEmissivity(0.9, 0.8), 1e-12);
        Assert.Equal(0.6, SheetFace.EffectiveEmissivity(1, 1, 0.6), 1e-12);
        // 1000 W/(m²) between black walls at 364.41 K and absolute zero: σ·T⁴ by hand.
        Assert.Equal(1000, SheetFace.Heated(91.26, 1, 0, 0).FluxInto(-273.15), 0.5);
    }

    [Fact]
    public void Numbers_out_of_range_are_refused_by_name()
    {
        Assert.Contains("thickness of the sheet is 0 mm", Fault(() => SheetHeating.Until(new(0, Plastic), Heater, Heater, 140)));
        Assert.Contains("emissivity is 1.2",
            Fault(() => SheetHeating.Until(new(1, Plastic), Heater with { Emissivity = 1.2 }, Heater, 140)));
        Assert.Contains("heat capacity is 1.7 J",
            Fault(() => SheetHeating.Until(new(1, Plastic with { HeatCapacity = 1.7 }), Heater, Heater, 140)));
        Assert.Contains("wanted temperature is NaN",
            Fault(() => SheetHeating.Until(new(1, Plastic), Heater, Heater, double.NaN)));
        Assert.Contains("time is -1 s", Fault(() => SheetHeating.After(new(1, Plastic), Heater, Heater, -1)));
    }

    private static string Fault(Func<object> action) => Assert.Throws<ArgumentOutOfRangeException>(action).Message;
}
