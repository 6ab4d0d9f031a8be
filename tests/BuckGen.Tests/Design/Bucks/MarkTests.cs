using BuckGen.Design.Bucks;
using BuckGen.Geometry.Tests;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

public class MarkTests
{
    [Fact]
    public void The_sand_to_line_is_the_smaller_outline_of_the_layer()
    {
        // The lowest of three layers is cut 36 mm below the face and sanded to what it is 24 mm below: 24·tan 5° = 2.0997.
        var layer = PlainBuck.Create(Shapes.Disc(50)).Layers[0];

        Assert.Equal(52.09973, Assert.Single(layer.SandTo).AsCircle(1e-6)!.Value.Radius, 1e-4);
    }

    [Fact]
    public void With_steps_outside_one_line_serves_for_sanding_and_gluing()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60));

        Assert.All(design.Layers, l => Assert.Single(l.SandTo));
        Assert.All(design.Layers, l => Assert.Empty(l.GlueUp));
        // It is the very edge of the layer above.
        Assert.Equal(design.Layers[1].Region.Area, design.Layers[0].SandTo[0].SignedArea, 1e-6);
    }

    [Fact]
    public void With_steps_inside_only_the_footprint_of_the_layer_above_is_drawn()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Steps = Steps.Inside });

        Assert.All(design.Layers, l => Assert.Empty(l.SandTo));
        Assert.Equal(design.Layers[1].Region.Area, Assert.Single(design.Layers[0].GlueUp).SignedArea, 1e-6);
        Assert.Empty(design.Layers[2].GlueUp);
    }

    [Fact]
    public void With_steps_in_the_middle_both_lines_are_drawn()
    {
        var layer = PlainBuck.Create(Shapes.Disc(50), PlainBuck.Spec with { Steps = Steps.Middle }).Layers[0];

        // Cut 30 mm below the face; sanded to 24 mm below; the next layer is cut 18 mm below. Trigonometry.
        Assert.Equal(50 + 30 * PlainBuck.Tan5, layer.Region.OnlyLoop().AsCircle(1e-6)!.Value.Radius, 1e-4);
        Assert.Equal(50 + 24 * PlainBuck.Tan5, Assert.Single(layer.SandTo).AsCircle(1e-6)!.Value.Radius, 1e-4);
        Assert.Equal(50 + 18 * PlainBuck.Tan5, Assert.Single(layer.GlueUp).AsCircle(1e-6)!.Value.Radius, 1e-4);
    }

    [Fact]
    public void A_cavity_is_marked_round_its_opening()
    {
        var layer = PlainBuck.Create(Shapes.Disc(50), PlainBuck.Spec with { Kind = BuckKind.Female }).Layers[0];

        // The block is upright, so only the cavity's own line is drawn: 24 mm below the rim.
        Assert.Equal(50 - 24 * PlainBuck.Tan5, Assert.Single(layer.SandTo).AsCircle(1e-6)!.Value.Radius, 1e-4);
    }

    [Fact]
    public void The_base_plate_shows_where_the_buck_stands()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Base = new(PlainBuck.Mdf12) });

        Assert.Empty(design.Layers[0].SandTo);
        Assert.Equal(design.Layers[1].Region.Area, Assert.Single(design.Layers[0].GlueUp).SignedArea, 1e-6);
    }

    [Fact]
    public void Every_line_lies_on_the_wood() =>
        Gen.Select(RandomRegion.Islands, Gen.Enum<Steps>(), Gen.Enum<BuckKind>(), Gen.Enum<OutlineAt>())
            .Sample((region, steps, kind, at) =>
        {
            var design = PlainBuck.Create(region, PlainBuck.Spec with { Steps = steps, Kind = kind, OutlineAt = at });

            foreach (var layer in design.Layers)
                foreach (var segment in layer.SandTo.Concat(layer.GlueUp).SelectMany(l => l.Segments))
                    Assert.True(layer.Region.Contains(segment.PointAt(0.5))
                        || layer.Region.DistanceToEdge(segment.PointAt(0.5)) < 1e-5);
        }, iter: 60);
}
