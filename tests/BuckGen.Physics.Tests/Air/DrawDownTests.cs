using BuckGen.Physics.Air;
using CsCheck;
using Xunit;

namespace BuckGen.Physics.Tests.Air;

[Trait("Tier", "slow")]
public class DrawDownTests
{
    private static readonly VentHoles[] Twenty = [new(1, 0, 20)];

    private static readonly AirFlowSpec Deep = new() { ReservoirPressure = 10_000, SweptShare = 1 };

    /// <summary>Case V02: 20 sharp holes of 1 mm, 1 L, choked. Source: V/Q and V/Q·ln(p1/p2) with Q = 2.028 L/s.</summary>
    [Fact]
    public void Twenty_choked_holes_and_one_litre()
    {
        var result = DrawDown.Simulate(1, Twenty, Deep);

        Assert.Equal(0.493, result.Seconds!.Value, 0.493 * 0.01);
        Assert.Equal(0.348, result.RigidSeconds!.Value, 0.348 * 0.01);
        Assert.Equal(1, result.ChokedShare, 1e-9);
        Assert.Equal(AirBottleneck.Holes, result.Bottleneck);
        Assert.Equal(2.028, new HoleFlow(Twenty, Deep).VolumeFlow(0), 0.002);
    }

    [Fact]
    public void The_choked_times_are_those_of_the_closed_forms()
    {
        var drawn = new HoleFlow(Twenty, Deep).VolumeFlow(0);

        var result = DrawDown.Simulate(1, Twenty, Deep);

        Assert.Equal(1 / drawn, result.Seconds!.Value, 1e-8);
        // Choked down to 10 000/0.5283 = 18 900 Pa under the sheet, so all the way.
        Assert.Equal(Math.Log(101_325 / 50_000.0) / drawn, result.RigidSeconds!.Value, 1e-5);
    }

    [Fact]
    public void The_moments_run_evenly_from_the_whole_volume_to_none()
    {
        var result = DrawDown.Simulate(1, Twenty, Deep with { ReservoirVolume = 4 });

        Assert.Equal(21, result.Samples.Length);
        Assert.All(result.Samples, (m, i) =>
        {
            Assert.Equal(result.Seconds!.Value * i / 20, m.Seconds, 1e-9);
            Assert.Equal(1 - i / 20.0, m.Volume, 1e-6);
            // All air swept at ambient pressure is added to the tank's, at even temperature.
            Assert.Equal(10_000 + 101_325 * (i / 20.0) / 4, m.ReservoirPressure, 0.1);
        });
    }

    [Fact]
    public void A_pump_on_a_small_box_holds_the_pressure_of_the_closed_form()
    {
        // Choked: dp/dt = (Q·pa - S·p)/V.
        var spec = Deep with { ReservoirVolume = 1, PumpDisplacement = 5, ReservoirPressure = 50_000 };
        var drawn = new HoleFlow(Twenty, spec).VolumeFlow(0);

        Assert.All(DrawDown.Simulate(1, Twenty, spec).Samples, m =>
        {
            var level = drawn * 101_325 / 5;
            Assert.Equal(level + (50_000 - level) * Math.Exp(-5 * m.Seconds), m.ReservoirPressure, 2.0);
        });
    }

    /// <summary>The same equations followed by the fourth-order Runge-Kutta method in steps of 0.1 ms.</summary>
    [Theory]
    [InlineData(1.0, 3.0, null, 20_000)]
    [InlineData(1.0, 1.2, 0.5, 20_000)]
    [InlineData(0.3, 2.0, 3.0, 101_325)]
    [InlineData(3.0, 0.5, 1.0, 60_000)]
    public void Times_agree_with_small_steps(double volume, double reservoir, double? pump, double pressure)
    {
        var spec = new AirFlowSpec { ReservoirVolume = reservoir, PumpDisplacement = pump, ReservoirPressure = pressure };
        var result = DrawDown.Simulate(volume, [new(1, 6, 30)], spec);

        var (seconds, rigid) = (result.Seconds!.Value, result.RigidSeconds);
        Assert.Equal(seconds, SmallSteps(volume, spec, sinking: true), 1e-3 * seconds);
        if (rigid is { } known) Assert.Equal(known, SmallSteps(volume, spec, sinking: false), 1e-3 * known);
    }

    [Fact]
    public void A_full_tank_without_pump_never_draws_the_form()
    {
        var result = DrawDown.Simulate(2, Twenty, new() { ReservoirVolume = 1, ReservoirPressure = 20_000 });

        Assert.Null(result.Seconds);
        Assert.Null(result.RigidSeconds);
        Assert.Equal(AirBottleneck.Reservoir, result.Bottleneck);
        // The tank takes what brings it to ambient pressure and no more.
        Assert.Equal(2 - (101_325 - 20_000) / 101_325.0, result.Samples[^1].Volume, 1e-3);
        Assert.Null(DrawDown.MinHoleCount(2, 1, 0, new() { ReservoirVolume = 1, ReservoirPressure = 20_000 }));
    }

