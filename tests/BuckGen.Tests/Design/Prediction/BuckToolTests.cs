using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Prediction;

/// <summary>The tool is the wood: which side a point is on, and a distance that is never too great.</summary>
[Trait("Tier", "slow")]
public class BuckToolTests
{
    private static readonly Bounds Around = new(-80, -80, 180, 160);

    private static readonly Dictionary<string, BuckDesign> Designs = new()
    {
        ["block"] = Design(Shapes.Rectangle(100, 60), BuckKind.Male, CornerJoin.Round),
        ["block with sharp corners"] = Design(Shapes.Rectangle(100, 60), BuckKind.Male, CornerJoin.Mitre),
        ["letter O"] = Design(Shapes.Counter(100, 80, 50, 30), BuckKind.Male, CornerJoin.Round),
        ["two neighbours"] = Design(Shapes.Union(Shapes.DiscAt(20, 20, 20), Shapes.RectangleAt(46, 0, 40, 50)), BuckKind.Male,
            CornerJoin.Mitre),
        ["cavity"] = Design(Shapes.Slot(60, 30), BuckKind.Female, CornerJoin.Round),
        ["stepped block with a round edge"] = Shaped(Shapes.Rectangle(100, 60), BuckKind.Male),
        ["stepped cavity with a round lip"] = Shaped(Shapes.Slot(60, 30), BuckKind.Female),
    };

    public static MatrixTheoryData<string, bool> Cases => new([.. Designs.Keys], [false, true]);

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_point_is_inside_where_the_wood_is(string name, bool stepped)
    {
        var (design, tool, random, near, inside) = (Designs[name], Tool(Designs[name], stepped), new Random(3), 0, 0);
        for (var i = 0; i < 4000; i++)
        {
            var (p, z) = (new Vec2(Around.MinX + random.NextDouble() * Around.Width,
                Around.MinY + random.NextDouble() * Around.Height), random.NextDouble() * (design.Height + 5));
            var distance = tool.SignedDistance(new(p.X, p.Y, z));
            var wood = IsWood(design, stepped, p, z, out var edge);
            // Where sharp corners run up a drafted wall, the interpolated wall may stand aside by a tenth of a millimetre.
            if (edge < (stepped ? 1e-6 : 0.15)) near++;
            else Assert.True(wood == distance < 0, $"{p}, {z}: {distance}");
            if (wood) inside++;
        }
        Assert.InRange(near, 0, 400);
        Assert.InRange(inside, 100, 3900);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_ball_of_the_distance_meets_no_wood(string name, bool stepped)
    {
        var (design, tool, random, tried) = (Designs[name], Tool(Designs[name], stepped), new Random(5), 0);
        for (var i = 0; i < 600; i++)
        {
            var point = new Vec3(Around.MinX + random.NextDouble() * Around.Width,
                Around.MinY + random.NextDouble() * Around.Height, random.NextDouble() * (design.Height + 30));
            var distance = tool.SignedDistance(point);
            if (distance <= 0.3) continue;
            tried++;
            for (var k = 0; k < 60; k++)
            {
                var way = new Vec3(random.NextDouble() - 0.5, random.NextDouble() - 0.5, random.NextDouble() - 0.5);
                var on = point + way * ((distance - 0.16) / way.Length);
                Assert.False(IsWood(design, stepped, on.Plan, on.Z, out var edge)
                    && edge > 0.15, $"{point} is told to be {distance} from the wood, but {on} is wood");
            }
        }
        Assert.InRange(tried, 100, 600);
    }

    /// <summary>Exact where the nearest place is plain wall, top or an edge between them (elementary geometry).</summary>
    [Theory]
    [InlineData(50, 30, 40, 4)]
    [InlineData(-13, 30, 10, 10)]
    [InlineData(-6, 30, 40, 5)]
    [InlineData(-6, -8, 10, 5)]
    [InlineData(-3, 30, 40, 4)]
    [InlineData(50, 30, 36, 0)]
    public void An_upright_block_is_exact(double x, double y, double z, double expected)
    {
        var design = Design(Shapes.RectangleAt(-3, -4, 106, 68), BuckKind.Male, CornerJoin.Mitre, draft: 0);

        Assert.Equal(expected, Tool(design, stepped: false).SignedDistance(new(x, y, z)), 9);
        Assert.Equal(expected, Tool(design, stepped: true).SignedDistance(new(x, y, z)), 9);
    }

    /// <summary>A ledge is the top of the wall below it: beside that wall it is no nearer than the wall.</summary>
    [Theory]
    [InlineData(24.0002, 19)]
    [InlineData(24.01, 19)]
    [InlineData(30, 19)]
    public void Beside_a_ledge_the_distance_is_that_to_the_wall(double height, double min)
    {
        var design = Designs["stepped block with a round edge"];
        var foot = design.Footprint.Bounds;

        var distance = Tool(design, stepped: false).SignedDistance(new(foot.MinX - 20, 30, height));

        Assert.InRange(distance, min, 33);
        // And over the ledge it is the height.
        Assert.Equal(2, Tool(design, stepped: false).SignedDistance(new(foot.MinX + 5, 30, 26)), 0.05);
    }

    private static BuckDesign Design(Region outline, BuckKind kind, CornerJoin corners, double draft = 5) =>
        Formed.Design(outline, Formed.Spec(kind, 36, draft) with { Stock = [new("12 mm", 12)], Corners = corners });

    /// <summary>A ledge where the uppermost board begins or, in a cavity, the lowest ends.</summary>
    private static BuckDesign Shaped(Region outline, BuckKind kind) =>
        Formed.Design(outline, Formed.Spec(kind, 36) with
        {
            Stock = [new("12 mm", 12)],
            Side = [new() { Draft = 5 }, new() { Height = 0, Inset = 9 }, new() { Height = 12, Draft = 15 }],
            EdgeRadius = 4,
        });

    private static BuckTool Tool(BuckDesign design, bool stepped) =>
        new(BuckSlabs.FromLayers(design.Solid!.Finished, design.Layers, stepped), 0, Around);

    private static bool IsWood(BuckDesign design, bool stepped, Vec2 p, double z, out double edge)
    {
        var region = z >= design.Height ? Region.Empty
            : stepped ? design.Layers.First(l => z < l.Top).Region
            : design.Solid!.Finished.At(z);
        edge = Math.Min(Math.Abs(z - design.Height), region.IsEmpty ? double.PositiveInfinity : region.DistanceToEdge(p));
        if (stepped) edge = Math.Min(edge, design.Layers.Min(l => Math.Abs(l.Top - z)));
        return region.Contains(p);
    }
}
