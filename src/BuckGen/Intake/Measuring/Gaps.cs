using BuckGen.Geometry;
using BuckGen.Geometry.Facing;

namespace BuckGen.Intake.Measuring;

/// <summary>Tells kinds of gaps apart.</summary>
internal static class Gaps
{
    public static GapKind KindOf(NarrowestPlace gap, Region region)
    {
        if (gap.LoopA != gap.LoopB) return GapKind.BetweenParts;
        // The loops of a region come island by island, the outer edge first.
        var first = 0;
        foreach (var island in region.Islands)
        {
            if (first == gap.LoopA) return GapKind.AcrossSlot;
            first += 1 + island.Holes.Length;
        }

        return GapKind.InsideHole;
    }
}
