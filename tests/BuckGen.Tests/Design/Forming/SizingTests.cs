using BuckGen.Design.Bucks;
using BuckGen.Design.Parts;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;
using Xunit;

namespace BuckGen.Tests.Design.Forming;

/// <summary>The buck is made so that the part is to size.</summary>
[Trait("Tier", "slow")]
public class SizingTests
{
    [Theory]
    [InlineData(BuckKind.Male, PartSide.Inside, 0)]
    [InlineData(BuckKind.Male, PartSide.Outside, -1)]
    [InlineData(BuckKind.Female, PartSide.Outside, 0)]
    [InlineData(BuckKind.Female, PartSide.Inside, 1)]
    public void The_side_that_does_not_touch_the_buck_moves_it_by_the_wall(BuckKind kind, PartSide side, int direction)
    {
        var design = Formed.Design(Formed.Rectangle(100, 60), Formed.Spec(kind, 20, draft: 5, gauge: 2) with
        {
            Part = new() { Side = side, At = PartEnd.Face },
        });

        // The wall is the mean that the sized buck itself has.
        var wall = design.Blank!.MeanThickness / Math.Cos(5 * Math.PI / 180);
        Assert.Equal(direction * wall, design.Sizing.WallAllowance, 0.003);
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
    [InlineData("pp", BuckKind.Male, PartSide.Inside)]
    [InlineData("pp", BuckKind.Female, PartSide.Outside)]
    [InlineData("abs", BuckKind.Male, PartSide.Outside)]
    public void The_plastic_gives_the_shrinkage_of_an_ordered_part(string plastic, BuckKind kind, PartSide side)
    {
        var entry = Catalog.BuiltIn.FindPlastic(plastic)!;
        var spec = Formed.Spec(kind, 20, 5, gauge: 2) with
        {
            Part = new() { Side = side },
            Sheet = new() { Gauge = 2, Plastic = entry },
        };

        var range = kind == BuckKind.Female ? entry.ShrinkageFemale ?? entry.Shrinkage : entry.Shrinkage;
        Assert.Equal(range.Middle, Formed.Design(Formed.Rectangle(100, 60), spec).Sizing.Shrinkage);
        Assert.Equal(0, Formed.Design(Formed.Rectangle(100, 60), spec with { Part = null }).Sizing.Shrinkage);
        Assert.Equal(0.25, Formed.Design(Formed.Rectangle(100, 60), spec with { Shrinkage = 0.25 }).Sizing.Shrinkage);
    }

    [Fact]
    public void A_drawn_part_of_unknown_plastic_is_reported()
    {
        var spec = Formed.Spec(BuckKind.Male, 20, 5) with { Part = new() };

        Assert.Contains(Formed.Design(Formed.Rectangle(100, 60), spec).Findings, f => f.Id == "shrinkage-unknown");
        Assert.DoesNotContain(Formed.Design(Formed.Rectangle(100, 60), spec with { Shrinkage = 0 }).Findings,
            f => f.Id == "shrinkage-unknown");
    }

    [Fact]
    public void A_wall_that_leaves_nothing_is_refused() =>
        Assert.Contains("nothing is left of the outline when the wall",
            Assert.Throws<BuckGen.Intake.Outlines.OutlineException>(() => Formed.Design(
            Region.FromLoops([Loop.Rectangle(new(0, 0, 200, 3))]),
            Formed.Spec(BuckKind.Male, 10, gauge: 4) with { Part = new() { Side = PartSide.Outside } })).Message);
}