    [Fact]
    public void A_weak_pump_rules_when_the_vents_are_plenty()
    {
        // Nearly all the time the pump takes air at ambient pressure: 5 L at 0.5 L/s less what the box takes.
        var result =
            DrawDown.Simulate(5, [new(2, 3, 2000)], new() { ReservoirVolume = 0.05, PumpDisplacement = 0.5, SweptShare = 1 });

        Assert.Equal(AirBottleneck.Pump, result.Bottleneck);
        Assert.Equal(10, result.Seconds!.Value, 0.1);
        Assert.InRange(result.ChokedShare, 0, 0.01);
    }

    [Fact]
    public void Without_vents_nothing_leaves()
    {
        var result = DrawDown.Simulate(1, [], new());

        Assert.Null(result.Seconds);
        Assert.Equal(0, result.ChokedShare);
        Assert.Equal(AirBottleneck.Holes, result.Bottleneck);
        Assert.Equal(1, result.Samples[^1].Volume);
    }

    [Fact]
    public void The_holes_needed_suffice_and_one_fewer_does_not()
    {
        var specs =
            Gen.Select(Gen.Double[0.3, 20], Gen.Bool, Gen.Double[0, 60_000], Gen.Double[0.3, 3], (tank, has, pressure, time) =>
            new AirFlowSpec
            {
                ReservoirVolume = has ? tank : null,
                PumpDisplacement = 2,
                ReservoirPressure = pressure,
                WantedTime = time
            });
        Gen.Select(Gen.Double[0.05, 5], Gen.Double[0.4, 2], Gen.Double[0, 12], specs).Sample((volume, diameter, length, spec) =>
        {
            if (DrawDown.MinHoleCount(volume, diameter, length, spec) is not { } count) return;
            Assert.True(DrawDown.Simulate(volume, [new(diameter, length, count)], spec).Seconds <= spec.WantedTime);
            var fewer = DrawDown.Simulate(volume, [new(diameter, length, count - 1)], spec).Seconds;
            Assert.True(fewer is null || fewer > spec.WantedTime);
        }, iter: 20);
    }

    [Fact]
    public void More_holes_are_never_slower_and_more_volume_never_faster()
    {
        var specs = Gen.Select(Gen.Double[0.2, 10], Gen.Double[0.2, 10], Gen.Double[0, 101_325], (tank, pump, pressure) =>
            new AirFlowSpec { ReservoirVolume = tank, PumpDisplacement = pump, ReservoirPressure = pressure });
        Gen.Select(Gen.Double[0.1, 5], Gen.Int[1, 200], specs).Sample((volume, count, spec) =>
        {
            double Time(double litres, int holes) => DrawDown.Simulate(litres, [new(1, 3, holes)], spec).Seconds
                ?? double.PositiveInfinity;
            var time = Time(volume, count);
            Assert.True(Time(volume, count + 10) <= time * 1.0002);
            Assert.True(Time(volume * 1.1, count) >= time);
        }, iter: 40);
    }

    [Fact]
    public void Numbers_out_of_range_are_refused_by_name()
    {
        void Refused(string words, Action act) =>
            Assert.Contains(words, Assert.Throws<ArgumentOutOfRangeException>(act).Message, StringComparison.Ordinal);

        Refused("volume under the sheet is -1 L; it must be from 0 to 1000000000 L", () => DrawDown.Simulate(-1, Twenty, Deep));
        Refused("number of vents", () => DrawDown.Simulate(1, [new(1, 3, -1)], Deep));
        Refused("diameter of the vents", () => DrawDown.MinHoleCount(1, 0, 3, Deep));
        Refused("pressure in the reservoir", () => DrawDown.Simulate(1, Twenty, Deep with { ReservoirPressure = 200_000 }));
        Refused("displacement of the pump", () => DrawDown.Simulate(1, Twenty, Deep with { PumpDisplacement = 0 }));
        Refused("share to sweep", () => DrawDown.Simulate(1, Twenty, Deep with { SweptShare = 95 }));
    }

    private static double SmallSteps(double volume, AirFlowSpec spec, bool sinking)
    {
        var (time, step) = (0.0, 1e-4);
        var limit = sinking ? 1 - spec.SweptShare : spec.FormedPressure / spec.AmbientPressure;
        (double X, double Y) Slope(double x, double y)
        {
            var upstream = sinking ? 1 : x;
            // From the public formula, hole by hole; not from what is tested.
            var grams = 30 * LongHole.MassFlow(1, 6, upstream * 101_325, Math.Min(y, upstream) * 101_325, 20);
            var drawn = grams / 1000 * 287.05 * 293.15 / 101_325 * 1000;
            return (-drawn / volume, (drawn - (spec.PumpDisplacement ?? 0) * y) / spec.ReservoirVolume!.Value);
        }

        var (x, y) = (1.0, spec.ReservoirPressure / spec.AmbientPressure);
        while (true)
        {
            var a = Slope(x, y);
            var b = Slope(x + step / 2 * a.X, y + step / 2 * a.Y);
            var c = Slope(x + step / 2 * b.X, y + step / 2 * b.Y);
            var d = Slope(x + step * c.X, y + step * c.Y);
            var next = x + step / 6 * (a.X + 2 * b.X + 2 * c.X + d.X);
            if (next <= limit) return time + step * (x - limit) / (x - next);
            (x, y, time) = (next, y + step / 6 * (a.Y + 2 * b.Y + 2 * c.Y + d.Y), time + step);
        }
    }
}
