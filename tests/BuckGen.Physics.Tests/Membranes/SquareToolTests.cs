using BuckGen.Geometry;
using BuckGen.Physics.Membranes;
using Xunit;

namespace BuckGen.Physics.Tests.Membranes;

[Trait("Tier", "slow")]
public class SquareToolTests
{
    private const double Full = 30 * Formed.PressureUnit;

    /// <summary>
    /// Figures computed for the project by an explicit run of 32 768 triangles, stable to 0.001 from a quarter of that on.
    /// </summary>
    [Fact]
    public void A_square_box_half_as_deep_as_half_its_side()
    {
        var formed = MembraneForming.Form(Formed.Quarter(32), new Cavity(Formed.Size, 0.5 * Formed.Size), new(Full));

        Assert.Equal(0.763, formed.ThicknessRatios().Where(p => p.Position.Plan.Length < 0.08 * Formed.Size)
            .Average(p => p.ThicknessRatio), 0.005);
        bool OnFloor(Vec3 p) => p.Y < 0.06 * Formed.Size && p.Z < -0.49 * Formed.Size;
        bool OnWall(Vec3 p) => p.Y < 0.06 * Formed.Size && p.X > 0.98 * Formed.Size;
        double[] floor = [.7425, .678, .602, .495], floorAt = [.216, .444, .611, .804], wall = [.662, .606, .538],
            wallAt = [.18, .37, .57];
        Assert.All(floor, (t, i) =>
            Assert.Equal(t, formed.ThicknessRatioAt(OnFloor, p => p.X / Formed.Size, floorAt[i]), t * 0.02));
        Assert.All(wall, (t, i) =>
            Assert.Equal(t, formed.ThicknessRatioAt(OnWall, p => -p.Z / (0.5 * Formed.Size), wallAt[i]), t * 0.02));
        // Volume balance: 4 over 4 + 8·0.5 for a full box; the rounded edges that the pressure leaves make it a little more.
        Assert.InRange(formed.MeanThickness / formed.Sheet.Thickness, 0.5, 0.52);
        Assert.All(formed.FreeNodes, o => Assert.InRange(o.Gap, 0, 0.05 * Formed.Size));
    }

    /// <summary>
    /// Upright edges make webs. The sheet must lie on the tool elsewhere, no triangle may be blown up or lie below the tool's
    /// surface by more than its own chord across an edge.
    /// </summary>
    [Theory]
    [InlineData(16, 0.5, 0)]
    [InlineData(32, 0.5, 0)]
    [InlineData(24, 1.0, 0)]
    [InlineData(24, 0.5, 0.1)]
    public void A_square_block_webs_at_its_upright_edges_and_nothing_bursts(int cells, double height, double corner)
    {
        var tool = Block.Rectangle(0.5 * Formed.Size, 0.5 * Formed.Size, height * Formed.Size, corner * Formed.Size);

        var formed = MembraneForming.Form(Formed.Quarter(cells), tool, new(Full) { Rise = height * Formed.Size });

        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        Assert.Equal(formed.PlasticVolumeBefore, formed.PlasticVolumeAfter, formed.PlasticVolumeBefore * 1e-9);
        if (corner == 0) Assert.NotEmpty(formed.WebNodes);
        Assert.All(formed.WebNodes, n => Assert.Equal(formed.Nodes[n].X, formed.Nodes[n].Y, 0.2 * Formed.Size));
        Assert.All(formed.Nodes, p => Assert.InRange(p.Z, -1e-6 * Formed.Size, height * Formed.Size * (1 + 1e-9)));
        // A full wrapping has the area 4 + 4·H of the half-sides squared; webs add to it, bridged corners take away.
        Assert.Equal(1 / (1 + height), formed.MeanThickness / formed.Sheet.Thickness, 0.02);
        Assert.All(formed.Sheet.Mesh.Triangles, t =>
            Assert.True(tool.SignedDistance(formed.CentroidOf(t)) > -2 * Formed.Size / cells));
    }

    [Fact]
    public void A_block_off_the_middle_of_a_whole_frame_and_its_neighbour()
    {
        var (wide, narrow) = (Block.Rectangle(25, 40, 40, 4), Block.Rectangle(15, 30, 40, 4));
        var tool = new Both(wide, narrow, new(30, 0, 0), new(-40, 10, 0));

        var formed = MembraneForming.Form(Formed.Square(40), tool, new(Full) { Rise = 40 });

        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        Assert.All(formed.Nodes, p => Assert.InRange(p.Z, -1e-4, 40 + 1e-4));
        Assert.True(formed.Nodes.All(p => tool.SignedDistance(p) > -1e-4));
        Assert.InRange(formed.MeanThickness / formed.Sheet.Thickness, 0.3, 1);
    }

