using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

[Trait("Tier", "slow")]
public sealed class VentPlacementTests
{
    [Theory]
    [InlineData(BuckKind.Male)]
    [InlineData(BuckKind.Female)]
    public void Every_vent_lies_on_the_floor_at_its_distance_from_the_wall(BuckKind kind)
    {
        var design = Vented.Design(Vented.Sign(), Vented.Spec(kind, 12));
        var foot = Foot(design);
        var vents = design.Vents!;
        Assert.True(vents.Vents.Length > 20);
        var distance = vents.Spec.WallDistance + vents.Diameter / 2;
        foreach (var vent in vents.Vents)
        {
            Assert.Equal(kind == BuckKind.Female, foot.Contains(vent.Centre));
            if (vent.Reason is VentReason.Wall or VentReason.Corner)
                Assert.Equal(distance, foot.DistanceToEdge(vent.Centre), 0.03);
        }
    }

    [Fact]
    public void Along_a_wall_no_place_is_farther_from_a_vent_than_half_the_spacing_and_a_bore()
    {
        var design = Vented.Design(Vented.Sign(), Vented.Spec(depth: 12));
        var (vents, spec) = (design.Vents!, design.Vents!.Spec);
        // A vent that would run into another's bore is left out, since that one does its work.
        var reach = vents.Spacing / 2 + spec.BoreDiameter + spec.Land + vents.Diameter;
        foreach (var segment in Foot(design).Segments)
            for (var t = 0.0; t < 1; t += Math.Min(1, 2 / segment.Length))
                Assert.True(vents.Vents.Min(v => v.Centre.DistanceTo(segment.PointAt(t))) <= reach,
                    $"nothing near {segment.PointAt(t)}");
    }

    [Fact]
    public void Every_counter_has_a_vent()
    {
        var design = Vented.Design(Vented.Sign(), Vented.Spec(depth: 12));
        var counters = Foot(design).Islands.SelectMany(i => i.Holes).ToArray();
        Assert.Equal(3, counters.Length);
        Assert.All(counters, c => Assert.Contains(design.Vents!.Vents, v => c.Contains(v.Centre)));
    }

    [Fact]
    public void A_square_pocket_has_a_vent_in_each_of_its_corners()
    {
        var design = Vented.Design(Vented.Rectangle(100, 60), Vented.Spec(BuckKind.Female));
        Assert.Equal(4, design.Vents!.Vents.Count(v => v.Reason == VentReason.Corner));
    }

    [Fact]
    public void A_gap_too_narrow_for_two_rows_has_a_vent_in_its_middle()
    {
        // Drafted inward from the foot, so that the gap on the base is the drawn one: 1.2 mm.
        var region = Region.FromLoops([Loop.Rectangle(new(0, 0, 60, 40)), Loop.Rectangle(new(61.2, 0, 121.2, 40))]);
        var design = Vented.Design(region, Vented.Spec() with { OutlineAt = OutlineAt.Base });
        Assert.Contains(design.Vents!.Vents, v => v.Reason == VentReason.Gap && Math.Abs(v.Centre.X - 60.6) < 0.05);
    }

    /// <summary>
    /// Found by random designs: from the wall of one square a vent was set at its distance, into the wood of the next.
    /// </summary>
    [Fact]
    public void Squares_that_share_an_edge_have_no_vent_in_each_other()
    {
        var region = Region.FromLoops([Loop.Rectangle(new(0, 0, 60, 60)), Loop.Rectangle(new(60, 0, 120, 60))]);
        var design = Vented.Design(region, Vented.Spec() with { OutlineAt = OutlineAt.Base });
        Assert.True(design.Vents!.Vents.Length >= 12);
        Assert.DoesNotContain(design.Vents.Vents, v => v.Centre.X is > 0 and < 120 && v.Centre.Y is > 0 and < 60);
        // Nothing is drilled along 60 mm of wall, which is reported for both squares.
        Assert.Equal(2, design.Findings.Count(f => f.Id == "vent-spacing" && f.Place is { } p && Math.Abs(p.X - 60) < 1));
    }

    [Fact]
    public void No_vent_runs_into_a_dowel_an_edge_a_mark_or_another_vent()
    {
        var design = Vented.Design(Vented.Sign(), Vented.Spec(depth: 12));
        var spec = design.Vents!.Spec;
        var bores = design.Vents.Vents.Select(v => v.Centre).ToArray();
        for (var i = 0; i < bores.Length; i++)
            for (var j = 0; j < i; j++)
                Assert.True(bores[i].DistanceTo(bores[j]) >= spec.BoreDiameter + spec.Land - 1e-9);
        foreach (var part in design.Layers.Where(l => l.Role == LayerRole.Base).SelectMany(l => l.Parts))
        {
            foreach (var bore in bores)
            {
                Assert.All(part.Dowels, d => Assert.True(
                    d.Centre.DistanceTo(bore) >= (d.Diameter + spec.BoreDiameter) / 2 + spec.Land - 1e-9));
                Assert.True(part.Shape.Outer.DistanceTo(bore) >= spec.BoreDiameter / 2 + spec.Land - 1e-9);
                if (part.Label is { } label) Assert.False(label.Box.Contains(bore));
            }
        }
    }

    [Fact]
    public void Turning_the_outline_turns_the_vents_along_its_walls()
    {
        var spec = Vented.Spec(depth: 12);
        var turn = Affine.Rotation(0.6, new(0, 0));
        var letter = new Region([Vented.Sign().Islands.MaxBy(i => i.Holes.Length)!]);
        var upright = Vented.Design(letter, spec).Vents!.Vents;
        var turned = Vented.Design(letter.Transformed(turn), spec).Vents!.Vents;
        Assert.Equal(upright.Length, turned.Length);
        Assert.All(upright, v => Assert.True(turned.Min(t => t.Centre.DistanceTo(turn.Apply(v.Centre))) < 0.1));
    }

    [Fact]
    public void Keep_out_areas_stay_free_and_given_points_are_kept()
    {
        var keepOut = new Bounds(-30, -30, 30, 80);
        var given = new Vec2(112, 30);
        var spec = Vented.Spec();
        var design =
            Vented.Design(Vented.Rectangle(100, 60),
                spec with { Vents = spec.Vents! with { KeepOut = [keepOut], Points = [given] } });
        Assert.DoesNotContain(design.Vents!.Vents, v => keepOut.Contains(v.Centre));
        Assert.Contains(design.Vents.Vents, v => v.Reason == VentReason.Given && v.Centre == given);
    }

    [Fact]
    public void A_counter_that_closes_leaves_a_pit_with_its_own_vent()
    {
        // At 20 degrees each layer of 6 mm takes 2.18 mm off the radius of 3 mm (trigonometry): 0.82 mm, then nothing.
        var ring = Region.FromLoops([Loop.Circle(new(0, 0), 30), Loop.Circle(new(0, 0), 3)]);
        var design = Vented.Design(ring, Vented.Spec() with { Draft = 20 });
        var pit = Assert.Single(design.Vents!.Vents, v => v.Centre.Length < 1);
        Assert.True(pit.Layer > design.Layers.Last(l => l.Role == LayerRole.Base).Number);
    }

    /// <summary>The designed wall on the base plate: the wood of a male buck, the cavity of a female one.</summary>
    private static Region Foot(BuckDesign design)
    {
        var lowest = design.Layers.First(l => l.Role == LayerRole.Wall).Region;
        return design.Spec.Kind == BuckKind.Male ? lowest : Region.FromLoops(lowest.Islands.SelectMany(i => i.Holes)
            .Concat(lowest.Islands.Skip(1).Select(i => i.Outer)));
    }
}
