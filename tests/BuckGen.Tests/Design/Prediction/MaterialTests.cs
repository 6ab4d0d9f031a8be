using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Catalogs;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Prediction;

/// <summary>What the stiffness of the hot sheet does to the prediction: ranges, and counters that do not fill.</summary>
[Trait("Tier", "slow")]
public class MaterialTests
{
    private const double HalfWidth = 8, Depth = 12, Gauge = 1;

    private static readonly Region Block = Shapes.Counter(130, 56, 90, 2 * HalfWidth);

    /// <summary>
    /// A counter over which a sheet sticks to the face on both sides: its strip bulges into an arc of radius T/p. The tension T
    /// of a neo-Hookean strip in plane strain is G·t·(λ - 1/λ³), with λ the arc over the chord. Derived here.
    /// </summary>
    [Fact]
    public void A_stiff_sheet_hangs_over_a_counter_as_an_arc_in_equilibrium()
    {
        const double modulus = 1, pressure = (101_325 - 33_600) * 1e-6;
        var angle = IntervalAngle(a =>
        {
            var stretch = a / Math.Sin(a);
            return modulus * Gauge * (stretch - Math.Pow(stretch, -3)) - pressure * HalfWidth / Math.Sin(a);
        });
        var sag = HalfWidth * (1 - Math.Cos(angle)) / Math.Sin(angle);

        var part = Predict(new() { Modulus = modulus, Stiffening = 0 });

        var bridged = part.Bridged.Where(b => Math.Abs(b.Place.Y - 28) < 2).ToArray();
        Assert.NotEmpty(bridged);
        Assert.InRange(bridged[0].Gap, 0.93 * (Depth - sag), 1.07 * (Depth - sag));
    }

    [Fact]
    public void A_soft_sheet_fills_the_counter() => Assert.Empty(Predict(new() { Modulus = 0.1 }).Bridged);

    /// <summary>Every inside corner stays round; the radius that the pressure leaves is no fault.</summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    public void The_corners_of_a_plain_box_are_not_taken_for_places_that_the_sheet_does_not_reach(double modulus) =>
        Assert.Empty(Predict(Formed.Rectangle(120, 80), BuckKind.Female, new() { Modulus = modulus }).Bridged);

    [Theory]
    [InlineData("petg")]
    [InlineData("hips")]
    public void The_range_of_a_plastic_holds_what_each_stiffness_in_it_gives(string id)
    {
        var plastic = Catalog.BuiltIn.FindPlastic(id)!;
        var modulus = plastic.HotModulus!.Value;

        var part = Predict(new(), plastic);

        Assert.Equal(modulus, part.Modulus);
        foreach (var share in (double[])[0, 0.25, 0.5, 0.75, 1])
        {
            var one = Predict(new() { Modulus = modulus.Low * Math.Pow(modulus.High / modulus.Low, share) }, plastic);
            Assert.InRange(one.Thinnest!.Thickness, part.ThinnestRange!.Value.Low, part.ThinnestRange.Value.High);
            Assert.InRange(one.MeanThickness, part.MeanRange!.Value.Low, part.MeanRange.Value.High);
            Assert.True(one.Modulus.Low == one.Modulus.High);
        }
    }

    [Fact]
    public void A_stiffness_that_is_given_leaves_the_range_of_the_mesh_alone()
    {
        var (given, open) = (Predict(new() { Modulus = 0.1 }), Predict(new()));

        Assert.Equal(new FigureRange(1, 1), given.MaterialSensitivity);
        Assert.True(Width(given) < 0.7 * Width(open), $"{given.ThinnestRange} {open.ThinnestRange}");

        static double Width(FormedPart part) => part.ThinnestRange!.Value.High / part.ThinnestRange.Value.Low - 1;
    }

    private static FormedPart Predict(FormingSpec forming, CatalogPlastic? plastic = null) =>
        Predict(Block, BuckKind.Male, forming, plastic);

    private static FormedPart Predict(Region outline, BuckKind kind, FormingSpec forming, CatalogPlastic? plastic = null)
    {
        var spec = Formed.Spec(kind, Depth, gauge: Gauge);
        return Formed.Design(outline, spec with
        {
            Stock = [Formed.Mdf6],
            Sheet = spec.Sheet! with { Plastic = plastic },
            Prediction = forming,
        }).Formed!;
    }

    private static double IntervalAngle(Func<double, double> excess)
    {
        var (low, high) = (0.01, Math.PI / 2);
        Assert.True(excess(low) < 0 && excess(high) > 0);
        for (var i = 0; i < 60; i++)
            if (excess((low + high) / 2) > 0) high = (low + high) / 2;
            else low = (low + high) / 2;
        return low;
    }
}
