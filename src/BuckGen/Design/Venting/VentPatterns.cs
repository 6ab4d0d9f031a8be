using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Design.Venting;

/// <summary>The patterns that come with the library.</summary>
public static class VentPatterns
{
    /// <summary>Along the foot of every wall, corners first: where the sheet traps air last.</summary>
    public static IVentPattern Walls { get; } = new WallPattern();

    /// <summary>
    /// On a square grid of pitch <see cref="VentSpec.GridPitch"/> all over the floors, besides one in every counter, gap and pit.
    /// </summary>
    public static IVentPattern Grid { get; } = new GridPattern();

    /// <summary>Only where the job says, besides one in every counter, gap and pit.</summary>
    public static IVentPattern Given { get; } = new GivenPattern();

    /// <summary>All of them.</summary>
    public static ImmutableArray<IVentPattern> All { get; } = [Walls, Grid, Given];

    private sealed class WallPattern : IVentPattern
    {
        public string Name => "walls";

        public bool AlongWalls => true;

        public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec) => [];
    }

    private sealed class GridPattern : IVentPattern
    {
        public string Name => "grid";

        /// <summary>Centred on the floor.</summary>
        public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec)
        {
            var (box, pitch) = (floor.Air.Outer.Bounds, spec.GridPitch);
            var (columns, rows) = ((int)(box.Width / pitch), (int)(box.Height / pitch));
            var room = new RegionInterior(floor.Room);
            for (var j = 0; j <= rows; j++)
                for (var i = 0; i <= columns; i++)
                    if (box.Centre + new Vec2((i - columns / 2.0) * pitch, (j - rows / 2.0) * pitch) is var place
                        && room.Contains(place))
                        yield return place;
        }
    }

    private sealed class GivenPattern : IVentPattern
    {
        public string Name => "given";

        public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec) => [];
    }
}
