using BuckGen.Physics.Membranes;
using Xunit;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>A sheet that is recorded under some pressures on the way to the full one.</summary>
public class StageTests
{
    private const double Pressure = 24 * Formed.PressureUnit;

    private static readonly ITool Box = new Cavity(80, 50);

    private static readonly ClampedSheet Sheet = Formed.Quarter(24);

    /// <summary>
    /// A membrane has no other scale of pressure than modulus times thickness over length: so the judge is a simulation of a
    /// stiffer sheet, or of a thicker one.
    /// </summary>
    [Fact]
    public void A_stage_is_a_stiffer_or_a_thicker_sheet_under_the_full_pressure()
    {
        var load = new FormingLoad(Pressure);

        var stages = MembraneForming.FormInStages(Sheet, Box, load, [Pressure / 6, Pressure / 2]);

        Assert.Equal(3, stages.Length);
        var stiffer = Sheet with { Material = HyperelasticMaterial.NeoHookean(6 * Sheet.Material.ShearModulus) };
        AssertAlike(MembraneForming.Form(stiffer, Box, load), stages[0]);
        AssertAlike(MembraneForming.Form(Sheet with { Thickness = 2 * Sheet.Thickness }, Box, load), stages[1]);
        AssertAlike(MembraneForming.Form(Sheet, Box, load), stages[2]);
        // The corners fill on the way.
        Assert.True(stages[0].FreeNodes.Max(n => n.Gap) > 1.5 * stages[2].FreeNodes.Max(n => n.Gap));
    }

    [Fact]
    public void A_sheet_that_slides_too()
    {
        var (strip, trough) = (Formed.Strip(40), new Pit(Formed.Size, 0.8, round: false));
        var load = new FormingLoad(Pressure) { Friction = 0.2 };

        var stages = MembraneForming.FormInStages(strip, trough, load, [Pressure / 4]);

        AssertAlike(MembraneForming.Form(strip with { Thickness = 4 * strip.Thickness }, trough, load), stages[0]);
        AssertAlike(MembraneForming.Form(strip, trough, load), stages[1]);
    }

    [Fact]
    public void Over_a_rising_block_too()
    {
        var block = Block.Rectangle(50, 50, 40, 5);
        var load = new FormingLoad(Pressure) { Rise = 40 };

        var stages = MembraneForming.FormInStages(Sheet, block, load, [Pressure / 3], default);

        AssertAlike(MembraneForming.Form(Sheet with { Thickness = 3 * Sheet.Thickness }, block, load), stages[0]);
        AssertAlike(MembraneForming.Form(Sheet, block, load), stages[1]);
    }

    [Fact]
    public void The_first_stage_is_bit_for_bit_what_its_pressure_alone_gives() => Assert.Equal(
        MembraneForming.Form(Sheet, Box, new(Pressure / 2)).Nodes,
        MembraneForming.FormInStages(Sheet, Box, new(Pressure), [Pressure / 2])[0].Nodes);

    /// <summary>A sheet that nothing holds bursts past the peak of its pressure (see <see cref="InflationTests"/>).</summary>
    [Fact]
    public void What_bursts_on_the_way_stays_burst()
    {
        var stages = MembraneForming.FormInStages(
            Sheet, new NoTool(), new(8 * Formed.PressureUnit), [0.3 * Formed.PressureUnit, 4 * Formed.PressureUnit]);

        Assert.Equal(
            [FormingOutcome.Converged, FormingOutcome.Burst, FormingOutcome.Burst], stages.Select(s => s.Outcome));
        Assert.Same(stages[1], stages[2]);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(2, 1)]
    [InlineData(1, 1)]
    [InlineData(1, 10)]
    [InlineData(1, double.NaN)]
    public void Pressures_that_do_not_ascend_are_refused(double first, double second) =>
        Assert.Contains("must ascend", Assert.Throws<ArgumentException>(() =>
            MembraneForming.FormInStages(Sheet, Box, new(10), [first, second])).Message);

    private static void AssertAlike(FormedSheet expected, FormedSheet stage)
    {
        Assert.Equal((FormingOutcome.Converged, FormingOutcome.Converged), (expected.Outcome, stage.Outcome));
        var ratio = expected.Sheet.Thickness / stage.Sheet.Thickness;
        double[] ratios = [.. stage.Thickness.Zip(expected.Thickness, (t, e) => t * ratio / e)];
        // Where the sheet first touches a rim, a node may touch a little earlier once it has settled nearby.
        Assert.InRange(ratios.Count(r => Math.Abs(r - 1) > 0.02), 0, ratios.Length / 100);
        Assert.All(ratios, r => Assert.InRange(r, 0.92, 1.08));
        Assert.InRange(stage.MeanThickness * ratio / expected.MeanThickness, 0.999, 1.001);
    }
}
