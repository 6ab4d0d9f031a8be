using BuckGen.Bucks;
using BuckGen.Geometry;

namespace BuckGen.Venting;

/// <summary>Finds the floors of a stack: on the base plate round and inside everything that stands on it, and the bottoms of pits.</summary>
internal static class AirFloors
{
    /// <summary>The floors, the smallest first: where there is least choice, the choice is made first.</summary>
    /// <param name="layers">The layers without a plenum, lowest first.</param>
    /// <param name="solid">The smooth solid.</param>
    /// <param name="closings">Where a part of the air comes to its end on the way down.</param>
    public static AirFloor[] Of(IReadOnlyList<LayerBlank> layers, StackedSolid solid, IEnumerable<Vec2> closings)
    {
        var level = Level(layers, solid).ToArray();
        var sloped = closings.Select(c => Sloped(c, layers)).OfType<AirFloor>()
            .Where(s => !Array.Exists(level, l => l.Layer == s.Layer && l.Air.Contains(s.Deepest!.Value)));
        return [.. sloped.Concat(level.OrderBy(f => Math.Round(f.Air.Area, 3)))];
    }

    private static IEnumerable<AirFloor> Level(IReadOnlyList<LayerBlank> layers, StackedSolid solid)
    {
        for (var n = 0; n + 1 < layers.Count; n++)
        {
            if (layers[n + 1].Role != LayerRole.Wall) continue;
            var walls = solid.At(layers[n + 1].Bottom);
            IEnumerable<Island> air = layers[n].Role == LayerRole.Base ? OverThePlate(layers[n].Wood, walls, solid.Block) : Pits(layers[n].Wood, walls);
            foreach (var island in air) yield return new(layers[n], island, walls);
        }
    }

    /// <summary>Round and inside what stands on the plate; round a block with a cavity nothing is formed.</summary>
    private static IEnumerable<Island> OverThePlate(Region plate, Region walls, Loop? block) =>
        Region.FromLoops(plate.Loops.Concat(walls.Loops)).Islands.Where(i => block is null || block.Contains(InsidePoint.Of(i)));

    /// <summary>Holes in the layer above that the layer below does not have.</summary>
    private static IEnumerable<Island> Pits(Region below, Region walls)
    {
        var holesBelow = below.Islands.SelectMany(i => i.Holes).Select(InsidePoint.Of).ToArray();
        var pieces = walls.Islands.Select(i => (i.Outer, Inside: InsidePoint.Of(i))).ToArray();
        foreach (var hole in walls.Islands.SelectMany(i => i.Holes))
        {
            if (Array.Exists(holesBelow, hole.Contains)) continue;
            var standing = pieces.Where(p => hole.Contains(p.Inside)).Select(p => p.Outer);
            yield return Region.FromLoops(standing.Prepend(hole)).Islands[0];
        }
    }

    /// <summary>
    /// A lobe of a hole, or a bay, that ends above the floor of the rest; or a pit whose layer is cut higher up than where its walls
    /// meet. It bottoms out on the first layer down that has wood there.
    /// </summary>
    private static AirFloor? Sloped(Vec2 place, IReadOnlyList<LayerBlank> layers)
    {
        for (var n = layers.Count - 1; n > 0; n--)
        {
            if (!layers[n - 1].Wood.Contains(place)) continue;
            // Wood right up to the layer above: the air ends within a layer that is cut without it.
            if (layers[n].Wood.Contains(place)) return null;
            var walls = layers[n].Wood;
            var air = Region.FromLoops(walls.Loops.Prepend(Loop.Rectangle(layers[0].Wood.Bounds.Grown(1)))).Islands.First(i => i.Contains(place));
            return new(layers[n - 1], air, walls, place);
        }

        return null;
    }
}
