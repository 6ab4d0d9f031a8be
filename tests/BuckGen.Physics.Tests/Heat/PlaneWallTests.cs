using BuckGen.Physics.Heat;
using Xunit;

namespace BuckGen.Physics.Tests.Heat;

/// <summary>
/// A wall cooled by air, against its series; the wall is 8 mm thick and all of 1 W/(m·K), 1000 kg/m³, 1000 J/(kg·K).
/// </summary>
public class PlaneWallTests
{
    private const double HalfThickness = 0.004;

    private static readonly FlatSheet Wall = new(2000 * HalfThickness, new(1, 1000, 1000));

    /// <summary>
    /// Roots and coefficients of the first term for a plane wall, Incropera and DeWitt, table 5.1 (from memory).
    /// </summary>
    [Theory]
    [InlineData(0.1, 0.3111, 1.0161)]
    [InlineData(1, 0.8603, 1.1191)]
    [InlineData(10, 1.4289, 1.2620)]
    public void The_first_term_of_the_handbook_and_the_cooling_it_tells(double biot, double root, double coefficient)
    {
        Assert.Equal(root, PlaneWallSeries.Root(biot, 0), 0.0001);
        Assert.Equal(coefficient, PlaneWallSeries.Coefficient(PlaneWallSeries.Root(biot, 0)), 0.0001);

        // Past α·t/l² = 0.2 the first term is enough (same book); the four figures of the table allow 0.001.
        foreach (var fourier in (double[])[0.5, 1, 2])
            Assert.Equal(coefficient * Math.Exp(-root * root * fourier), Cooled(biot, fourier).Core / 100, 0.001);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(1000)]
    public void Faces_core_and_mean_follow_the_series_at_all_times(double biot)
    {
        foreach (var fourier in (double[])[0.01, 0.05, 0.2, 1, 3])
        {
            var cooled = Cooled(biot, fourier);

            Assert.Equal(100 * PlaneWallSeries.Temperature(biot, fourier, 0), cooled.Core, 0.02);
            Assert.Equal(100 * PlaneWallSeries.Temperature(biot, fourier, 1), cooled.First, 0.02);
            Assert.Equal(100 * PlaneWallSeries.Mean(biot, fourier), cooled.Mean, 0.02);
            Assert.Equal(cooled.First, cooled.Second, 1e-6);
            Assert.Equal((cooled.Core, cooled.First),
                (cooled.Hottest, Math.Min(cooled.First, cooled.Second) == cooled.Coldest ? cooled.First : 0));
        }
    }

    [Fact]
    public void Half_a_wall_with_an_insulated_middle_cools_like_the_whole()
    {
        var half = SheetHeating.After(
            Wall with { Thickness = Wall.Thickness / 2 }, SheetFace.InAir(250, 0), SheetFace.Insulated, 16, start: 100);

        var whole = Cooled(1, 1);
        Assert.Equal(whole.Core, half.Second, 0.01);
        Assert.Equal(whole.First, half.First, 0.01);
    }

    [Fact]
    public void The_time_until_a_temperature_is_that_of_the_series()
    {
        var face = SheetFace.InAir(250, 0);

        var result = SheetCooling.Until(Wall, face, face, 100, 40, SheetPlace.Mean);

        Assert.Equal(HeatOutcome.Reached, result.Outcome);
        Assert.Equal(40, result.End.Mean, 1e-6);
        Assert.Equal(0.40, PlaneWallSeries.Mean(1, result.Seconds!.Value / 16), 0.0002);
    }

    [Fact]
    public void Finer_slices_and_shorter_steps_come_nearer_to_the_series()
    {
        double Miss(int intervals, double stepError)
        {
            var face = SheetFace.InAir(2500, 0);
            var cooled = new SheetConduction(Wall, face, face, intervals, stepError)
                .Integrate(100, _ => 1, 16 * 0.2)[^1].Temperatures;
            return new[]
            {
                cooled.Core - 100 * PlaneWallSeries.Temperature(10, 0.2, 0),
                cooled.First - 100 * PlaneWallSeries.Temperature(10, 0.2, 1),
                cooled.Mean - 100 * PlaneWallSeries.Mean(10, 0.2),
            }.Max(Math.Abs);
        }

        // Second order in space: half the width, a quarter of the error.
        Assert.InRange(Miss(8, 1e-4) / Miss(16, 1e-4), 3, 5);
        Assert.InRange(Miss(16, 1e-4) / Miss(32, 1e-4), 3, 5);
        // In time the steps shrink with the root of the allowance, so a hundredth of it makes the error about a hundred times
        // less.
        Assert.InRange(Miss(240, 10), 0, 5);
        Assert.True(Miss(240, 10) > 10 * Miss(240, 0.1), "coarse steps are no worse than fine ones");
    }

    /// <summary>Start 100 °C, air 0 °C; α = 1 mm²/s, so α·t/l² = t/16 s.</summary>
    private static SheetTemperatures Cooled(double biot, double fourier)
    {
        var face = SheetFace.InAir(biot / HalfThickness, 0);
        return SheetHeating.After(Wall, face, face, 16 * fourier, start: 100);
    }
}
