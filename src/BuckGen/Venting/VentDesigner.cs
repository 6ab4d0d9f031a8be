using System.Collections.Immutable;
using BuckGen.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Physics.Air;

namespace BuckGen.Venting;

/// <summary>Sizes the vents, places them by the shape, and adds more while the air would leave too slowly.</summary>
internal static class VentDesigner
{
    /// <summary>How often the spacing is made smaller for the flow.</summary>
    private const int Rounds = 8;

    /// <summary>Designs the vents of a stack that has a base plate.</summary>
    public static VentDesign Design(
        IReadOnlyList<LayerBlank> layers, IEnumerable<DowelHole> dowels, StackedSolid solid, BuckSpec buck, IOffsetter offsetter)
    {
        var spec = buck.Vents!;
        var sizing = VentSizing.Of(layers, solid, buck, spec);
        var diameter = spec.Diameter ?? Math.Max(sizing.Largest, VentSizing.NarrowestEver);
        var surface = layers.Last(l => l.Role == LayerRole.Base);
        var volume = TrappedAir.Litres(layers, solid, buck);
        var length = VentAir.HoleLength(surface, spec);
        var needed = DrawDown.HolesNeeded(volume, diameter, length, spec.Air);

        var floors = AirFloor.Of(layers, solid).ToArray();
        var holes = dowels.Distinct().ToArray();
        var (spacing, byShape) = (spec.Spacing, Placed(spec.Spacing));
        var placed = byShape;
        for (var round = 0; round < Rounds && needed > placed.Vents.Count && spec.Pattern == VentPattern.Walls; round++)
        {
            // Bores that run into each other are no further vents.
            spacing = Math.Max(spec.BoreDiameter + spec.Land, spacing * placed.Vents.Count / needed.Value);
            placed = Placed(spacing);
        }

        var draw = DrawDown.Simulate(volume, [new(diameter, length, Math.Max(1, placed.Vents.Count))], spec.Air);
        var air = new VentAir(volume, needed, placed.Vents.Count > byShape.Vents.Count, draw);
        ImmutableArray<Finding> findings =
        [
            .. VentFindings.OfSize(diameter, sizing), .. VentFindings.OfAir(air, placed.Vents.Count, spec.Air), .. placed.Findings,
        ];
        return new(spec, sizing, diameter, spacing, [.. placed.Vents], air, findings);

        (List<Vent> Vents, List<Finding> Findings) Placed(double between)
        {
            var (vents, findings, taken) = (new List<Vent>(), new List<Finding>(), new List<Vec2>());
            foreach (var floor in floors)
            {
                var placement = new VentPlacement(floor.Layer, layers, holes, taken, spec, diameter);
                var walls = new SegmentIndex(floor.Walls.Segments);
                var wishes = VentWishes.Of(floor, spec.WallDistance + diameter / 2, spec, between, offsetter)
                    .Concat(spec.Points.Where(floor.Air.Contains).Select(p => new VentWish(p, VentReason.Given)));
                foreach (var wish in wishes.OrderBy(w => w.Reason).Where(w => !placement.IsDouble(w)))
                {
                    if (placement.Grant(wish, walls) is { } place) vents.Add(new(place, diameter, floor.Layer.Number, wish.Reason));
                    else findings.Add(VentFindings.NoRoom(wish, floor.Layer));
                }
            }

            return (vents, findings);
        }
    }
}
