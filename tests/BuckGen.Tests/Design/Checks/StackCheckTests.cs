using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry.Tests;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Design.Checks;

public class StackCheckTests
{
    [Fact]
    public void A_plain_buck_has_no_findings() => Assert.Empty(PlainBuck.Create(Shapes.Rectangle(100, 60)).Findings);

    [Theory]
    [InlineData(31, 36, 5.0, "5.00 mm more")]
    [InlineData(29, 24, -5.0, "5.00 mm less")]
    public void A_depth_missed_by_more_than_the_tolerance_is_reported(double wanted, double real, double miss, string says)
    {
        var finding = Assert.Single(PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Depth = wanted }).Findings);

        Assert.Equal(("depth-missed", Severity.Warning), (finding.Id, finding.Severity));
        Assert.Contains(FormattableString.Invariant($"{real:F2} mm"), finding.Message);
        Assert.Contains(says, finding.Message);
        Assert.Equal(miss, finding.Value!.Value, 1e-9);
        Assert.Equal(0.5, finding.Limit);
    }

    [Fact]
    public void A_depth_missed_within_the_tolerance_is_not_reported() =>
        Assert.Empty(PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Depth = 36.5 }).Findings);

    [Fact]
    public void A_buck_that_comes_to_a_ridge_below_its_face_is_an_error()
    {
        // To size at the base, 4 mm wide: gone 2/tan 5° = 22.9 mm up, so two of three layers are cut.
        var design = PlainBuck.Create(Shapes.Rectangle(100, 4), PlainBuck.Spec with { OutlineAt = OutlineAt.Base });

        var finding = Assert.Single(design.Named("nothing-left"));
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Contains("2 of 3 layers", finding.Message);
        Assert.Equal(24, finding.Height!.Value, 1e-9);
        Assert.Equal(2, design.Layers.Length);
    }

    [Fact]
    public void A_cavity_that_closes_above_its_floor_is_an_error()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 4), PlainBuck.Spec with { Kind = BuckKind.Female });

        Assert.Equal(Severity.Error, Assert.Single(design.Named("cavity-closes")).Severity);
    }

    [Fact]
    public void A_cavity_without_a_floor_is_reported_and_one_with_a_base_is_not()
    {
        var cavity = PlainBuck.Spec with { Kind = BuckKind.Female };

        Assert.Single(PlainBuck.Create(Shapes.Rectangle(100, 60), cavity).Named("cavity-open"));
        Assert.Empty(PlainBuck.Create(Shapes.Rectangle(100, 60), cavity with { Base = new(PlainBuck.Mdf12) }).Findings);
    }

    [Fact]
    public void The_gravest_finding_stands_first()
    {
        var severities =
            PlainBuck.Create(Shapes.Rectangle(100, 4), PlainBuck.Spec with { OutlineAt = OutlineAt.Base, Depth = 40 }).Findings
                .Select(f => f.Severity).ToArray();

        Assert.True(severities.Length > 2);
        Assert.Equal(severities.OrderDescending(), severities);
    }

    [Fact]
    public void Every_finding_says_what_to_do_and_where_the_rule_comes_from()
    {
        var awkward = Shapes.Union(Shapes.Counter(60, 60, 3, 30), Shapes.DiscAt(90, 30, 2), Shapes.RectangleAt(62, 0, 20, 20));

        var findings = PlainBuck.Create(awkward, PlainBuck.Spec with { Depth = 40 }).Findings;

        Assert.True(findings.Select(f => f.Id).Distinct().Count() >= 4);
        Assert.All(findings, f =>
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", f.Id);
            Assert.EndsWith(".", f.Message);
            Assert.EndsWith(".", f.Remedy);
            Assert.NotEmpty(f.Source);
            Assert.DoesNotContain('\n', f.Message + f.Remedy);
        });
    }
}
