namespace BuckGen.Geometry;

/// <summary>Islands and holes so narrow that nothing is left of them but rounding.</summary>
internal static class NegligibleLoops
{
    /// <summary>
    /// The region without islands and holes narrower than a quarter of the chord error; the region itself when it has none.
    /// </summary>
    /// <param name="region">The region.</param>
    /// <param name="chord">The chord error, mm.</param>
    public static Region Remove(Region region, double chord)
    {
        return region.Loops.All(IsMore)
            ? region
            : new([.. region.Islands.Where(i => IsMore(i.Outer)).Select(i => i with { Holes = [.. i.Holes.Where(IsMore)] })]);

        bool IsMore(Loop loop) => 2 * Math.Abs(loop.SignedArea) > chord / 4 * loop.Length;
    }
}
