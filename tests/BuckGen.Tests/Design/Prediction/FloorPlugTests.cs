using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Prediction;
using BuckGen.Findings;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Prediction;

/// <summary>A plug that carries the floor of a cavity down; the published box is in PlugTests of the solver.</summary>
[Trait("Tier", "slow")]
public class FloorPlugTests
{
    // Four boards of 6 mm.
    private const double Depth = 24;

    /// <summary>What sticks to the plug keeps its gauge; without it the floor is drawn too.</summary>
    [Fact]
    public void It_keeps_the_floor_thick()
    {
        var (plugged, plain) = (Part(new() { PlugGap = 3 }), Part(new()));

        Assert.Equal(Depth - 3, plugged.PlugDepth!.Value, 0.01);
        Assert.Null(plain.PlugDepth);
        Assert.InRange(MiddleOfFloor(plugged), 0.97, 1.0001);
        Assert.InRange(MiddleOfFloor(plain), 0.2, 0.8);
        Assert.InRange(plugged.VolumeError, -0.001, 0.001);
        Assert.NotNull(plugged.ThinnestRange);
        Assert.Equal(15, Part(new() { PlugGap = 3, PlugDepth = 15 }).PlugDepth);
    }

    [Theory]
    [InlineData(25, null)]
    [InlineData(5, 26.0)]
    public void One_that_does_not_fit_is_reported(double gap, double? depth)
    {
        var design = Design(new() { PlugGap = gap, PlugDepth = depth });

        Assert.Null(design.Formed!.PlugDepth);
        Assert.Single(design.Findings, f => f is { Id: "plug-not-predicted", Severity: Severity.Note } && f.Value == gap);
    }

    [Fact]
    public void One_that_fits_or_is_not_wanted_is_no_finding() => Assert.All(
        (FormerSpec[])[new(), new() { PlugGap = 5 }],
        former => Assert.DoesNotContain(Design(former).Findings, f => f.Id == "plug-not-predicted"));

    private static double MiddleOfFloor(FormedPart part) =>
        part.Points.MinBy(p => Math.Abs(p.X) + Math.Abs(p.Y)).Thickness;

    private static FormedPart Part(FormerSpec former) => Design(former).Formed!;

    private static BuckDesign Design(FormerSpec former) => Formed.Design(
        BuckGen.Geometry.Tests.Shapes.RectangleAt(-30, -20, 60, 40),
        Formed.Spec(BuckKind.Female, Depth, 3) with { Stock = [Formed.Mdf6], Former = former, Prediction = new() });
}
