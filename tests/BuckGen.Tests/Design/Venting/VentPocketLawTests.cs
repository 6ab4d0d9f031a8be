using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using NetTopologySuite.Algorithm.Construct;
using NetTopologySuite.Geometries;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>
/// Over the corpus every counter, gap, cavity and pit has a vent, or a finding names it and its place.
/// </summary>
[Trait("Tier", "slow")]
public sealed class VentPocketLawTests
{
    [Fact]
    public void Every_counter_and_every_cavity_has_a_vent_on_its_floor()
    {
        var (faults, vented) = (new Faults(), 0);
        foreach (var c in VentCase.All)
        {
            // Holes of a male foot, cavities of a female one. What is all but closed holds no air.
            foreach (var pocket in new FlatFloor(c.Foot, c.IsMale).Rooms.Where(r => Radius(r) > 0.05))
            {
                var has = c.Vents.Vents.Any(v => v.Layer == c.Surface.Number && Holds(pocket, v.Centre));
                if (has) vented++;
                faults.Check(has || IsReported(c, pocket, c.Surface),
                    () => $"{c.Name}: nothing in the pocket at {pocket.Centroid}, {pocket.Area:0.##} mm²");
            }
        }

        faults.None(250);
        Assert.InRange(vented, 0.9 * faults.CheckedCount, faults.CheckedCount);
    }

    [Fact]
    public void Every_pit_has_a_vent_on_the_layer_that_closes_it()
    {
        var faults = new Faults();
        foreach (var c in VentCase.All)
        {
            var layers = c.Design.Layers.Where(l => l.Role != LayerRole.Plenum).ToArray();
            for (var n = 0; n + 1 < layers.Length; n++)
            {
                if (layers[n].Role != LayerRole.Wall) continue;
                var (air, below) = (new FlatFloor(Hollow(c, layers[n + 1]), c.IsMale),
                    new FlatFloor(Hollow(c, layers[n]), c.IsMale));
                foreach (var pit in air.Rooms.Where(r => !r.Intersects(below.Air) && Radius(r) > 0.05))
                {
                    var has = c.Vents.Vents.Any(v => v.Layer == layers[n].Number && Holds(pit, v.Centre));
                    faults.Check(has
                        || IsReported(c, pit, layers[n]),
                        () => $"{c.Name}: nothing in the pit at {pit.Centroid} on layer {layers[n].Number}");
                }
            }
        }

        faults.None(10);
    }

    [Fact]
    public void Every_gap_too_narrow_for_two_rows_has_a_vent_near_its_narrowest_place()
    {
        var faults = new Faults();
        foreach (var c in VentCase.All)
        {
            var floor = new FlatFloor(c.Foot, c.IsMale);
            var loops = c.Foot.Loops.ToArray();
            for (var i = 0; i < loops.Length; i++)
                for (var j = 0; j < i; j++)
                {
                    if (loops[i].Bounds.Grown(2).Intersects(loops[j].Bounds)
                        && Narrowest(loops[i], loops[j]) is var (middle, width)
                        && width <= 2 * c.Distance && width > 0.1 && floor.HasAirAt(middle))
                        faults.Check(
                            c.Vents.Vents
                                .Any(v => v.Layer == c.Surface.Number && v.Centre.DistanceTo(middle) <= c.Vents.Spacing / 2 + 1)
                            || c.ReportedFindings.Any(f => f.Place!.Value.DistanceTo(middle) <= c.Vents.Spacing / 2 + 1),
                            () => $"{c.Name}: nothing in the gap of {width:0.##} mm at {middle}");
                }
        }

        faults.None(10);
    }

    private static Region Hollow(VentCase c, Layer layer) => c.IsMale
        ? layer.Region
        : Region.FromLoops(layer.Region.Islands.Where(i => i.Holes.Length > 0).SelectMany(i => i.Holes)
            .Concat(layer.Region.Islands.Select(i => i.Outer).OrderByDescending(o => o.SignedArea).Skip(1)));

    private static (Vec2 Middle, double Width) Narrowest(Loop a, Loop b) => a.Segments
        .SelectMany(s => Enumerable.Range(0, 9).Select(k => s.PointAt(k / 8.0)))
        .Select(p => (p, b.Segments.Select(s => s.PointAt(s.NearestParameter(p))).MinBy(q => q.DistanceTo(p))))
        .Select(pair => (pair.p.MidpointTo(pair.Item2), pair.p.DistanceTo(pair.Item2))).MinBy(pair => pair.Item2);

    private static double Radius(Polygon room) => room.IsEmpty ? 0 : MaximumInscribedCircle.GetRadiusLine(room, 0.01).Length;

    private static bool Holds(Polygon room, Vec2 p) => room.Contains(room.Factory.CreatePoint(FlatFloor.At(p)));

    private static bool IsReported(VentCase c, Polygon room, Layer floor) => c.ReportedFindings.Any(f =>
        Math.Abs(f.Height!.Value - floor.Top) < 1e-6
            && room.Buffer(0.1).Contains(room.Factory.CreatePoint(FlatFloor.At(f.Place!.Value))));
}
