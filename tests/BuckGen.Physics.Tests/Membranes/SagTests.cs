using BuckGen.Geometry;
using BuckGen.Physics.Membranes;
using Xunit;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>Sheets that sagged while they were heated.</summary>
public class SagTests
{
    private const double Depth = 40;

    /// <summary>
    /// A sheet that sags into the very shape of a bowl lies on it everywhere without being drawn. By geometry alone its thickness
    /// is that before times the cosine of the slope: what sags straight down keeps its volume over the same plan. Derived here.
    /// </summary>
    [Fact]
    public void A_sheet_that_sags_into_the_shape_of_the_tool_is_as_thick_as_the_sag_leaves_it()
    {
        var formed = MembraneForming.Form(Sagged(Formed.Disc(24), Depth), new Bowl(Depth), new(20 * Formed.PressureUnit));

        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        double[] ratios =
        [
            .. formed.ThicknessRatios().Select(t =>
                t.ThicknessRatio * Math.Sqrt(1 + Squared(2 * Depth * t.Position.Plan.Length / Squared(Formed.Size)))),
        ];
        Assert.InRange(ratios.Average(), 0.998, 1.002);
        // Where two rings of the mesh meet, a slack sheet gathers a little before it lies down.
        Assert.InRange(ratios.Count(r => Math.Abs(r - 1) > 0.015), 0, ratios.Length * 3 / 100);
        Assert.All(ratios, r => Assert.InRange(r, 0.94, 1.06));
        // Drawn from flat it is thinnest in the middle, where a sag leaves it thickest.
        Assert.True(MembraneForming.Form(Formed.Disc(24), new Bowl(Depth), new(20 * Formed.PressureUnit))
            .ThicknessRatios().MinBy(t => t.Position.Plan.Length).ThicknessRatio < 0.85);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    public void No_plastic_is_lost(double rise)
    {
        ITool tool = rise > 0 ? Block.Disc(50, rise) : new Bowl(Depth);

        var formed = MembraneForming.Form(Sagged(Formed.Disc(16), 15), tool, new(10 * Formed.PressureUnit) { Rise = rise });

        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        Assert.Equal(formed.PlasticVolumeBefore, formed.PlasticVolumeAfter, formed.PlasticVolumeBefore * 1e-9);
        Assert.Equal(rise, formed.Nodes.Max(n => n.Z), 0.5);
    }

    [Fact]
    public void A_flat_sheet_has_no_sag() => Assert.Equal(
        MembraneForming.Form(Formed.Disc(8), new Cup(70, 30), new(10 * Formed.PressureUnit)).Nodes,
        MembraneForming.Form(Sagged(Formed.Disc(8), 0), new Cup(70, 30), new(10 * Formed.PressureUnit)).Nodes);

    [Fact]
    public void A_sag_of_the_clamped_edge_or_of_some_nodes_is_refused()
    {
        var disc = Formed.Disc(4);
        var edgeToo = disc with { Sag = [.. disc.BoundaryConditions.Select(_ => 1.0)] };
        void Form(ClampedSheet sheet) => MembraneForming.Form(sheet, new NoTool(), new(1));

        Assert.Contains("can't sag", Assert.Throws<ArgumentException>(() => Form(edgeToo)).Message);
        Assert.Contains("must be empty or have", Assert.Throws<ArgumentException>(() => Form(disc with { Sag = [1] })).Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => Form(Sagged(disc, -1)));
    }

    private static double Squared(double value) => value * value;

    private static ClampedSheet Sagged(ClampedSheet disc, double sag) => disc with
    {
        Sag =
        [
            .. disc.Mesh.Nodes.Zip(disc.BoundaryConditions, (n, b) => b == BoundaryCondition.Clamped
                ? 0
                : sag * (1 - n.LengthSquared / (Formed.Size * Formed.Size))),
        ],
    };

    /// <summary>A paraboloid that ends at the frame.</summary>
    private sealed class Bowl(double depth) : ITool
    {
        private readonly double maxSlope = 2 * depth / Formed.Size;

        public double SignedDistance(Vec3 point) =>
            (point.Z + depth * (1 - point.Plan.LengthSquared / Squared(Formed.Size))) / Math.Sqrt(1 + Squared(maxSlope));
    }
}
