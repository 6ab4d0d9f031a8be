using BuckGen.Physics.Air;
using CsCheck;
using Xunit;

namespace BuckGen.Physics.Tests.Air;

public class LongHoleTests
{
    /// <summary>Case V03: flow of a choked pipe over that of a choked nozzle of the same bore. Source: Fanno flow.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.5, 0.840)]
    [InlineData(1.5, 0.697)]
    [InlineData(3.0, 0.586)]
    public void A_long_bore_passes_less(double resistance, double factor) =>
        Assert.Equal(factor, LongHole.ChokedFlowFactor(resistance), factor * 0.01);

    /// <summary>
    /// Tables of Fanno flow for γ = 1.4: the first two rows from S. Farokhi, Aircraft Propulsion, 2nd edition, appendix E; the
    /// others from memory.
    /// </summary>
    [Theory]
    [InlineData(0.10, 66.922)]
    [InlineData(0.14, 32.511)]
    [InlineData(0.20, 14.533)]
    [InlineData(0.50, 1.0691)]
    [InlineData(0.60, 0.49082)]
    [InlineData(0.80, 0.07229)]
    [InlineData(1.00, 0)]
    public void The_table_of_Fanno_flow(double mach, double resistance)
    {
        Assert.Equal(resistance, FannoFlow.ResistanceToChoke(mach), 0.00005 * (1 + resistance));
        Assert.Equal(resistance, IntegratedResistance(mach), 0.0002 * (1 + resistance));
    }

    [Fact]
    public void The_longest_subsonic_pipe_is_found_again_from_its_resistance()
    {
        Gen.Double[0.02, 0.999].Sample(mach =>
            Assert.Equal(mach, FannoFlow.ChokedInletMach(FannoFlow.ResistanceToChoke(mach)), 1e-7));
    }

    /// <summary>
    /// The momentum equation, followed along the bore by small steps from the flow that was found, must end at the pressure that
    /// was given.
    /// </summary>
    [Theory]
    [InlineData(0.9, 0.5)]
    [InlineData(0.7, 0.5)]
    [InlineData(0.6, 0.1)]
    [InlineData(0.95, 5)]
    [InlineData(0.4, 5)]
    public void A_bore_that_is_not_choked_ends_at_the_pressure_behind_it(double pressureRatio, double resistance)
    {
        var flow = LongHole.FlowFunction(pressureRatio, resistance);

        Assert.True(flow < LongHole.FlowFunction(0, resistance));
        Assert.Equal(pressureRatio, ExitPressure(flow, resistance), 1e-5);
    }

    [Fact]
    public void A_bore_without_resistance_is_a_sharp_hole()
    {
        Gen.Double[0, 1].Sample(ratio => Assert.Equal(Orifice.FlowFunction(ratio), LongHole.FlowFunction(ratio, 1e-9), 1e-4));
    }

    [Fact]
    public void The_flow_is_continuous_at_choking()
    {
        Gen.Double[0, 10].Sample(resistance =>
        {
            var critical = LongHole.CriticalPressureRatio(resistance);
            Assert.Equal(LongHole.FlowFunction(0, resistance), LongHole.FlowFunction(critical * (1 + 1e-9), resistance), 1e-6);
        });
    }

    [Fact]
    public void A_longer_hole_never_passes_more()
    {
        Gen.Select(Gen.Double[0.3, 3], Gen.Double[0, 50], Gen.Double[0, 50], Gen.Double[0, 1]).Sample((diameter, a, b, ratio) =>
        {
            double Flow(double length) => LongHole.MassFlow(diameter, length, 101_325, 101_325 * ratio, 20);
            Assert.True(Flow(Math.Max(a, b)) <= Flow(Math.Min(a, b)) + 1e-12);
        });
    }

    [Fact]
    public void A_deeper_vacuum_never_passes_less()
    {
        Gen.Select(Gen.Double[0, 20], Gen.Double[0, 1], Gen.Double[0, 1]).Sample((resistance, a, b) =>
            Assert.True(
                LongHole.FlowFunction(Math.Min(a, b), resistance) >= LongHole.FlowFunction(Math.Max(a, b), resistance) - 1e-12));
    }

    /// <summary>Friction factor of Colebrook's formula for the roughness and the flow stated beside the default.</summary>
    [Fact]
    public void The_friction_of_a_bore_in_wood_is_near_Colebrooks()
    {
        var darcy = 0.05;
        for (var i = 0; i < 50; i++) darcy = Math.Pow(-2 * Math.Log10(0.02 / 3.7 + 2.51 / (10_000 * Math.Sqrt(darcy))), -2);
        Assert.Equal(LongHole.WoodFriction, darcy / 4, 0.001);
    }

    /// <summary>4fL/D as the integral of (1 - M²)/(γ·M⁴·(1 + 0.2·M²)) over M², by the middle rule in ln M.</summary>
    private static double IntegratedResistance(double mach)
    {
        const int steps = 2000;
        var (sum, step) = (0.0, -Math.Log(mach) / steps);
        for (var i = 0; i < steps; i++)
        {
            var square = Math.Exp(2 * (Math.Log(mach) + (i + 0.5) * step));
            sum += (1 - square) / (1.4 * square * (1 + 0.2 * square)) * 2 * step;
        }
        return sum;
    }

    private static double ExitPressure(double flow, double resistance)
    {
        // The Mach number at the inlet from the flow: put in again and again, from rest.
        var square = 0.0;
        for (var i = 0; i < 200; i++) square = Math.Pow(flow, 2) / 1.4 * Math.Pow(1 + 0.2 * square, 6);
        const int steps = 200_000;
        for (var i = 0; i < steps; i++)
        {
            double Slope(double s) => 1.4 * s * s * (1 + 0.2 * s) / (1 - s);
            var half = square + Slope(square) * resistance / steps / 2;
            square += Slope(half) * resistance / steps;
        }
        return flow / Math.Sqrt(1.4 * square * (1 + 0.2 * square));
    }
}
