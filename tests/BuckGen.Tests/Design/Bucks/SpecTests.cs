using BuckGen.Design;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

public class SpecTests
{
    private static readonly (string Says, BuckSpec Spec)[] OutOfRange =
    [
        ("depth is 0 mm; it must be above 0 and at most 1000 mm", PlainBuck.Spec with { Depth = 0 }),
        ("depth is -5 mm", PlainBuck.Spec with { Depth = -5 }),
        ("depth is NaN", PlainBuck.Spec with { Depth = double.NaN }),
        ("depth is 1001 mm", PlainBuck.Spec with { Depth = 1001 }),
        ("draft is -46 degrees; it must be from -45 to 45 degrees", PlainBuck.Spec with { Draft = -46 }),
        ("draft is 89 degrees", PlainBuck.Spec with { Draft = 89 }),
        ("draft is NaN", PlainBuck.Spec with { Draft = double.NaN }),
        ("shrinkage is 11 %", PlainBuck.Spec with { Shrinkage = 11 }),
        ("depth tolerance is -1 mm", PlainBuck.Spec with { DepthTolerance = -1 }),
        ("block margin is 0 mm", PlainBuck.Spec with { BlockMargin = 0 }),
        ("dowel diameter is 0.5 mm", PlainBuck.Spec with { Dowels = new(0.5) }),
        ("dowel fit is 3 mm", PlainBuck.Spec with { Dowels = new(6, 3) }),
        ("dowel wall is 0 mm", PlainBuck.Spec with { Dowels = new(6, 0.15, 0) }),
        ("letter height is 1 mm", PlainBuck.Spec with { LetterHeight = 1 }),
        ("mitre limit is 0.5; it must be from 1 to 20", PlainBuck.Spec with { Corners = new(Corners.Mitre, 0.5) }),
        ("tolerance is 2 mm", PlainBuck.Spec with { Tolerance = new(2) }),
        ("base margin is -1 mm", PlainBuck.Spec with { Base = new(PlainBuck.Mdf12, -1) }),
        ("No stock is given", PlainBuck.Spec with { Stock = [] }),
        ("thickness of \"thin\" is 0.1 mm; it must be from 0.2 to 100 mm", PlainBuck.Spec with { Stock = [new("thin", 0.1)] }),
        ("width of a board of \"small\" is 5 mm; it must be from 10 to 10000 mm",
            PlainBuck.Spec with { Stock = [new("small", 12, 5)] }),
        ("thickness of \"none\" is NaN mm", PlainBuck.Spec with { Base = new(new("none", double.NaN)) }),
    ];

    public static TheoryData<string> Faults => [.. OutOfRange.Select(r => r.Says)];

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_number_out_of_range_is_refused_by_name_value_and_limit(string says)
    {
        var spec = OutOfRange.Single(r => r.Says == says).Spec;

        var message = Assert.Throws<SpecException>(() => PlainBuck.Create(Shapes.Rectangle(100, 60), spec)).Message;

        Assert.Contains(says, message);
        Assert.DoesNotContain('\n', message);
    }

    [Fact]
    public void The_limits_themselves_are_taken()
    {
        PlainBuck.Spec.Validate();
        (PlainBuck.Spec with { Draft = 0 }).Validate();
        (PlainBuck.Spec with { Draft = 45, Shrinkage = 10, Depth = 1000, Tolerance = new(0.0005) }).Validate();
    }

    [Fact]
    public void A_jig_has_a_core_and_a_bed_unless_they_are_left_out()
    {
        Assert.True(new JigSpec().Core);
        Assert.True(new JigSpec().Bed);
    }

    [Fact]
    public void An_outline_of_nothing_is_refused() =>
        Assert.StartsWith("drawn: no closed outline",
            Assert.Throws<OutlineException>(() => PlainBuck.Create(Region.Empty)).Message);

    [Fact]
    public void Work_can_be_stopped()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();

        Assert.ThrowsAny<OperationCanceledException>(() =>
            BuckDesign.Create(Outline.FromRegion("drawn", Shapes.Rectangle(100, 60)), PlainBuck.Spec,
                cancellation: stopped.Token));
    }
}
