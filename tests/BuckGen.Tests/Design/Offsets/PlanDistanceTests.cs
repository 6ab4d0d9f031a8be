using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Intake.Outlines;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Design.Offsets;

[Trait("Tier", "slow")]
public class PlanDistanceTests
{
    private static readonly Bounds Around = new(-120, -120, 120, 120);

    /// <summary>Checked against the distance to every edge one by one, and the winding number for the side.</summary>
    [Fact]
    public void Random_regions_are_as_far_as_their_nearest_edge() =>
        Gen.Select(RandomRegion.Islands, Gen.Select(Gen.Double[-150, 150], Gen.Double[-150, 150]).Array[60])
            .Sample((region, points) =>
        {
            var distance = new PlanDistance(region, Around);
            foreach (var (x, y) in points) AssertAt(region, distance, new(x, y));
        }, iter: 60);

    [Fact]
    public void Outlines_of_others_are_as_far_as_their_nearest_edge()
    {
        var (tried, random) = (0, new Random(8));
        foreach (var file in Corpus.Files)
        {
            if (Read(file.Content, file.Name) is not { IsEmpty: false } region || region.Segments.Count() > 600) continue;
            var box = region.Bounds.Grown(10);
            var distance = new PlanDistance(region, box);
            for (var i = 0; i < 40; i++)
                AssertAt(region, distance,
                    new(box.MinX + random.NextDouble() * box.Width, box.MinY + random.NextDouble() * box.Height), file.Name);
            tried++;
        }
        Assert.InRange(tried, 60, int.MaxValue);
    }

    /// <summary>
    /// Found by an attack: of a very jagged outline the squares took minutes and gigabytes; beyond 600 pieces boxes serve
    /// instead.
    /// </summary>
    [Fact]
    public void Very_many_edges_are_as_far_as_the_nearest()
    {
        var jagged = Region.FromLoops(
        [
            Loop.Polygon(Enumerable.Range(0, 2001).Select(i => new Vec2(i % 2 == 0 ? 60 : 57, 0).Turned(2 * Math.PI * i / 2001))),
            .. Enumerable.Range(0, 30).Select(i => Loop.Circle(new Vec2(30, 0).Turned(i * Math.PI / 15), 2.5)),
        ]);
        var (distance, random) = (new PlanDistance(jagged, Around), new Random(3));
        for (var i = 0; i < 400; i++)
            AssertAt(jagged, distance, new(random.NextDouble() * 300 - 150, random.NextDouble() * 300 - 150));
        // On corners and on edges.
        foreach (var piece in jagged.Segments.Where((_, i) => i % 50 == 0))
        {
            Assert.Equal(0, distance.At(piece.Start), 12);
            Assert.Equal(0, distance.At(piece.PointAt(0.5)), 9);
        }
    }

    [Fact]
    public void Beside_a_sharp_corner_the_side_is_right()
    {
        // A needle of 2 degrees: just outside its tip, both sides' normals point elsewhere.
        var needle = Shapes.Polygon((0, 0), (100, -1.7455), (100, 1.7455));
        var distance = new PlanDistance(needle, Around);

        Assert.Equal(0.01, distance.At(new(-0.01, 0)), 12);
        Assert.Equal(Math.Sqrt(0.01 * 0.01 + 0.2 * 0.2), distance.At(new(-0.01, 0.2)), 12);
        Assert.True(distance.At(new(1, 0)) < 0);
    }

    private static void AssertAt(Region region, PlanDistance distance, Vec2 p, string name = "")
    {
        var nearest = region.DistanceToEdge(p);
        Assert.Equal(nearest, Math.Abs(distance.At(p)), 1e-9 * (1 + nearest));
        if (nearest > 1e-9) Assert.True(region.Contains(p) == distance.At(p) < 0, $"{name} {p.X:R},{p.Y:R}: {distance.At(p)}");
    }

    private static Region? Read(byte[] content, string name)
    {
        try
        {
            return OutlineReader.Read(content, name).Region;
        }
        catch (OutlineException)
        {
            return null;
        }
    }
}
