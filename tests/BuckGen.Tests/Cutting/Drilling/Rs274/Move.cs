using BuckGen.Geometry;

namespace BuckGen.Tests.Cutting.Drilling.Rs274;

/// <summary>One straight move of the bit.</summary>
/// <param name="IsRapid">True for a traverse, false at feed.</param>
/// <param name="From">Where it starts, in the plane.</param>
/// <param name="FromZ">Height at which it starts.</param>
/// <param name="To">Where it ends, in the plane.</param>
/// <param name="ToZ">Height at which it ends.</param>
internal sealed record Move(bool IsRapid, Vec2 From, double FromZ, Vec2 To, double ToZ)
{
    public bool IsSideways => From != To;

    public bool IsUpright => FromZ != ToZ;
}
