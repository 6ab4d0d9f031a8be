using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Physics.Air;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>
/// A stack of plenum, plate and one wall, with a vent of 1 mm on the plate and one in a pit of the wall; bores are 5 mm wide.
/// </summary>
public class LayerVentsTests
{
    private static readonly LayerBlank[] Layers =
    [
        new(1, LayerRole.Plenum, Vented.Mdf6, 0, 6, Shapes.Rectangle(100, 60)),
        new(2, LayerRole.Base, Vented.Mdf6, 6, 12, Shapes.Rectangle(100, 60)),
        new(3, LayerRole.Wall, Vented.Mdf6, 12, 18, Shapes.Rectangle(50, 60)),
        new(4, LayerRole.Wall, Vented.Mdf6, 18, 24, Shapes.Rectangle(40, 60)),
    ];

    private static readonly Vec2 OnThePlate = new(80, 30), InAPit = new(20, 30);

    [Fact]
    public void A_vent_opens_narrow_on_its_layer_and_wide_in_all_below_but_the_plenum()
    {
        var holes = LayerVents.ByLayer(Layers, Design());

        Assert.Empty(holes[0]);
        Assert.Equal([new(OnThePlate, 1, false), new(InAPit, 5, true)], holes[1]);
        Assert.Equal([new(InAPit, 1, false)], holes[2]);
        Assert.Empty(holes[3]);
    }

    [Fact]
    public void Without_vents_no_layer_has_holes() =>
        Assert.Equal([0, 0, 0, 0], LayerVents.ByLayer(Layers, null).Select(h => h.Count));

    private static VentDesign Design() => new(
        new(), new(1, 1, 1), 1, 25,
        [new(OnThePlate, 1, 2, VentReason.Wall), new(InAPit, 1, 3, VentReason.Counter)],
        new(0.1, 2, false, DrawDown.Simulate(0.1, [new(1, 3, 2)], new())), []);
}
