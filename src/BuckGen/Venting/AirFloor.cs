using BuckGen.Bucks;
using BuckGen.Geometry;

namespace BuckGen.Venting;

/// <summary>A level place that the sheet comes down on last, shut in by walls.</summary>
/// <param name="Layer">The layer on whose top face it lies.</param>
/// <param name="Air">The air over it: its outer edge and holes are walls, or the edge of the plate.</param>
/// <param name="Walls">The wood that stands on the floor.</param>
internal sealed record AirFloor(LayerBlank Layer, Island Air, Region Walls)
{
    /// <summary>The floors of a stack: on the base plate round and inside everything that stands on it, and the bottoms of pits.</summary>
    public static IEnumerable<AirFloor> Of(IReadOnlyList<LayerBlank> layers, StackedSolid solid)
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
        var holesBelow = below.Islands.SelectMany(i => i.Holes).ToArray();
        foreach (var hole in walls.Islands.SelectMany(i => i.Holes))
        {
            if (holesBelow.Any(h => hole.Contains(InsidePoint.Of(h)))) continue;
            var standing = walls.Islands.Where(i => hole.Contains(InsidePoint.Of(i))).Select(i => i.Outer);
            yield return Region.FromLoops(standing.Prepend(hole)).Islands[0];
        }
    }
}
