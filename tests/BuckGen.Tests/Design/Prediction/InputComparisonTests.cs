using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Catalogs;
using BuckGen.Physics.Membranes;
using BuckGen.Settings;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Prediction;

/// <summary>What the uncertain inputs do to the thinnest wall; sag and a colder edge.</summary>
[Trait("Tier", "slow")]
public class InputComparisonTests
{
    private static readonly Region Letter = Shapes.Counter(90, 70, 50, 32);

    private static readonly Bounds Opening = new(10, 20, 210, 120);

    private static readonly TriangleMesh Mesh = FrameMesh.CrissCross(Opening, 10);

    private static readonly Lazy<FormedPart> Compared = new(() => Predict(new() { CompareInputs = true }));

    [Fact]
    public void Every_input_is_varied_once_and_the_one_that_moves_the_wall_most_comes_first()
    {
        var effects = Compared.Value.InputEffects;

        Assert.Equal(Enum.GetValues<VariedInput>(), effects.Select(e => e.Input).Order());
        double[] changes = [.. effects.Where(e => e.Change is not null).Select(e => Math.Abs(e.Change!.Value))];
        Assert.True(changes.Length >= 6, $"{changes.Length}");
        Assert.Equal(changes.OrderDescending(), changes);
        Assert.All(effects.Skip(changes.Length), e => Assert.Null(e.Change));
    }

    [Fact]
    public void An_effect_that_is_not_known_comes_last() => Assert.Equal(
        [VariedInput.Gauge, VariedInput.Vacuum, VariedInput.Friction],
        InputComparison.Ordered(
        [
            new(VariedInput.Friction, null, 0.3, 0.5, null),
            new(VariedInput.Vacuum, 1, 2, 0.5, 0.6),
            new(VariedInput.Gauge, 1, 2, 0.5, 0.3),
        ]).Select(e => e.Input));

    /// <summary>
    /// A membrane depends on pressure over modulus and gauge: less vacuum is a stiffer sheet, and both leave corners thicker.
    /// A thinner sheet is thinner, but fills corners a little more.
    /// </summary>
    [Theory]
    [InlineData(VariedInput.HotStiffness, 1.02, 10)]
    [InlineData(VariedInput.Vacuum, 1.001, 1.5)]
    [InlineData(VariedInput.Gauge, 0.9, 0.96)]
    public void An_effect_has_the_sense_that_mechanics_gives_it(object input, double min, double max)
    {
        var effect = Compared.Value.InputEffects.Single(e => e.Input.Equals(input));

        Assert.InRange((effect.ThinnestTo / effect.ThinnestFrom)!.Value, min, max);
    }

    [Fact]
    public void Nothing_is_compared_unless_it_is_asked_for() => Assert.Empty(Predict(new()).InputEffects);

    [Fact]
    public void A_stiffness_that_is_given_is_not_varied() => Assert.DoesNotContain(
        Predict(new() { CompareInputs = true, Modulus = 0.2 }).InputEffects, e => e.Input == VariedInput.HotStiffness);

    [Fact]
    public void The_sheet_sags_most_in_its_middle_and_not_at_the_frame()
    {
        var sheet = Sheet(new() { Sag = 12 });

        Assert.Equal(12, sheet.Sag.Max(), 1e-9);
        Assert.Equal(Opening.Centre, Mesh.Nodes[sheet.Sag.IndexOf(sheet.Sag.Max())]);
        Assert.All(sheet.Sag.Zip(sheet.BoundaryConditions), s => Assert.True(s.First > 0 || s.Second != BoundaryCondition.None));
        Assert.Empty(sheet.RelativeModulus);
    }

    [Fact]
    public void The_sheet_is_stiffer_only_near_the_frame()
    {
        var sheet = Sheet(new() { EdgeStiffness = 4, EdgeWidth = 25 });

        Assert.InRange(sheet.RelativeModulus.Max(), 3, 4);
        Assert.Equal(1, sheet.RelativeModulus.Min());
        Assert.All(Mesh.Triangles.Zip(sheet.RelativeModulus), t =>
        {
            var middle = (Mesh.Nodes[t.First.A] + Mesh.Nodes[t.First.B] + Mesh.Nodes[t.First.C]) * (1.0 / 3);
            Assert.Equal(!Opening.Grown(-25).Contains(new Bounds(middle.X, middle.Y, middle.X, middle.Y)), t.Second > 1);
        });
        Assert.Empty(sheet.Sag);
    }

    [Fact]
    public void A_sag_changes_the_wall_and_no_plastic_is_lost()
    {
        var (flat, sagged) = (Predict(new() { Modulus = 0.2 }), Predict(new() { Modulus = 0.2, Sag = 25 }));

        Assert.True(sagged.IsConverged);
        Assert.InRange(sagged.VolumeError, -0.001, 0.001);
        Assert.InRange(sagged.Thinnest!.Thickness / flat.Thinnest!.Thickness, 0.5, 1.5);
        Assert.NotEqual(flat.Thinnest.Thickness, sagged.Thinnest.Thickness);
    }

    [Fact]
    public void A_sag_deeper_than_a_quarter_of_the_frame_is_not_predicted()
    {
        var design = Design(new() { Sag = 200 });

        Assert.Null(design.Formed);
        var why = Assert.Single(design.Findings, f => f.Id == "wall-not-predicted");
        Assert.Contains("a sag of 200 mm", why.Message);
        Assert.Equal(200, why.Value);
    }

    [Theory]
    [InlineData(-1, 1, 30)]
    [InlineData(501, 1, 30)]
    [InlineData(0, 0.9, 30)]
    [InlineData(0, 21, 30)]
    [InlineData(0, 1, 0.5)]
    public void Settings_out_of_their_range_are_refused(double sag, double stiffness, double width) =>
        Assert.Throws<SpecException>(() => Design(new() { Sag = sag, EdgeStiffness = stiffness, EdgeWidth = width }));

    private static ClampedSheet Sheet(FormingSpec forming) =>
        SheetBefore.Create(Mesh, HyperelasticMaterial.NeoHookean(0.2), 1, Opening, forming);

    private static FormedPart Predict(FormingSpec forming) => Design(forming).Formed!;

    private static BuckGen.Design.BuckDesign Design(FormingSpec forming)
    {
        var spec = Formed.Spec(BuckKind.Male, 12, draft: 5);
        return Formed.Design(Letter, spec with
        {
            Stock = [Formed.Mdf6],
            Sheet = spec.Sheet! with { Plastic = Catalog.BuiltIn.FindPlastic("petg") },
            Prediction = forming,
        });
    }
}
