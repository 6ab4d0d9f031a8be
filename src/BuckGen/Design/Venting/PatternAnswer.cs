using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Design.Venting;

/// <summary>What a vent pattern gives for a floor.</summary>
internal static class PatternAnswer
{
    /// <summary>Most places that a plug-in's pattern may give for one floor.</summary>
    private const int Most = 10_000;

    /// <summary>The places.</summary>
    /// <exception cref="AnswerException">A plug-in's pattern returned something that can't be used.</exception>
    public static ImmutableArray<Vec2> Of(IVentPattern pattern, VentFloor floor, VentSpec spec) => ForeignCode.IsForeign(pattern)
        ? Answer.List(pattern.Places(floor, spec), Most, "place", p => Answer.IsPlace(p.X) && Answer.IsPlace(p.Y) ? null : "is no place within 1 km")
        : [.. pattern.Places(floor, spec).Take(VentPlacing.MaxWishes + 1)];
}
