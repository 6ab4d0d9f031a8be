using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Geometry;

namespace BuckGen.Design.Venting;

/// <summary>
/// Finds the floors of a stack: on the base plate round and inside everything that stands on it, the bottoms of pits, and ledges.
/// </summary>
internal static class AirFloors
{
    /// <summary>On a narrower ledge the sheet comes down all at once, mm (our definition, no source).</summary>
    private const double MinLedge = 3;

    /// <summary>The floors, the smallest first: where there is least choice, the choice is made first.</summary>
    /// <param name="layers">The layers without a plenum, lowest first.</param>
    /// <param name="solid">The smooth solid.</param>
    /// <param name="closings">Where a pocket of air closes on the way down.</param>
    public static AirFloor[] Find(IReadOnlyList<LayerBlank> layers, StackedSolid solid, IEnumerable<Vec2> closings)
    {
        var level = Level(layers, solid).ToArray();
        var over = layers.Select(l => new AirOver(l, layers[0].Wood.Bounds.Grown(1))).ToArray();
        var sloped = closings.Select(c => Sloped(c, over)).OfType<AirFloor>()
            .Where(s => !Array.Exists(level, l => l.Layer == s.Layer && l.Air.Contains(s.DeepestPoint!.Value)));
        return [.. sloped.Concat(level.OrderBy(f => Math.Round(f.Air.Area, 3)))];
    }

    private static IEnumerable<AirFloor> Level(IReadOnlyList<LayerBlank> layers, StackedSolid solid)
    {
        for (var n = 0; n + 1 < layers.Count; n++)
        {
            if (layers[n + 1].Role != LayerRole.Wall) continue;
            var walls = solid.At(solid.Shape.Above(layers[n + 1].Bottom));
            IEnumerable<Island> air = layers[n].Role == LayerRole.Base ? OverThePlate(layers[n].Wood, walls, solid.Block)
                : Pits(layers[n].Wood, walls);
            var standing = new FloorWalls(walls);
            if (layers[n].Role == LayerRole.Wall) air = air.Concat(OnLedge(layers[n], solid.Shape));
            foreach (var island in air) yield return new(layers[n], island, standing);
        }
    }

    /// <summary>On a ledge where two layers meet: between the wall below and the wall above.</summary>
    private static ImmutableArray<Island> OnLedge(LayerBlank below, DraftedShape shape)
    {
        var (under, over) = (shape.Below(below.Top), shape.Above(below.Top));
        return Math.Abs(shape.OffsetAt(over) - shape.OffsetAt(under)) < MinLedge || under == over ? []
            : Region.FromLoops(shape.At(under).Loops.Concat(shape.At(over).Loops)).Islands;
    }

    /// <summary>Round and inside what stands on the plate; round a block with a cavity nothing is formed.</summary>
    private static IEnumerable<Island> OverThePlate(Region plate, Region walls, Loop? block) =>
        Region.FromLoops(plate.Loops.Concat(walls.Loops)).Islands
            .Where(i => block is null || block.Contains(InsidePoint.Find(i)));

    /// <summary>Holes in the layer above that the layer below does not have.</summary>
    private static IEnumerable<Island> Pits(Region below, Region walls)
    {
        var holesBelow = below.Islands.SelectMany(i => i.Holes).Select(InsidePoint.Find).ToArray();
        var pieces = walls.Islands.Select(i => (i.Outer, Inside: InsidePoint.Find(i))).ToArray();
        foreach (var hole in walls.Islands.SelectMany(i => i.Holes))
        {
            if (Array.Exists(holesBelow, hole.Contains)) continue;
            var standing = pieces.Where(p => hole.Contains(p.Inside)).Select(p => p.Outer);
            yield return Region.FromLoops(standing.Prepend(hole)).Islands[0];
        }
    }

    /// <summary>
    /// A lobe of a hole, or a bay, that ends above the floor of the rest; or a pit whose layer is cut higher up than where its
    /// walls meet. It bottoms out on the first layer down that has wood there.
    /// </summary>
    private static AirFloor? Sloped(Vec2 place, AirOver[] layers)
    {
        for (var n = layers.Length - 1; n > 0; n--)
        {
            if (!layers[n - 1].HasWood(place)) continue;
            // Wood right up to the layer above: the air ends within a layer that is cut without it.
            return layers[n].HasWood(place) ? null : new(layers[n - 1].Layer, layers[n].Beside(place), layers[n].Walls, place);
        }

        return null;
    }

    /// <summary>A layer and the air beside its wood, computed once for all queried places.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="table">How far the air reaches.</param>
    private sealed class AirOver(LayerBlank layer, Bounds table)
    {
        private readonly Lazy<RegionInterior> wood = new(() => new(layer.Wood));
        private readonly Lazy<Region> air = new(() => Region.FromLoops(layer.Wood.Loops.Prepend(Loop.Rectangle(table))));
        private RegionInterior? inAir;

        public LayerBlank Layer => layer;

        public FloorWalls Walls { get; } = new(layer.Wood);

        public bool HasWood(Vec2 place) => wood.Value.Contains(place);

        /// <summary>The part of the air round a place.</summary>
        public Island Beside(Vec2 place) => air.Value.Islands[(inAir ??= new(air.Value)).IslandAt(place)];
    }
}
