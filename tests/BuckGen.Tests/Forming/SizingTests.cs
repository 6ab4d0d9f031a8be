using BuckGen.Bucks;
using BuckGen.Geometry;
using Xunit;

namespace BuckGen.Tests.Forming;

/// <summary>The buck is made so that the part is to size.</summary>
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

    /// <summary>Mould = part / (1 - shrinkage), not part times (1 + shrinkage): 300 mm at 0.5 and at 2 per cent (definition).</summary>
    [Theory]
    [InlineData(0.5, 301.508)]
    [InlineData(2, 306.122)]
    public void Shrinkage_is_divided_out(double shrinkage, double mould)
    {
        var design = Formed.Design(Formed.Rectangle(300, 100), Formed.Spec(BuckKind.Male, 10) with { Shrinkage = shrinkage });

        Assert.Equal(mould, design.Footprint.Bounds.Width, 5e-4);
        Assert.Equal(shrinkage, design.Sizing.Shrinkage);
    }

    [Fact]
    public void A_wall_that_leaves_nothing_is_refused() =>
        Assert.Contains("nothing is left of the outline when the wall", Assert.Throws<BuckGen.Outlines.OutlineException>(() => Formed.Design(
            Region.FromLoops([Loop.Rectangle(new(0, 0, 200, 3))]), Formed.Spec(BuckKind.Male, 10, gauge: 4) with { Drawn = Drawn.Outside })).Message);
}
