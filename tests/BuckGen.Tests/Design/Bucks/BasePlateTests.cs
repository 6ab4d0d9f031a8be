using BuckGen.Design.Bucks;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

public class BasePlateTests
{
    [Fact]
    public void The_plate_is_the_lowest_layer_and_reaches_beyond_the_foot()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Base = new(new("MDF 9", 9), 15) });

        var plate = design.Layers[0];
        Assert.Equal((1, LayerRole.Base, 0.0, 9.0), (plate.Number, plate.Role, plate.Bottom, plate.Top));
        Assert.Equal(100 + 2 * 36 * PlainBuck.Tan5 + 30, plate.Region.Bounds.Width, 1e-4);
        Assert.Equal("MDF 9", plate.Stock.Name);
    }

    [Fact]
    public void The_plate_does_not_count_as_depth_but_raises_the_stack()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Base = new(new("MDF 9", 9)) });

        Assert.Equal(36, design.Plan.Depth, 1e-9);
        Assert.Equal(45, design.Height, 1e-9);
        Assert.Equal([0, 9, 21, 33], design.Layers.Select(l => l.Bottom));
        // The outline is to size at the face, 45 mm up; the draft does not notice the plate.
        Assert.Equal(PlainBuck.Create(Shapes.Rectangle(100, 60)).Widths(), design.Widths().Skip(1));
    }

    [Fact]
    public void Under_a_cavity_the_plate_carries_the_block()
    {
        var design =
            PlainBuck.Create(Shapes.Rectangle(100, 60),
                PlainBuck.Spec with { Kind = BuckKind.Female, BlockMargin = 30, Base = new(PlainBuck.Mdf12, 0) });

        Assert.Equal(160, design.Layers[0].Region.Bounds.Width, 1e-4);
        Assert.Equal(0, design.Layers[0].Region.HoleCount);
    }
}
