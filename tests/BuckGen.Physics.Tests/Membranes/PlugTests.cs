using BuckGen.Geometry;
using BuckGen.Physics.Membranes;
using Xunit;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>A box 150 x 100 x 60 mm, formed from 2 mm with and without a plug; a quarter of it is computed.</summary>
public class PlugTests
{
    private const double Depth = 60, Gauge = 2, PlugDepth = 59.9, Size = 2.5;

    private static readonly FormingLoad Plain = new(90_000), Plugged = Plain with { Plug = new(new Prism(70, 45), PlugDepth) };

    private static readonly Lazy<FormedSheet>
        WithPlug = new(() => Form(Plugged)), WithoutPlug = new(() => Form(Plain));

    /// <summary>
    /// Crawford, Plastics Engineering, 3rd ed., example 4.7(b): under a plug of 140 x 90 mm the sheet keeps its 2 mm, and what is
    /// left makes walls of 0.16 mm on average. The row of triangles across the edge of the plug is drawn with the walls, so the
    /// error is of first order in their size and is extrapolated from two meshes.
    /// </summary>
    [Fact]
    public void The_floor_keeps_the_gauge_and_the_walls_get_the_rest()
    {
        var ((floor, fine), (_, coarse)) = (FloorAndWalls(WithPlug.Value), FloorAndWalls(Form(Plugged, 2 * Size)));

        Assert.InRange(floor.Mean, 0.999 * Gauge, 1.001 * Gauge);
        Assert.InRange(2 * fine.Mean - coarse.Mean, 0.97 * 0.16, 1.03 * 0.16);
        Assert.InRange(2 * fine.Area - coarse.Area, 0.98 * 30_000 / 4, 1.02 * 30_000 / 4);
    }

    /// <summary>What has chilled under the plug goes the rest of the way straight down.</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(55)]
    public void A_shorter_plug_keeps_the_floor_thick_too(double depth) => Assert.InRange(
        FloorAndWalls(Form(Plain with { Plug = new(new Prism(70, 45, depth), depth) })).Floor.Mean, 0.98 * Gauge, 1.001 * Gauge);

    [Fact]
    public void No_plastic_is_lost() => Assert.Equal(
        WithPlug.Value.PlasticVolumeBefore, WithPlug.Value.PlasticVolumeAfter, WithPlug.Value.PlasticVolumeBefore * 1e-9);

    [Fact]
    public void Without_it_the_floor_is_drawn_too()
    {
        Assert.Equal(FormingOutcome.Converged, WithoutPlug.Value.Outcome);
        Assert.InRange(MiddleOfFloor(WithoutPlug.Value), 0.1 * Gauge, 0.6 * Gauge);
        Assert.InRange(MiddleOfFloor(WithPlug.Value), 0.98 * Gauge, 1.0001 * Gauge);
    }

    [Fact]
    public void The_sheet_passes_neither_through_the_box_nor_out_of_it() =>
        Assert.All(WithPlug.Value.Nodes, n => Assert.InRange(new Box().SignedDistance(n), -1e-6, 1e9));

    [Fact]
    public void The_sheet_comes_off_the_plug_and_reaches_the_floor() => Assert.True(
        WithPlug.Value.FreeNodes.All(n => n.Gap < 4), $"{WithPlug.Value.FreeNodes.Max(n => n.Gap)} mm off");

    [Fact]
    public void A_plug_without_a_stroke_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Form(Plain with { Plug = new(new Prism(70, 45), 0) }));

    /// <summary>The floor well under the plug, and all that rises above the floor.</summary>
    private static (Sum Floor, Sum Walls) FloorAndWalls(FormedSheet formed)
    {
        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        var (floor, walls) = (new Sum(), new Sum());
        foreach (var (t, thickness) in formed.Sheet.Mesh.Triangles.Zip(formed.Thickness))
        {
            var (a, b, c) = (formed.Nodes[t.A], formed.Nodes[t.B], formed.Nodes[t.C]);
            var (middle, area) = ((a + b + c) * (1.0 / 3), (b - a).Cross(c - a).Length / 2);
            if (middle.Z > 0.5 - Depth) walls.Add(area, thickness);
            else if (middle is { X: < 60, Y: < 35 }) floor.Add(area, thickness);
        }

        return (floor, walls);
    }

    private static FormedSheet Form(FormingLoad load, double size = Size)
    {
        var mesh = FrameMesh.CrissCross(new(0, 0, 75, 50), size);
        var sheet = ClampedSheet.FromMesh(mesh, HyperelasticMaterial.MooneyRivlin(0.1, 0.1), Gauge, [0], [0]);
        return MembraneForming.Form(sheet, new Box(), load);
    }

    private static double MiddleOfFloor(FormedSheet formed) =>
        formed.ThicknessRatios().MinBy(t => t.Position.Plan.Length).ThicknessRatio * Gauge;

    private sealed class Box : ITool
    {
        public double SignedDistance(Vec3 point) =>
            Math.Min(Math.Min(75 - Math.Abs(point.X), 50 - Math.Abs(point.Y)), point.Z + Depth);
    }

    /// <summary>A block about the origin with a flat bottom at its depth.</summary>
    private sealed class Prism(double halfX, double halfY, double depth = PlugDepth) : ITool
    {
        public double SignedDistance(Vec3 point)
        {
            var (dx, dy, dz) = (Math.Abs(point.X) - halfX, Math.Abs(point.Y) - halfY, -depth - point.Z);
            return new Vec3(Math.Max(dx, 0), Math.Max(dy, 0), Math.Max(dz, 0)).Length
                + Math.Min(Math.Max(dx, Math.Max(dy, dz)), 0);
        }
    }

    private sealed class Sum
    {
        private double volume;

        public double Area { get; private set; }

        public double Mean => volume / Area;

        public void Add(double area, double thickness) => (Area, volume) = (Area + area, volume + area * thickness);
    }
}
