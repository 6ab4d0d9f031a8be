using BuckGen.Geometry;
using BuckGen.Physics.Membranes;
using Xunit;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>Balances and trade facts that any prediction must keep.</summary>
public class ThinningTests
{
    /// <summary>
    /// Volume balance of a worked example in J. L. Throne, Technology of Thermoforming (1996), from memory: a box of 150 × 100 ×
    /// 60 mm from 2 mm has a mean wall of 2·150·100/(150·100 + 2·60·(150 + 100)) = 0.67 mm.
    /// </summary>
    [Fact]
    public void A_box_from_the_book_has_its_mean_wall()
    {
        var sheet =
            ClampedSheet.FromMesh(FrameMesh.CrissCross(new(0, 0, 75, 50), 2.5), HyperelasticMaterial.NeoHookean(0.2), 2, [0],
            [0]);

        var formed = MembraneForming.Form(sheet, new Box150(), new(60 * 0.2 * 2 / 60 * 1e6));

        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        Assert.Equal(2.0 / 3, formed.MeanThickness, 0.02);
        Assert.Equal(formed.PlasticVolumeBefore, formed.PlasticVolumeAfter, formed.PlasticVolumeBefore * 1e-3);
    }

    /// <summary>The plastic is kept at any mesh and pace, here for a male buck with draft.</summary>
    [Theory]
    [InlineData(10, 0.05)]
    [InlineData(10, 0.2)]
    [InlineData(5, 0.05)]
    public void Any_mesh_and_tolerance_keeps_the_plastic(double cell, double pathTolerance)
    {
        var formed = OverBlock(cell, 30, pathTolerance);

        Assert.Equal(formed.PlasticVolumeBefore, formed.PlasticVolumeAfter, formed.PlasticVolumeBefore * 1e-3);
        Assert.Equal(2 * 200 * 150.0, formed.PlasticVolumeBefore, 1e-6);
    }

    /// <summary>Haste on the way to the first contact leaves no trace: a run four times as slow gives the same wall.</summary>
    [Fact]
    public void The_path_tolerance_changes_little()
    {
        double Wall(double pathTolerance) => MiddleWall(OverBlock(5, 30, pathTolerance));

        var slow = Wall(0.0125);
        Assert.Equal(slow, Wall(0.05), slow * 0.01);
    }

    [Fact]
    public void Halving_the_mesh_changes_the_wall_of_a_buck_little()
    {
        double Wall(double cell) => MiddleWall(OverBlock(cell, 30, 0.05));

        var fine = Wall(2.5);
        Assert.Equal(fine, Wall(5), fine * 0.02);
    }

    /// <summary>Common practice, no source: taller is thinner.</summary>
    [Fact]
    public void Taller_is_thinner()
    {
        var (low, high) = (OverBlock(4, 20, 0.05), OverBlock(4, 40, 0.05));

        Assert.True(MiddleWall(high) < 0.9 * MiddleWall(low), $"{MiddleWall(high)} of {MiddleWall(low)} mm");
    }

    /// <summary>A block of 100 × 60 mm with 3 degrees of draft in a frame of 200 × 150 mm.</summary>
    private static FormedSheet OverBlock(double cell, double height, double pathTolerance)
    {
        var sheet =
            ClampedSheet.FromMesh(FrameMesh.CrissCross(new(-100, -75, 100, 75), cell), HyperelasticMaterial.NeoHookean(0.2), 2);
        var formed = MembraneForming.Form(
            sheet, new Frustum(Plans.Rectangle(new(0, 0), 50, 30, 6), height, 3),
            new(80_000) { Rise = height, PathTolerance = pathTolerance });
        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        return formed;
    }

    /// <summary>Mean thickness of the middle of the end walls, from a quarter to three quarters of the height, mm.</summary>
    private static double MiddleWall(FormedSheet formed)
    {
        var top = formed.Nodes.Max(p => p.Z);
        return formed.ThicknessRatios()
            .Where(p => Math.Abs(p.Position.Y) < 15 && Math.Abs(p.Position.X) < 54 && p.Position.Z > top / 4
            && p.Position.Z < 0.75 * top).Average(p => p.ThicknessRatio) * 2;
    }

    private sealed class Box150 : ITool
    {
        public double SignedDistance(Vec3 point) =>
            Math.Min(Math.Min(75 - Math.Abs(point.X), 50 - Math.Abs(point.Y)), point.Z + 60);
    }
}
