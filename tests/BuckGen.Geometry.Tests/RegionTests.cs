using Xunit;

namespace BuckGen.Geometry.Tests;

public class RegionTests
{
    [Fact]
    public void A_ring_measures_its_wood_and_both_edges()
    {
        var ring = Shapes.Ring(30, 20);

        Assert.Equal(Math.PI * 500, ring.Area, 1e-9);
        Assert.Equal(Math.PI * 100, ring.Perimeter, 1e-9);
        Assert.Equal(1, ring.HoleCount);
        Assert.Equal(5, ring.DistanceToEdge(new(25, 0)), 1e-9);
        Assert.Equal(20, ring.DistanceToEdge(new(0, 0)), 1e-9);
    }

    [Fact]
    public void Wood_lies_to_the_left_of_every_edge()
    {
        var region = Shapes.Union(Shapes.Ring(30, 20), Shapes.Counter(40, 40, 20, 20).Moved(50, 0));

        Assert.All(region.Segments, s =>
        {
            Assert.True(region.Contains(s.PointAt(0.5) + s.DirectionAt(0.5).Left * 0.01));
            Assert.False(region.Contains(s.PointAt(0.5) - s.DirectionAt(0.5).Left * 0.01));
        });
    }

    [Fact]
    public void The_empty_region_has_neither_area_nor_points()
    {
        Assert.True(Region.Empty.IsEmpty);
        Assert.Equal(0, Region.Empty.Area);
        Assert.False(Region.Empty.Contains(new(0, 0)));
    }

    [Fact]
    public void Mirroring_keeps_wood_wood_and_holes_holes()
    {
        var mirrored = Shapes.Counter(40, 40, 20, 20).Transformed(Affine.Reflection(new(0, 0), new(0, 1)));

        Assert.Equal(1200, mirrored.Area, 1e-9);
        Assert.Equal(new Bounds(-40, 0, 0, 40), mirrored.Bounds);
        Assert.False(mirrored.Contains(new(-20, 20)));
    }
}
