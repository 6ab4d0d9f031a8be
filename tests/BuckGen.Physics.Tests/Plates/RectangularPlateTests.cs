using BuckGen.Physics.Plates;
using CsCheck;
using Xunit;

namespace BuckGen.Physics.Tests.Plates;

public class RectangularPlateTests
{
    /// <summary>
    /// Timoshenko and Woinowsky-Krieger, table 8, ν = 0.3 (from memory). Its deflection for 1.2 is rounded down: the series gives
    /// 0.005651.
    /// </summary>
    [Theory]
    [InlineData(1.0, 0.00406, 0.0479)]
    [InlineData(1.2, 0.00564, 0.0627)]
    [InlineData(1.5, 0.00772, 0.0812)]
    [InlineData(2.0, 0.01013, 0.1017)]
    [InlineData(3.0, 0.01223, 0.1189)]
    [InlineData(5.0, 0.01297, 0.1246)]
    public void Simply_supported_as_in_Timoshenkos_table(double ratio, double deflection, double moment)
    {
        var plate = RectangularPlate.SimplySupported(ratio);

        Assert.Equal(deflection, plate.Deflection, 0.000011);
        Assert.Equal(moment, plate.Moment, 0.0001);
    }

    /// <summary>
    /// Roark's Formulas for Stress and Strain, 7th edition, table 11.4, case 1: stress β·q·b²/t², deflection α·q·b⁴/(E·t³), ν =
    /// 0.3.
    /// </summary>
    [Theory]
    [InlineData(1.0, 0.2874, 0.0444)]
    [InlineData(1.2, 0.3762, 0.0616)]
    [InlineData(1.4, 0.4530, 0.0770)]
    [InlineData(1.6, 0.5172, 0.0906)]
    [InlineData(1.8, 0.5688, 0.1017)]
    [InlineData(2.0, 0.6102, 0.1110)]
    [InlineData(3.0, 0.7134, 0.1335)]
    [InlineData(4.0, 0.7410, 0.1400)]
    [InlineData(5.0, 0.7476, 0.1417)]
    public void Simply_supported_as_in_Roarks_table(double ratio, double beta, double alpha)
    {
        var board = new BoardProperties("any", 1000, 10, "");

        var response = RectangularPlate.SimplySupported(ratio).ResponseTo(100, 10, board, 1e6);

        Assert.Equal(beta * 100, response.Stress, 0.1);
        Assert.Equal(alpha * 100, response.Deflection, 0.08);
    }

    /// <summary>Timoshenko and Woinowsky-Krieger, table 35 (from memory).</summary>
    [Theory]
    [InlineData(1.0, 0.00126, 0.0513)]
    [InlineData(1.2, 0.00172, 0.0639)]
    [InlineData(1.5, 0.00220, 0.0757)]
    [InlineData(1.8, 0.00245, 0.0812)]
    [InlineData(2.0, 0.00254, 0.0829)]
    public void Clamped_as_in_Timoshenkos_table(double ratio, double deflection, double moment)
    {
        var plate = RectangularPlate.Clamped(ratio);

        Assert.Equal(deflection, plate.Deflection, 0.00001);
        Assert.Equal(moment, plate.Moment, 0.0001);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Both_as_solved_by_finite_differences(int ratio)
    {
        var (tilting, clamped) =
            (FiniteDifferencePlate.Solve(ratio, clamped: false), FiniteDifferencePlate.Solve(ratio, clamped: true));

        Assert.Equal(tilting.Deflection, RectangularPlate.SimplySupported(ratio).Deflection, 2e-6);
        Assert.Equal(tilting.MiddleMoment, RectangularPlate.SimplySupported(ratio).Moment, 2e-5);
        Assert.Equal(clamped.Deflection, RectangularPlate.Clamped(ratio).Deflection, 2e-6);
        Assert.Equal(clamped.EdgeMoment, RectangularPlate.Clamped(ratio).Moment, 2e-4);
    }

    [Fact]
    public void A_long_plate_is_a_strip()
    {
        var (tilting, clamped) = (RectangularPlate.SimplySupported(20), RectangularPlate.Clamped(20));

        Assert.Equal(5.0 / 384, tilting.Deflection, 1e-8);
        Assert.Equal(1.0 / 8, tilting.Moment, 1e-8);
        Assert.Equal(1.0 / 384, clamped.Deflection, 1e-5);
        Assert.Equal(1.0 / 12, clamped.Moment, 2e-4);
    }

    [Fact]
    public void A_clamped_plate_bends_less_and_a_longer_one_more()
    {
        Gen.Select(Gen.Double[1, 8], Gen.Double[0, 0.45]).Sample((ratio, poisson) =>
        {
            var plate = RectangularPlate.SimplySupported(ratio, poisson);
            var longer = RectangularPlate.SimplySupported(ratio * 1.1, poisson);
            Assert.True(RectangularPlate.Clamped(ratio).Deflection < plate.Deflection);
            Assert.True(longer.Deflection > plate.Deflection && longer.Moment > plate.Moment);
        });
    }

    [Fact]
    public void Ratios_below_one_are_refused()
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => RectangularPlate.Clamped(0.5));
        Assert.Contains("from 1 to 20", refusal.Message, StringComparison.Ordinal);
    }
}
