using BuckGen.Geometry;
using BuckGen.Physics.Membranes;
using Xunit;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>Male bucks of many outlines, with draft, on a base: the sheet comes to rest on them and not through them.</summary>
[Trait("Tier", "slow")]
public class MaleBuckTests
{
    private const double Draft = 3;

    /// <summary>A medium vacuum, Pa, for a sheet of 1.5 mm.</summary>
    private const double Vacuum = 80_000;

    [Theory]
    [InlineData(2, 2, 50)]
    [InlineData(5, 3, 25)]
    [InlineData(10, 5, 50)]
    public void A_square_block(double corner, double draft, double height) =>
        AssertForms(Sheet(200, 200, 5), new Frustum(Plans.Rectangle(new(0, 0), 50, 50, corner), height, draft), height);

    [Theory]
    [InlineData('L', 10, 5)]
    [InlineData('L', 50, 5)]
    [InlineData('T', 30, 5)]
    [InlineData('T', 50, 5)]
    [InlineData('O', 30, 5)]
    [InlineData('O', 50, 5)]
    [InlineData('U', 10, 5)]
    // Once blown up in the mouth of the U, where a fold hung over the sheet before it.
    [InlineData('U', 50, 5)]
    [InlineData('U', 30, 2.5)]
    public void A_letter(char letter, double height, double cell) =>
        AssertForms(Sheet(160, 180, cell), new Frustum(Plans.Letter(letter, 3), height, Draft), height);

    [Theory]
    [InlineData(10)]
    [InlineData(50)]
    public void Two_close_neighbours(double height)
    {
        var plan = Plans.All(Plans.Rectangle(new(-32, 0), 28, 40, 4), Plans.Rectangle(new(32, 0), 28, 40, 4));

        AssertForms(Sheet(200, 160, 5), new Frustum(plan, height, Draft), height);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(50)]
    public void A_star(double height) =>
        AssertForms(Sheet(200, 200, 5), new Frustum(Plans.Star(5, 70, 35, 3), height, Draft), height);

    [Theory]
    [InlineData(1, null)]
    [InlineData(2, null)]
    [InlineData(3, 9.0)]
    [InlineData(4, 9.0)]
    public void A_smooth_outline_of_chance_smooth_or_stepped(int seed, double? layer) =>
        AssertForms(Sheet(200, 200, 5), new Frustum(Plans.Blob(seed, 50), 36, Draft, layer), 36);

    /// <summary>
    /// Twice the frame's half side and more, straight and sharp, once burst: web on web, and folds across the planes of symmetry.
    /// </summary>
    [Theory]
    [InlineData(16, 3)]
    [InlineData(20, 1.5)]
    [InlineData(32, 2)]
    public void A_very_tall_sharp_block(int cells, double height)
    {
        var tool = Block.Rectangle(0.5 * Formed.Size, 0.5 * Formed.Size, height * Formed.Size);

        var formed = AssertForms(Formed.Quarter(cells), tool, height * Formed.Size);

        Assert.NotEmpty(formed.WebNodes);
        // The part kept in a quarter stays in its quarter.
        Assert.All(formed.Nodes, p => Assert.True(p.X >= 0 && p.Y >= 0));
        // As much as wraps it has 1/(1 + H); the webs are more.
        Assert.InRange(formed.MeanThickness / formed.Sheet.Thickness, 0.7 / (1 + height), 1 / (1 + height) + 0.01);
    }

    /// <summary>The second size of cell makes more triangles than one thread works on.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(2.8)]
    public void A_second_run_gives_the_same_numbers_and_a_mirror_image_stays_one_webs_and_all(double cell)
    {
        FormedSheet Run() => MembraneForming.Form(
            Sheet(160, 180, cell), new Frustum(Plans.Letter('T', 3), 50, Draft), new(Vacuum) { Rise = 50 });

        var (first, second) = (Run(), Run());

        Assert.NotEmpty(first.WebNodes);
        Assert.Equal(first.Nodes, second.Nodes);
        Assert.Equal(first.WebNodes, second.WebNodes);
        static (long, long) Key(Vec2 p) => ((long)Math.Round(p.X * 1000), (long)Math.Round(p.Y * 1000));
        var flat = first.Sheet.Mesh.Nodes;
        var byPlace = Enumerable.Range(0, flat.Length).ToDictionary(i => Key(flat[i]));
        Assert.All(Enumerable.Range(0, flat.Length), i =>
        {
            var (here, across) = (first.Nodes[i], first.Nodes[byPlace[Key(new(-flat[i].X, flat[i].Y))]]);
            Assert.Equal(0, (here - new Vec3(-across.X, across.Y, across.Z)).Length, 1e-6);
        });
    }

    [Fact]
    public void A_burst_is_reported_with_its_place_and_remedy()
    {
        var blown = MembraneForming.Form(Formed.Disc(6), new NoTool(), new(1e6) { SweptDepth = 100 });
        Assert.Null(blown.FailureMessage);

        var formed = blown with { Outcome = FormingOutcome.Burst };

        Assert.Contains("burst near (", formed.FailureMessage, StringComparison.Ordinal);
        Assert.Contains("less pressure", formed.FailureMessage, StringComparison.Ordinal);
    }

    private static ClampedSheet Sheet(double width, double height, double cell) => ClampedSheet.FromMesh(
        FrameMesh.CrissCross(new(-width / 2, -height / 2, width / 2, height / 2), cell), HyperelasticMaterial.NeoHookean(0.2),
        1.5);

    private static FormedSheet AssertForms(ClampedSheet sheet, ITool tool, double rise)
    {
        var formed = MembraneForming.Form(sheet, tool, new(Vacuum) { Rise = rise });

        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        Assert.Null(formed.FailureMessage);
        Assert.Equal(formed.PlasticVolumeBefore, formed.PlasticVolumeAfter, formed.PlasticVolumeBefore * 1e-3);
        Assert.Equal(sheet.Mesh.Area / formed.Area * sheet.Thickness, formed.MeanThickness, 1e-9);
        Assert.All(formed.Nodes, p => Assert.InRange(p.Z, -1e-6, rise + 1e-6));
        Assert.InRange(ToolPenetration.MaxNodePenetration(formed, tool), -1e-6, 0);
        // A side laid over a square edge lies half its length below it at most; a third is what is seen.
        var (share, place) = ToolPenetration.MaxPenetration(formed, tool);
        Assert.True(share > -0.4, $"{-share:P0} of a side below the surface at {place}");
        Assert.All(formed.Stretches, s => Assert.InRange(s.Max * s.Min, 1e-3, 400));
        Assert.Equal(0, ToolPenetration.InvertedCount(formed, tool));
        return formed;
    }
}
