using System.Collections.Immutable;
using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Design.Venting;

/// <summary>What a vent pattern gives for a floor.</summary>
internal static class PatternResult
{
    /// <summary>Maximum number of places that a plug-in's pattern may give for one floor.</summary>
    private const int MaxPlaces = 10_000;

    /// <summary>The places.</summary>
    /// <exception cref="ForeignResultException">A plug-in's pattern returned something that can't be used.</exception>
    public static ImmutableArray<Vec2> FindPlaces(IVentPattern pattern, VentFloor floor, VentSpec spec) =>
        ForeignCode.IsForeign(pattern)
        ? ForeignResult.List(pattern.Places(floor, spec), MaxPlaces, "place", p => ForeignResult.IsPlace(p.X)
            && ForeignResult.IsPlace(p.Y) ? null : "is not a place within 1 km")
        : [.. pattern.Places(floor, spec).Take(VentPlacing.MaxCandidates + 1)];
}
