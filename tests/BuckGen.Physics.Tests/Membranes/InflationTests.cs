using BuckGen.Physics.Membranes;
using Xunit;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>Free inflation of a clamped disc, against its ordinary differential equations.</summary>
[Trait("Tier", "slow")]
public class InflationTests
{
    /// <summary>
    /// The equations themselves, against a table of them in steps of a four-thousandth (computed for the project; the pressure
    /// peak of the neo-Hookean disc at 1.8792 is passed at a height of 1.176).
    /// </summary>
    [Theory]
    [InlineData(0, 0.5, 0.9006, 0.7236)]
    [InlineData(0, 1.0, 1.8399, 0.2968)]
    [InlineData(0, 1.5, 1.8037, 0.1088)]
    [InlineData(0.1, 1.0, 2.0921, 0.3265)]
    [InlineData(0.25, 0.5, 0.9463, 0.7325)]
    [InlineData(0.25, 1.5, 3.0094, 0.1863)]
    public void The_equations_give_the_table(double ratio, double height, double pressure, double thickness)
    {
        var disc = DiscInflation.AtHeight(height, ratio);

        Assert.Equal(pressure, disc.Pressure, 0.0003);
        Assert.Equal(thickness, disc.PoleThickness, 0.0002);
    }

    /// <summary>
    /// Swept depths for heights of about 0.5, 1.0 and 1.5 radii; the last lie past the peak of the neo-Hookean pressure.
    /// </summary>
    [Theory]
    [InlineData(0, 0.283)]
    [InlineData(0, 0.696)]
    [InlineData(0, 1.351)]
    [InlineData(0.1, 0.707)]
    [InlineData(0.25, 0.282)]
    [InlineData(0.25, 0.711)]
    [InlineData(0.25, 1.463)]
    public void A_disc_follows_its_equations_even_past_the_peak_of_pressure(double ratio, double depth)
    {
        var formed = MembraneForming.Form(Formed.Disc(28, ratio), new NoTool(), new(1e6) { SweptDepth = depth * Formed.Size });

        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        var disc = DiscInflation.AtHeight(-formed.Nodes[0].Z / Formed.Size, ratio);
        Assert.Equal(disc.Pressure, formed.Pressure / Formed.PressureUnit, disc.Pressure * 0.01);
        Assert.Equal(disc.PoleThickness, formed.Thickness[0] / formed.Sheet.Thickness, disc.PoleThickness * 0.01);
        Assert.Equal(depth, formed.SweptVolume / Formed.Size / (Math.PI * Formed.Size * Formed.Size), depth * 0.05);
    }

    /// <summary>
    /// H. Hencky's membrane for Poisson's ratio 0.5: height over radius is 0.595·(p·a/(E·t0))^(1/3), E = 3·μ (from memory).
    /// </summary>
    [Fact]
    public void A_flat_dome_is_that_of_Hencky()
    {
        var formed = MembraneForming.Form(Formed.Disc(18), new NoTool(), new(1e6) { SweptDepth = 0.03 * Formed.Size });

        var height = 0.595 * Math.Cbrt(formed.Pressure / Formed.PressureUnit / 3) * Formed.Size;
        Assert.Equal(height, -formed.Nodes[0].Z, height * 0.015);
    }

    [Fact]
    public void The_plastic_is_kept_and_the_mean_is_what_the_area_leaves()
    {
        var formed = MembraneForming.Form(Formed.Disc(12), new NoTool(), new(1e6) { SweptDepth = 0.7 * Formed.Size });

        Assert.Equal(formed.PlasticVolumeBefore, formed.PlasticVolumeAfter, formed.PlasticVolumeBefore * 1e-12);
        Assert.Equal(formed.Sheet.Mesh.Area / formed.Area * formed.Sheet.Thickness, formed.MeanThickness, 1e-12);
    }
}
