using BuckGen.Geometry;
using BuckGen.Physics.Membranes;
using Xunit;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>Sheets that are colder, and so stiffer, in places.</summary>
public class RelativeModulusTests
{
    [Fact]
    public void Everywhere_the_same_it_is_another_material()
    {
        var (sheet, tool, load) = (Formed.Disc(12), new Cup(70, 30), new FormingLoad(10 * Formed.PressureUnit));
        var stiffer = HyperelasticMaterial.NeoHookean(3 * sheet.Material.ShearModulus);

        var (factor, material) = (
            MembraneForming.Form(sheet with { RelativeModulus = [.. sheet.Mesh.Triangles.Select(_ => 3.0)] }, tool, load),
            MembraneForming.Form(sheet with { Material = stiffer }, tool, load));

        Assert.All(factor.Thickness.Zip(material.Thickness), t => Assert.InRange(t.First / t.Second, 0.99, 1.01));
    }

    /// <summary>
    /// The tension of a free strip is the same all along. In plane strain that of a neo-Hookean sheet is G·t·(λ - 1/λ³), so the
    /// stretches of both parts follow from each other. Derived here.
    /// </summary>
    [Fact]
    public void The_tension_of_a_free_strip_is_the_same_in_its_stiff_and_its_soft_part()
    {
        const double stiff = 2.5;
        var strip = Formed.Strip(40);
        var isCold = strip.Mesh.Triangles.Select(t => IsCold(strip.Mesh, t)).ToArray();
        var cold = strip with { RelativeModulus = [.. isCold.Select(c => c ? stiff : 1)] };

        var formed = MembraneForming.Form(cold, new NoTool(), new(0.9 * Formed.PressureUnit));

        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        double[] tensions = [.. formed.Stretches.Select((s, i) => (isCold[i] ? stiff : 1) * (s.Max - Math.Pow(s.Max, -3)))];
        Assert.All(tensions, t => Assert.InRange(t / tensions.Average(), 0.98, 1.02));
        Assert.True(Mean(false) > 1.05 * Mean(true));

        double Mean(bool ofCold) => formed.Stretches.Where((_, i) => isCold[i] == ofCold).Average(s => s.Max);
    }

    [Fact]
    public void A_modulus_for_some_triangles_or_out_of_range_is_refused()
    {
        var disc = Formed.Disc(4);
        void Form(params double[] modulus) =>
            MembraneForming.Form(disc with { RelativeModulus = [.. modulus] }, new NoTool(), new(1));

        Assert.Contains("must be empty or have", Assert.Throws<ArgumentException>(() => Form(1)).Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => Form([.. disc.Mesh.Triangles.Select(_ => 0.0)]));
    }

    private static bool IsCold(TriangleMesh mesh, MeshTriangle t) =>
        mesh.Nodes[t.A].X + mesh.Nodes[t.B].X + mesh.Nodes[t.C].X > 3 * 0.6 * Formed.Size;
}
