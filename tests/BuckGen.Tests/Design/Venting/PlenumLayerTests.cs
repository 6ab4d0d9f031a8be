using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Physics.Air;
using BuckGen.Physics.Plates;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>
/// How far the board that rests on the plenum may span: what it is made of is not known, so the weaker of the usual boards
/// counts.
/// </summary>
public class PlenumLayerTests
{
    [Theory]
    [InlineData(3)]
    [InlineData(3.5)]
    [InlineData(6)]
    public void The_weaker_of_the_usual_boards_counts(double thickness)
    {
        BoardProperties[] boards = thickness < 3.5 ? [BoardProperties.Mdf(thickness)]
            : [BoardProperties.Mdf(thickness), BoardProperties.BirchPlywood(thickness)];
        var spec = Spec(thickness);

        Assert.Equal(boards.Min(b => SupportSpacing.MaxRibSpacing(thickness, b, 0.3)), MaxChannelWidth(spec));
        // A round foot of 10 mm has the area of a square one of 8.862 mm.
        Assert.Equal(Math.Min(120, boards.Min(b => SupportSpacing.MaxFootSpacing(8.8623, thickness, b, 0.3)!.Value)),
            FeetPitch(spec)!.Value, 0.001);
    }

    [Fact]
    public void Of_two_plates_the_lower_one_rests_on_the_plenum()
    {
        var two = Spec(18) with { Base = new(new("board 18", 18), 20, new("board 6", 6)) };

        Assert.Equal(MaxChannelWidth(Spec(6)), MaxChannelWidth(two));
        Assert.True(MaxChannelWidth(Spec(18)) > MaxChannelWidth(two));
    }

    [Fact]
    public void Feet_stand_no_farther_apart_than_120_mm_however_stiff_the_base() => Assert.Equal(120, FeetPitch(Spec(40)));

    [Fact]
    public void Feet_stand_near_enough_and_clear_of_the_bores()
    {
        var spec = Spec(6) with { Plenum = new(Vented.Mdf6, PlenumKind.Feet) };
        var shaped = Shaped(spec);

        Assert.Equal((1, LayerRole.Plenum), (shaped.Number, shaped.Role));
        Assert.All(shaped.Wood.Islands, f => Assert.Equal(Math.PI * 25, f.Area, 1e-6));
        var across = shaped.Wood.Islands.Select(f => Math.Round(f.Outer.Bounds.Centre.X, 6)).Distinct().Order().ToArray();
        Assert.All(across.Zip(across.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 10, FeetPitch(spec)!.Value));
        // Their centres lie on 190 mm of the plate's 200 mm, and no more of them than that takes.
        Assert.Equal(Math.Ceiling(190 / FeetPitch(spec)!.Value) + 1, across.Length);
    }

    [Fact]
    public void Channels_meet_over_the_port_or_in_the_middle()
    {
        // Without vents there is the port alone, 25 mm wide.
        var middle = Hole(Spec(6));
        var port = Hole(Spec(6) with { Plenum = new(Vented.Mdf6) { Port = new(30, 40) } });

        Assert.Equal(0, middle.DistanceTo(new(100, 50)), 0.01);
        Assert.Equal(0, port.DistanceTo(new(30, 40)), 0.01);
        Assert.Equal(20000 - Math.PI * 12.5 * 12.5, Shaped(Spec(6)).Wood.Area, 0.1);

        static Vec2 Hole(BuckSpec spec) => Shaped(spec).Wood.Islands[0].Holes.Single().Bounds.Centre;
    }

    [Theory]
    [InlineData(PlenumKind.Channels)]
    [InlineData(PlenumKind.Feet)]
    public void Every_vent_stands_over_air(PlenumKind kind)
    {
        // The second one where a foot would stand without it.
        Vec2[] places =
            [new(150, 20), Shaped(Spec(6) with { Plenum = new(Vented.Mdf6, kind) }).Wood.Islands[0].Outer.Bounds.Centre];
        var vents = new VentDesign(
            new(), new(1, 1, 1), 1, 25, [.. places.Select(p => new Vent(p, 1, 2, VentReason.Wall))],
            new(0.1, 2, false, DrawDown.Simulate(0.1, [new(1, 3, 2)], new())), []);

        var wood = Shaped(Spec(6) with { Plenum = new(Vented.Mdf6, kind) }, vents).Wood;

        // The bore of 5 mm and a millimetre round it, or half of a channel of 10 mm.
        Assert.All(places, p => Assert.True(!wood.Contains(p) && wood.DistanceToEdge(p) >= 3.5 - 0.01, p.ToString()));
    }

    private static double? FeetPitch(BuckSpec spec) => PlenumLayer.FeetPitch(spec.Plenum!, spec.Base!);

    private static double MaxChannelWidth(BuckSpec spec) => PlenumLayer.MaxChannelWidth(spec.Plenum!, spec.Base!);

    private static LayerBlank Shaped(BuckSpec spec, VentDesign? vents = null) =>
        PlenumLayer.Shaped(Blank, spec.Plenum!, spec, vents, default);

    private static LayerBlank Blank => new(1, LayerRole.Plenum, Vented.Mdf6, 0, 6, Shapes.Rectangle(200, 100));

    private static BuckSpec Spec(double thickness) =>
        Vented.Spec(plenum: PlenumKind.Channels) with { Base = new(new("board", thickness)) };
}