    [Fact]
    public void A_second_run_gives_the_same_numbers()
    {
        FormedSheet Run() => MembraneForming.Form(Formed.Quarter(12), new Cavity(Formed.Size, 0.5 * Formed.Size), new(Full));

        var (first, second) = (Run(), Run());

        Assert.Equal(first.Steps, second.Steps);
        Assert.Equal(first.Nodes, second.Nodes);
        Assert.Equal(first.Thickness, second.Thickness);
    }

    [Fact]
    public void A_mirror_image_stays_one()
    {
        var formed = MembraneForming.Form(Formed.Square(20), new Cavity(0.9 * Formed.Size, 0.5 * Formed.Size), new(Full));

        static (long, long) Key(Vec2 p) => ((long)Math.Round(p.X * 1000), (long)Math.Round(p.Y * 1000));
        var flat = formed.Sheet.Mesh.Nodes;
        var byPlace = Enumerable.Range(0, flat.Length).ToDictionary(i => Key(flat[i]));
        Assert.All(Enumerable.Range(0, flat.Length), i =>
        {
            var (here, across) = (formed.Nodes[i], formed.Nodes[byPlace[Key(new(-flat[i].X, flat[i].Y))]]);
            Assert.Equal(0, (here - new Vec3(-across.X, across.Y, across.Z)).Length, 1e-6 * Formed.Size);
        });
    }

    /// <summary>Common practice, no source.</summary>
    [Fact]
    public void A_deep_box_formed_into_thins_to_film_and_over_its_outside_it_does_not()
    {
        // 80 mm deep, 100 mm square, a sheet of 0.5 mm; 3 mm off the sharp edges, where the mesh would decide.
        const double half = 50, depth = 80, clear = 3;
        ClampedSheet Sheet(double size) =>
            ClampedSheet.FromMesh(FrameMesh.CrissCross(new(0, 0, size, size), size / 24), HyperelasticMaterial.NeoHookean(0.2),
            0.5, [0], [0]);
        const double pressure = 30 * 0.2 * 0.5 / half * 1e6;

        var into = MembraneForming.Form(Sheet(half), new Cavity(half, depth), new(pressure));
        var over = MembraneForming.Form(Sheet(2 * half), Block.Rectangle(half, half, depth), new(pressure) { Rise = depth });

        bool OffEdges(Vec3 p) => new[] { half - p.X, half - p.Y, depth + p.Z }.Order().ElementAt(1) > clear;
        bool OnBlock(Vec3 p) => p.Z > 0.1 * depth && (half - p.X > clear || half - p.Y > clear) && Math.Max(p.X, p.Y) < half + 1;
        var (film, wall) = (into.Thinnest(OffEdges)!.Value.Thickness, over.Thinnest(OnBlock)!.Value.Thickness);
        Assert.InRange(film, 0, 0.05);
        Assert.InRange(wall, 3 * film, 0.5);
    }

    /// <summary>Common practice, no source: deeper and narrower is always thinner.</summary>
    [Fact]
    public void Deeper_and_narrower_is_thinner()
    {
        double Middle(double width, double depth)
        {
            var sheet =
                ClampedSheet.FromMesh(FrameMesh.CrissCross(new(0, 0, width, 100), 5), HyperelasticMaterial.NeoHookean(0.2), 1,
                [0], [0]);
            var formed = MembraneForming.Form(sheet, new Trench(width, 100, depth), new(30 * 0.2 / width * 1e6));
            return formed.Thickness.Zip(sheet.Mesh.Triangles).Where(t => formed.CentroidOf(t.Second).Plan.Length < 8)
                .Average(t => t.First);
        }

        var (shallow, deep, deeper, narrow) = (Middle(100, 30), Middle(100, 50), Middle(100, 80), Middle(60, 50));

        Assert.True(shallow > deep && deep > deeper && deep > narrow, $"{shallow} {deep} {deeper} {narrow}");
    }

    private sealed class Both(Block first, Block second, Vec3 one, Vec3 other) : ITool
    {
        public double SignedDistance(Vec3 point) =>
            Math.Min(first.SignedDistance(point - one), second.SignedDistance(point - other));
    }

    private sealed class Trench(double halfX, double halfY, double depth) : ITool
    {
        public double SignedDistance(Vec3 point) =>
            Math.Min(Math.Min(halfX - Math.Abs(point.X), halfY - Math.Abs(point.Y)), point.Z + depth);
    }
}
