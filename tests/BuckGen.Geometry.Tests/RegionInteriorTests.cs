using CsCheck;
using Xunit;

namespace BuckGen.Geometry.Tests;

public class RegionInteriorTests
{
    private static readonly Gen<Vec2> Points = Gen.Select(Gen.Double[-20, 140], Gen.Double[-20, 140], (x, y) => new Vec2(x, y));

    /// <summary>Rings, and discs in some of them, on a lattice: few and many islands.</summary>
    private static readonly Gen<Region> Lattices =
        Gen.Select(Gen.Int[1, 6], Gen.Int[1, 5], Gen.Bool.Array[30], (columns, rows, discs) => Region.FromLoops(
        Enumerable.Range(0, columns * rows).SelectMany(i =>
        {
            var centre = new Vec2(i % columns * 22, i / columns * 22);
            return discs[i] ? (Loop[])[Loop.Circle(centre, 10), Loop.Circle(centre, 7), Loop.Circle(centre, 4)]
                : [Loop.Circle(centre, 10), Loop.Circle(centre, 7)];
        })));

    [Fact]
    public void Every_island_holds_what_it_holds_asked_alone() =>
        Gen.Select(Lattices, Points.Array[40]).Sample((region, points) =>
        {
            var interior = new RegionInterior(region);
            foreach (var p in points)
            {
                Assert.Equal(region.Islands.ToList().FindIndex(i => i.Contains(p)), interior.IslandAt(p));
                Assert.Equal(region.Contains(p), interior.Contains(p));
            }
        }, iter: 100);

    [Fact]
    public void An_empty_region_holds_nothing() => Assert.False(new RegionInterior(Region.Empty).Contains(new(0, 0)));
}
