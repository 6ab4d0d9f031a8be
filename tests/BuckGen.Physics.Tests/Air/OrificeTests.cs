using BuckGen.Physics.Air;
using Xunit;

namespace BuckGen.Physics.Tests.Air;

public class OrificeTests
{
    private const double Ambient = 101_325;

    /// <summary>Case V01: one hole of 1 mm, ideal, air at 20 °C. Source: 0.0404·A·p/√T, any text on choked air flow.</summary>
    [Fact]
    public void A_choked_hole_of_one_millimetre()
    {
        Assert.Equal(0.1878, Orifice.MassFlow(1, Ambient, 0, 20, dischargeCoefficient: 1), 0.1878 * 0.002);
        Assert.Equal(0.5283, Orifice.CriticalPressureRatio, 0.00005);
        Assert.Equal(0.040414, Orifice.CriticalFlowFunction / Math.Sqrt(287.05), 0.000001);
    }

    /// <summary>
    /// ISO 9300: the critical flow function of a perfect gas with γ = 1.4 is 0.68473 (from memory; real dry air at 20 °C and 1
    /// bar 0.685).
    /// </summary>
    [Fact]
    public void The_critical_flow_function_of_ISO_9300() => Assert.Equal(0.68473, Orifice.CriticalFlowFunction, 0.000005);

    /// <summary>NACA Report 1135, table I (from memory): Mach number, p/pt, A/A*.</summary>
    [Theory]
    [InlineData(0.2, 0.9725, 2.9635)]
    [InlineData(0.5, 0.8430, 1.3398)]
    [InlineData(0.8, 0.6560, 1.0382)]
    [InlineData(1.0, 0.5283, 1.0000)]
    public void The_table_of_NACA_1135(double mach, double pressureRatio, double areaRatio)
    {
        var ratio = Math.Pow(1 + (DryAir.HeatRatio - 1) / 2 * mach * mach, -DryAir.HeatRatio / (DryAir.HeatRatio - 1));
        Assert.Equal(pressureRatio, ratio, 0.00005);
        Assert.Equal(1 / areaRatio, Orifice.FlowFunction(pressureRatio) / Orifice.CriticalFlowFunction, 0.0002);
    }

    /// <summary>
    /// The same from first principles: v²/2 = ∫dp/ρ along p/ρ^1.4 = const, summed by Simpson's rule; the flux ρ·v peaks at
    /// choking.
    /// </summary>
    [Fact]
    public void The_flow_function_follows_from_the_isentropic_relations()
    {
        var (best, bestRatio) = (0.0, 0.0);
        for (var i = 1; i < 1000; i++)
        {
            var ratio = i / 1000.0;
            var flux = IntegratedFlux(ratio);
            if (flux > best) (best, bestRatio) = (flux, ratio);
            if (ratio > Orifice.CriticalPressureRatio) Assert.Equal(flux, Orifice.FlowFunction(ratio), 1e-6);
        }
        Assert.Equal(best, Orifice.CriticalFlowFunction, 1e-6);
        Assert.Equal(bestRatio, Orifice.CriticalPressureRatio, 0.001);
    }

    [Fact]
    public void The_flow_is_continuous_and_flat_at_choking()
    {
        var critical = Orifice.CriticalPressureRatio;

        Assert.Equal(Orifice.CriticalFlowFunction, Orifice.FlowFunction(Math.BitIncrement(critical)), 1e-12);
        Assert.Equal(0, (Orifice.FlowFunction(critical + 1e-4) - Orifice.CriticalFlowFunction) / 1e-4, 0.001);
        Assert.Equal(0, Orifice.FlowFunction(1));
    }

    [Theory]
    [InlineData(-1, 101_325, 0, 20, 0.65, "diameter of the hole")]
    [InlineData(1, double.NaN, 0, 20, 0.65, "pressure before the hole")]
    [InlineData(1, 50_000, 60_000, 20, 0.65, "pressure behind the hole is 60000 Pa; it must be from 0 to 50000 Pa")]
    [InlineData(1, 101_325, 0, -273.15, 0.65, "temperature")]
    [InlineData(1, 101_325, 0, 20, 65, "discharge coefficient")]
    public void Numbers_out_of_range_are_refused_by_name(
        double diameter, double upstream, double downstream, double temperature, double coefficient, string words)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(
            () => Orifice.MassFlow(diameter, upstream, downstream, temperature, coefficient));
        Assert.Contains(words, refusal.Message, StringComparison.Ordinal);
    }

    private static double IntegratedFlux(double ratio)
    {
        const int steps = 200;
        var step = (1 - ratio) / steps;
        var work = 0.0;
        for (var i = 0; i <= steps; i++)
            work += (i is 0 or steps ? 1 : i % 2 == 1 ? 4 : 2) * Math.Pow(ratio + i * step, -1 / 1.4);
        return Math.Pow(ratio, 1 / 1.4) * Math.Sqrt(2 * work * step / 3);
    }
}
