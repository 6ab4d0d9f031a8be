using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;
using Xunit;

namespace BuckGen.Tests.Design.Forming;

/// <summary>The buck is made so that the part is to size.</summary>
[Trait("Tier", "slow")]
public class SizingTests
{
    [Theory]
    [InlineData(BuckKind.Male, Drawn.Buck, 0)]
    [InlineData(BuckKind.Male, Drawn.Inside, 0)]
    [InlineData(BuckKind.Male, Drawn.Outside, -1)]
    [InlineData(BuckKind.Female, Drawn.Buck, 0)]
    [InlineData(BuckKind.Female, Drawn.Outside, 0)]
    [InlineData(BuckKind.Female, Drawn.Inside, 1)]
    public void The_face_that_does_not_touch_the_buck_moves_it_by_the_wall(BuckKind kind, Drawn drawn, int direction)
    {
        var design = Formed.Design(Formed.Rectangle(100, 60), Formed.Spec(kind, 20, draft: 5, gauge: 2) with { Drawn = drawn });

        var asDrawn = Formed.Blank(Formed.Rectangle(100, 60), Formed.Spec(kind, 20, draft: 5, gauge: 2));
        var wall = asDrawn.MeanThickness / Math.Cos(5 * Math.PI / 180);
        Assert.Equal(direction * wall, design.Sizing.WallAllowance, 1e-9);
        // The outline is to size at the face, the top of the stack.
        var top = kind == BuckKind.Male ? design.Layers[^1].Region : design.Footprint;
        var size = kind == BuckKind.Male ? 100 + 2 * Math.Tan(5 * Math.PI / 180) : 100;
        Assert.Equal(size + 2 * direction * wall, top.Bounds.Width, 1e-4);
    }

    /// <summary>
    /// Mould = part / (1 - shrinkage), not part times (1 + shrinkage): 300 mm at 0.5 and at 2 per cent (definition).
    /// </summary>
    [Theory]
    [InlineData(0.5, 301.508)]
    [InlineData(2, 306.122)]
    public void Shrinkage_is_divided_out(double shrinkage, double mould)
    {
        var design = Formed.Design(Formed.Rectangle(300, 100), Formed.Spec(BuckKind.Male, 10) with { Shrinkage = shrinkage });

        Assert.Equal(mould, design.Footprint.Bounds.Width, 5e-4);
        Assert.Equal(shrinkage, design.Sizing.Shrinkage);
    }

    /// <summary>
    /// The catalog's range of the plastic, for the kind of buck: a sheet supplier gives PP 2 to 3 per cent over a male, 3 to 4
    /// in a female one.
    /// </summary>
    [Theory]
    [InlineData("pp", BuckKind.Male, Drawn.Inside)]
    [InlineData("pp", BuckKind.Female, Drawn.Outside)]
    [InlineData("abs", BuckKind.Male, Drawn.Outside)]
    public void The_plastic_tells_the_shrinkage_where_the_part_is_drawn(string plastic, BuckKind kind, Drawn drawn)
    {
        var entry = Catalog.BuiltIn.FindPlastic(plastic)!;
        var spec = Formed.Spec(kind, 20, 5, gauge: 2) with { Drawn = drawn, Sheet = new() { Gauge = 2, Plastic = entry } };

        var range = kind == BuckKind.Female ? entry.ShrinkageFemale ?? entry.Shrinkage : entry.Shrinkage;
        Assert.Equal(range.Middle, Formed.Design(Formed.Rectangle(100, 60), spec).Sizing.Shrinkage);
        Assert.Equal(0, Formed.Design(Formed.Rectangle(100, 60), spec with { Drawn = Drawn.Buck }).Sizing.Shrinkage);
        Assert.Equal(0.25, Formed.Design(Formed.Rectangle(100, 60), spec with { Shrinkage = 0.25 }).Sizing.Shrinkage);
    }

    [Fact]
    public void A_drawn_part_of_unknown_plastic_is_reported()
    {
        var spec = Formed.Spec(BuckKind.Male, 20, 5) with { Drawn = Drawn.Inside };

        Assert.Contains(Formed.Design(Formed.Rectangle(100, 60), spec).Findings, f => f.Id == "shrinkage-unknown");
        Assert.DoesNotContain(Formed.Design(Formed.Rectangle(100, 60), spec with { Shrinkage = 0 }).Findings,
            f => f.Id == "shrinkage-unknown");
    }

    [Fact]
    public void A_wall_that_leaves_nothing_is_refused() =>
        Assert.Contains("nothing is left of the outline when the wall",
            Assert.Throws<BuckGen.Intake.Outlines.OutlineException>(() => Formed.Design(
            Region.FromLoops([Loop.Rectangle(new(0, 0, 200, 3))]),
            Formed.Spec(BuckKind.Male, 10, gauge: 4) with { Drawn = Drawn.Outside })).Message);
}
