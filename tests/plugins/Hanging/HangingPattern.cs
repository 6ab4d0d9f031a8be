using BuckGen.Design.Venting;
using BuckGen.Geometry;

namespace Hanging;

/// <summary>A plug-in that never starts.</summary>
public sealed class HangingPattern : IVentPattern
{
    public HangingPattern() => Thread.Sleep(Timeout.Infinite);

    public string Name => "hanging";

    public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec) => [];
}
