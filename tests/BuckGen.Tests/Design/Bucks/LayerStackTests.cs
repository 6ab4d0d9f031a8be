using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>
/// Boards of 12 mm of a cone whose foot has a radius of 30 mm and whose walls lean by 45°: above 30 mm there is no wood.
/// </summary>
public class LayerStackTests
{
    private static readonly BuckSpec Spec = PlainBuck.Spec with { Depth = 48, Draft = 45, OutlineAt = OutlineAt.Base };

    [Fact]
    public void The_stack_ends_where_no_wood_is_left()
    {
        var layers = Build(default);

        Assert.Equal([30, 18, 6], layers.Select(l => Math.Round(l.Wood.Bounds.Width / 2, 6)));
        Assert.Equal([1, 2, 3], layers.Select(l => l.Number));
    }

    [Fact]
    public void It_can_be_stopped() => Assert.Throws<OperationCanceledException>(() => Build(new(canceled: true)));

    private static List<LayerBlank> Build(CancellationToken cancellation) => LayerStack.Build(
        new(new(Shapes.Disc(30), Spec, 0, 48, new ArcOffsetter()), Spec), Spec, null, StackPlan.Choose(48, Spec.Stock, 0.1),
        cancellation);
}
