using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Catalogs;
using BuckGen.Physics;
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
        double Excess(double angle) => angle / Math.Sin(angle) is var stretch
            ? modulus * Gauge * (stretch - Math.Pow(stretch, -3)) - pressure * HalfWidth / Math.Sin(angle) : 0;
        var angle = IntervalHalving.Narrow(0.01, Math.PI / 2, a => Excess(a) < 0, count: 60).Low;
        Assert.True(Excess(0.01) < 0 && Excess(Math.PI / 2) > 0);
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

    /// <summary>
    /// By their definition: a larger share of the area reaches up to a thickness at least as large. Of a tray of 3 x 3 x 1 inches
    /// the two meshes gave 0.33 to 0.58 mm for 1 per cent, and 0.30 to 0.61 for 5.
    /// </summary>
    [Fact]
    public void The_range_of_5_percent_lies_nowhere_below_that_of_1_percent()
    {
        var spec = Formed.Spec(BuckKind.Female, 25.4, draft: 5, gauge: 1.524);
        var part = Formed.Design(Formed.Rectangle(76.2, 76.2), spec with
        {
            Stock = [new("board", 6.35, 2000, 2000)],
            Sheet = spec.Sheet! with { Plastic = Catalog.BuiltIn.FindPlastic("pmma") },
            Prediction = new(),
        }).Formed!;

        var (one, five) = (part.ThicknessOf1Percent!.Value, part.ThicknessOf5Percent!.Value);
        Assert.True(one.Low <= five.Low && one.High <= five.High, $"{one} {five}");
        Assert.True(one.Low < one.High && five.Low < five.High);
    }

    /// <summary>A counter that only a cool sheet spans is no fault, but the maker must know.</summary>
    [Fact]
    public void What_only_the_stiffest_sheet_does_not_reach_is_one_note()
    {
        var plastic = Catalog.BuiltIn.FindPlastic("abs")!;
        var spec = Formed.Spec(BuckKind.Male, Depth, draft: 3, gauge: 2) with { Stock = [Formed.Mdf6] };
        var design = Formed.Design(
            Block, spec with { Sheet = spec.Sheet! with { Plastic = plastic }, Prediction = new() });

        Assert.Contains(design.Formed!.Bridged, b => b.Range.Low == 0 && b.Range.High > 1);
        Assert.Single(
            design.Findings, f => f is { Id: "formed-cool", Severity: BuckGen.Findings.Severity.Note, Place: not null });
    }

    [Fact]
    public void An_unnamed_plastic_may_be_any_of_the_catalog() => Assert.Equal(
        new FigureRange(
            Catalog.BuiltIn.Plastic.Min(p => p.HotModulus!.Value.Low),
            Catalog.BuiltIn.Plastic.Max(p => p.HotModulus!.Value.High)),
        MaterialError.UnknownModulus);

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
}
