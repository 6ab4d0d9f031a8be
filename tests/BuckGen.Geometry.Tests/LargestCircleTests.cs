using BuckGen.Geometry.Polygonal;
using CsCheck;
using NetTopologySuite.Algorithm.Construct;
using Xunit;

namespace BuckGen.Geometry.Tests;

public class LargestCircleTests
{
    /// <summary>The radius is found to this share of the island's diagonal.</summary>
    private const double Share = 1e-4;

    public static TheoryData<string, double> Known { get; } = new()
    {
        { "disc", 20 },
        { "ring", 7.5 },
        { "slot", 3 },
        { "bar", 2 },
        // A right triangle of the sides 30, 40 and 50 mm: (30 + 40 - 50) / 2.
        { "triangle", 10 },
        // Two bars that meet: r from both outer sides and from the inner corner, (width - r)·√2.
        { "counter", 8 * Math.Sqrt(2) / (1 + Math.Sqrt(2)) },
        { "angle", 10 * Math.Sqrt(2) / (1 + Math.Sqrt(2)) },
    };

    [Theory]
    [MemberData(nameof(Known))]
    public void It_is_as_large_as_computed_by_hand(string shape, double radius)
    {
        var region = shape switch
        {
            "disc" => Shapes.Disc(20),
            "ring" => Shapes.Ring(20, 5),
            "slot" => Shapes.Slot(200, 3),
            "bar" => Shapes.Rectangle(1000, 4),
            "counter" => Shapes.Counter(40, 30, 24, 14),
            "triangle" => Shapes.Polygon((0, 0), (40, 0), (0, 30)),
            _ => Shapes.Polygon((0, 0), (60, 0), (60, 10), (10, 10), (10, 60), (0, 60)),
        };
        AssertFound(region, radius);
        AssertFound(region.Transformed(Affine.Translation(new(-5000, 300))), radius);
    }

    /// <summary>The geometry library searches in another way, along chords.</summary>
    [Fact]
    public void It_is_as_large_as_another_search_finds_it() => RandomRegion.Islands.Sample(region =>
    {
        var size = region.Islands[0].Outer.Bounds.Diagonal;
        var other = new MaximumInscribedCircle(PolygonConversion.ToGeometry(new([region.Islands[0]]), 1e-4), size * 1e-5);
        AssertFound(region, other.GetRadiusLine().Length);
    }, iter: 100);

    private static void AssertFound(Region region, double radius)
    {
        var island = region.Islands[0];
        var found = LargestCircle.In(island);
        Assert.True(island.Contains(found.Centre));
        Assert.Equal(island.Loops.Min(l => l.DistanceTo(found.Centre)), found.Radius, 1e-9);
        Assert.Equal(radius, found.Radius, 1.2 * Share * island.Outer.Bounds.Diagonal);
    }
}
