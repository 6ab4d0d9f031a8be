using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>Over the corpus every vent lies where it must and nowhere else.</summary>
[Trait("Tier", "slow")]
public sealed class VentPlaceLawTests
{
    /// <summary>What rounding of the drafted wall and of chords may take, mm.</summary>
    private const double Slack = 0.03;

    [Fact]
    public void Enough_bucks_have_enough_vents()
    {
        Assert.InRange(VentCase.All.Count, 135, int.MaxValue);
        Assert.InRange(VentCase.All.Count(c => c.Vents.Vents.Length > 0), 132, int.MaxValue);
        Assert.InRange(VentCase.All.Sum(c => c.Vents.Vents.Length), 2300, int.MaxValue);
        Assert.All(Enum.GetValues<BuckKind>(), k => Assert.InRange(VentCase.All.Count(c => c.Spec.Kind == k), 65, int.MaxValue));
        Assert.All(Enum.GetValues<Steps>(), s => Assert.InRange(VentCase.All.Count(c => c.Spec.Steps == s), 15, int.MaxValue));
    }

    [Fact]
    public void A_vent_lies_in_the_air_at_its_distance_from_the_wall()
    {
        var faults = new Faults();
        foreach (var c in VentCase.All)
        {
            var floor = new FlatFloor(c.Foot, c.IsMale);
            foreach (var vent in c.Vents.Vents.Where(v => v.Layer == c.Surface.Number))
            {
                var away = floor.DistanceToWall(vent.Centre);
                faults.Check(Distances(c, floor, vent, away), () => $"{c.Name}: {vent} lies {away:0.###} mm from the wall");
            }
        }

        faults.None(2300);
    }

    [Fact]
    public void No_wood_stands_over_a_vent()
    {
        var faults = new Faults();
        foreach (var c in VentCase.All)
            foreach (var layer in c.Design.Layers)
            {
                var region = layer.Region;
                foreach (var vent in c.Vents.Vents.Where(v => v.Layer < layer.Number))
                    faults.Check(
                        !region.Contains(vent.Centre)
                            && (region.IsEmpty || region.DistanceToEdge(vent.Centre) >= vent.Diameter / 2),
                        () => $"{c.Name}: {vent} lies under layer {layer.Number}");
            }

        faults.None(8000);
    }

    [Fact]
    public void A_hole_keeps_its_land_in_every_layer_it_goes_through()
    {
        var faults = new Faults();
        foreach (var c in VentCase.All)
            foreach (var layer in c.Design.Layers.Where(l => l.Role != LayerRole.Plenum))
                foreach (var part in layer.Parts)
                    foreach (var hole in part.Vents)
                    {
                        var free = hole.Diameter / 2 + c.Vents.Spec.Land - Slack;
                        faults.Check(part.Shape.Loops.All(l => l.DistanceTo(hole.Centre) >= free),
                            () => $"{c.Name}: {hole} is too near an edge of layer {layer.Number}");
                        faults.Check(part.Dowels.All(d => d.Centre.DistanceTo(hole.Centre) >= free + d.Diameter / 2),
                            () => $"{c.Name}: {hole} is too near a dowel");
                        faults.Check(part.Label is not { } label || !label.Box.Grown(hole.Diameter / 2).Contains(hole.Centre),
                            () => $"{c.Name}: {hole} runs into the lettering");
                        faults.Check(layer.SandTo.All(l => l.DistanceTo(hole.Centre) >= hole.Diameter / 2),
                            () => $"{c.Name}: {hole} runs into a sand-to line");
                    }

        faults.None(16000);
    }

    [Fact]
    public void No_two_bores_run_into_each_other_and_none_lies_in_a_keep_out_area()
    {
        var faults = new Faults();
        foreach (var c in VentCase.All)
        {
            var vents = c.Vents.Vents;
            for (var i = 0; i < vents.Length; i++)
            {
                for (var j = 0; j < i; j++)
                    faults.Check(
                        vents[i].Centre.DistanceTo(vents[j].Centre) >= c.Vents.Spec.BoreDiameter + c.Vents.Spec.Land - 1e-9,
                        () => $"{c.Name}: {vents[i]} and {vents[j]}");
                foreach (var area in c.Vents.Spec.KeepOut)
                    faults.Check(!area.Contains(vents[i].Centre), () => $"{c.Name}: {vents[i]} is in a keep-out area");
            }
        }

        Assert.InRange(VentCase.All.Count(c => c.Vents.Spec.KeepOut.Any(k => c.Design.Footprint.Bounds.Intersects(k))), 15,
            int.MaxValue);
        faults.None(25000);
    }

    /// <summary>At the stated distance, or nearer on both sides where the walls leave no room for it.</summary>
    private static bool Distances(VentCase c, FlatFloor floor, Vent vent, double away)
    {
        // The hole never runs under the wall: half the distance to its edge is kept.
        if (!floor.HasAirAt(vent.Centre) || away < vent.Diameter / 2 + c.Vents.Spec.WallDistance / 2 - Slack) return false;
        return vent.Reason is VentReason.Wall or VentReason.Corner ? Math.Abs(away - c.Distance) <= Slack
            : away <= c.Distance + Slack;
    }
}
