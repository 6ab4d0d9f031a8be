using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Catalogs;
using BuckGen.Physics.Air;
using BuckGen.Settings;

namespace BuckGen.Design.Venting;

/// <summary>Sizes the vents, places them by the shape, and adds more while the air would leave too slowly.</summary>
/// <remarks>
/// Turning the outline turns the vents of the pattern along walls, and neither drawing direction nor start point matters, as long
/// as the choice is the shape's own. Where a shape is alike in several ways, these rules break the ties. A row without corners
/// starts as <see cref="RowStart"/> says. Of corners too near to each other the sharper gets the vent, or the one farther from
/// the middle of the outline. Last comes the first counter-clockwise from the drawing's x direction. What is upright by nature
/// does not turn: the frame and the plate, the block round a cavity, keep-out areas and the grid. The width of the vents follows
/// from the sizes of frame and plate, and so does their number when the flow rules.
/// </remarks>
internal static class VentDesigner
{
    /// <summary>How often the spacing is made smaller for the flow.</summary>
    private const int Rounds = 8;

    /// <summary>No more vents than this are added for the flow alone; a finding then says that the air stays too slow.</summary>
    private const int MaxForFlow = 10_000;

    /// <summary>Designs the vents of a stack that has a base plate.</summary>
    /// <param name="layers">The layers without a plenum, lowest first.</param>
    /// <param name="dowels">All dowel holes.</param>
    /// <param name="solid">The smooth solid.</param>
    /// <param name="closings">Where a pocket of air closes on the way down.</param>
    /// <param name="spec">What is wanted.</param>
    /// <param name="plastic">The plastic; null when it is not known.</param>
    /// <param name="blank">The sheet that lands on the vents.</param>
    /// <param name="offsetter">Makes the offsets.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="SpecException">There are too many places for vents.</exception>
    public static VentDesign Design(
        IReadOnlyList<LayerBlank> layers, IEnumerable<DowelHole> dowels, StackedSolid solid, IEnumerable<Vec2> closings,
        VentSpec spec,
        CatalogPlastic? plastic, Blank blank, IOffsetter offsetter, CancellationToken cancellation)
    {
        var sizing = VentSizing.FromBlank(blank, plastic);
        var diameter = spec.Diameter ?? sizing.Drill(DrillSeries.Of(spec.Drills)).Diameter;
        var surface = layers.Last(l => l.Role == LayerRole.Base);
        var volume = TrappedAir.Litres(layers, solid);
        if (!(volume <= DrawDown.MaxVolume))
            throw new SpecException(
                FormattableString.Invariant(
                    $"There are {volume:0} L of air under the sheet; the limit is {DrawDown.MaxVolume:0} L. Check the ")
                    + "drawing's unit.");
        var length = VentAir.HoleLength(surface, spec);
        var needed = DrawDown.MinHoleCount(volume, diameter, length, spec.Air);

        var room = new BoreRoom(layers, dowels, spec, diameter);
        var middle = EdgeCentroid.Compute(solid.Shape.At(solid.Shape.ReferenceHeight, cancellation).Loops);
        var floors = AirFloors.Find(layers, solid, closings)
            .Select(f => new FloorVents(f, spec.WallDistance + diameter / 2, spec, room.Apart, middle, offsetter, cancellation))
            .ToArray();
        var (spacing, byShape) = (spec.Spacing, Placed(spec.Spacing));
        var placed = byShape;
        var wanted = Math.Min(needed ?? 0, MaxForFlow);
        for (var round = 0; round < Rounds && wanted > placed.Vents.Count && spacing > room.Apart
            && spec.Pattern.AlongWalls; round++)
        {
            // Bores that run into each other are no further vents; nor does a shop drill tens of thousands.
            spacing = Math.Max(room.Apart, spacing * placed.Vents.Count / wanted);
            placed = Placed(spacing);
        }

        var draw = DrawDown.Simulate(volume, [new(diameter, length, Math.Max(1, placed.Vents.Count))], spec.Air);
        var air = new VentAir(volume, needed, placed.Vents.Count > byShape.Vents.Count, draw);
        ImmutableArray<Finding> findings =
        [
            .. floors.SelectMany(f => f.Failures).DistinctBy(f => f.Message), .. VentFindings.OfSize(diameter, sizing),
            .. FineVents.Find(placed.Vents.Count, diameter, length, spec, sizing, blank.Gauge),
            .. VentFindings.OfAir(air, placed.Vents.Count, spec.Air), .. placed.Findings,
        ];
        return new(spec, sizing, diameter, spacing, [.. placed.Vents], air, findings)
        {
            BoardForce = SuctionForce.OnArea(surface.Wood.Area, spec.Air.AmbientPressure - spec.Air.ReservoirPressure),
        };

        VentPlacing Placed(double between) => VentPlacing.Create(floors, room, spec, diameter, between, middle, cancellation);
    }
}
