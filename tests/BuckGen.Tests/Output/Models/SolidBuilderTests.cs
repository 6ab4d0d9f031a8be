using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Output.Models.Meshing;
using BuckGen.Settings;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Output.Models;

/// <summary>Solids of any plans, such as no buck has.</summary>
[Trait("Tier", "slow")]
public class SolidBuilderTests
{
    private static readonly Region Left = Shapes.RectangleAt(0, 0, 10, 10), Right = Shapes.RectangleAt(10, 10, 10, 10),
        Both = Shapes.Union(Left, Right);
    private static readonly Region Round = Shapes.RectangleAt(0, 0, 20, 20);

    [Fact]
    public void A_box_has_eight_corners_and_twelve_triangles()
    {
        var mesh = SolidBuilder.Build(Straight((0, 5, Left)));

        Assert.Empty(MeshFaults.Find(mesh));
        Assert.Equal((8, 12, 500.0), (mesh.Points.Length, mesh.Triangles.Length, mesh.Volume));
        Assert.Equal((new(0, 0, 0), new(10, 10, 5)), (mesh.MinCorner, mesh.MaxCorner));
    }

    [Fact]
    public void Layers_of_one_plan_are_one_body_without_faces_between_them()
    {
        var mesh = SolidBuilder.Build(Straight((0, 5, Left), (5, 8, Left)));

        Assert.Empty(MeshFaults.Find(mesh));
        // Twelve triangles of a box and eight more where the walls are divided.
        Assert.Equal((20, 800.0), (mesh.Triangles.Length, mesh.Volume));
    }

    [Fact]
    public void Nothing_makes_an_empty_mesh() =>
        Assert.True(SolidBuilder.Build([new(0, Region.Empty), new(5, Region.Empty)]).IsEmpty);

    [Fact]
    public void Pieces_that_touch_along_an_upright_edge_stay_two() =>
        Assert.Equal([2, 2], Sound(SolidBuilder.Build(Straight((0, 5, Both))), 1000));

    [Fact]
    public void Pieces_that_touch_along_a_level_edge_stay_two() =>
        Assert.Equal([2, 2], Sound(SolidBuilder.Build(Straight((0, 5, Left), (5, 10, Shapes.RectangleAt(10, 0, 10, 10)))), 1000));

    [Fact]
    public void Pieces_that_touch_in_a_corner_stay_two() =>
        Assert.Equal([2, 2], Sound(SolidBuilder.Build(Straight((0, 5, Left), (5, 10, Right))), 1000));

    // Between two plates two pieces touch along an edge whose ends are inside the plates' faces: one body with a hole through it.
    [Fact]
    public void An_edge_between_two_bodies_that_are_one_at_both_of_its_ends_is_distinguished()
    {
        var mesh = SolidBuilder.Build(Straight((0, 5, Round), (5, 10, Both), (10, 15, Round)));

        Assert.Equal([0], Sound(mesh, 2000 + 1000 + 2000));
        // Each piece has a corner of its own in the middle of the edge.
        Assert.Equal(2, mesh.Points.Count(p => p == new Vec3(10, 10, 7.5)));
        // Two plates and two blocks, less what the blocks cover twice.
        Assert.Equal(2 * (2 * 400 + 4 * 100) + 2 * 4 * 50 - 2 * 2 * 100,
            mesh.Triangles.Sum(t => MeshFaults.Area(mesh.Points[t.A], mesh.Points[t.B], mesh.Points[t.C])), 1e-6);
    }

    [Fact]
    public void A_hole_makes_a_ring_and_a_lid_on_it_a_ball()
    {
        var ring = Shapes.Counter(30, 20, 10, 10);

        Assert.Equal([0], Sound(SolidBuilder.Build(Straight((0, 5, ring))), 2500));
        Assert.Equal([2], Sound(SolidBuilder.Build(Straight((0, 5, ring), (5, 6, Shapes.Rectangle(30, 20)))), 3100));
        // Between two lids the hole is a cavity, with a surface of its own.
        Assert.Equal([2, 2],
            Sound(SolidBuilder.Build(Straight((0, 1, Shapes.Rectangle(30, 20)), (1, 6, ring), (6, 7, Shapes.Rectangle(30, 20)))),
                3700));
    }

    [Fact]
    public void More_edges_than_can_be_cut_into_triangles_in_time_are_refused()
    {
        static Region Round(double radius) => Region.FromLoops([Loop.Polygon([.. Enumerable.Range(0, 20_001)
            .Select(i => new Vec2(radius, 0).Turned(2 * Math.PI * i / 20_001))])]);

        Assert.Equal("The solid model would have 40002 edges between two heights; the limit is 40000. Leave the model out, or "
            + "simplify the drawing.",
            Assert.Throws<SpecException>(() => SolidBuilder.Build([new(0, Round(2000)), new(5, Round(1990))])).Message);
    }

    // A pyramid's frustum by the formula h/3 (A + B + √AB).
    [Fact]
    public void A_slope_between_two_squares_is_a_frustum()
    {
        var mesh = SolidBuilder.Build([new(0, Round), new(9, Shapes.RectangleAt(5, 5, 10, 10))]);

        Assert.Equal([2], Sound(mesh, 3 * (400 + 100 + 200)));
        Assert.Equal((8, 12), (mesh.Points.Length, mesh.Triangles.Length));
    }

    [Fact]
    public void A_slope_beside_an_upright_wall_is_closed() =>
        Assert.Equal([2], Sound(SolidBuilder.Build([new(0, Round), new(9, Shapes.RectangleAt(0, 5, 10, 15))]), null));

    // Edges that both plans have part wood from air as well; without them the strip's surroundings were taken for a step.
    [Fact]
    public void A_hole_that_grows_on_one_side_only_is_a_step_there()
    {
        var (below, above) = (Region.FromLoops([Loop.Rectangle(new(0, 0, 20, 20)), Loop.Rectangle(new(5, 5, 15, 15))]),
            Region.FromLoops([Loop.Rectangle(new(1, 1, 19, 19)), Loop.Rectangle(new(5, 5, 15, 17))]));

        Assert.Equal([0], Sound(SolidBuilder.Build(Straight((0, 5, below), (5, 6, above))), 5 * 300 + 324 - 120));
        Assert.Equal([0], Sound(SolidBuilder.Build([new(0, below), new(5, above)]), null));
    }

    // A loop that crosses itself, as an offset may within its tolerance: both parts are wood, whichever way they run.
    [Fact]
    public void A_knot_in_a_loop_is_wood_on_both_sides()
    {
        var knot = new Region(
            [new(Loop.Polygon([new(0, 0), new(10, 0), new(10, 10), new(9.9, 10.1), new(10.1, 10.1), new(10, 10), new(0, 10)]),
                [])]);

        Assert.Equal([2, 2], Sound(SolidBuilder.Build(Straight((0, 4, knot))), 400.04));
        Sound(SolidBuilder.Build([new(0, knot), new(1, Shapes.RectangleAt(1, 1, 8, 8)), new(2, knot)]), null);
    }

    [Fact]
    public void Whatever_is_stacked_is_closed_and_of_the_right_volume() =>
        Gen.Select(RandomRegion.Islands, RandomRegion.Islands, RandomRegion.Islands).Sample(plans =>
        {
            var (a, b, c) = plans;
            Sound(SolidBuilder.Build(Straight((0, 4, a), (4, 9, b), (9, 10, c), (10, 12, a))), 6 * a.Area + 5 * b.Area + c.Area);
        }, iter: 100);

    [Fact]
    public void Whatever_slopes_is_closed() =>
        Gen.Select(RandomRegion.Islands, RandomRegion.Islands, RandomRegion.Islands).Sample(plans =>
            Sound(SolidBuilder.Build(
                [new(0, plans.Item1), new(4, plans.Item2), new(4, plans.Item3), new(9, plans.Item1), new(10, plans.Item2)]),
                null), iter: 100);

    /// <summary>The Euler characteristics of a mesh without faults and of the given volume, within 0.1 %.</summary>
    private static int[] Sound(SolidMesh mesh, double? volume)
    {
        Assert.Empty(MeshFaults.Find(mesh));
        if (volume is { } wanted) Assert.InRange(mesh.Volume / wanted, 0.999, 1.001);
        return MeshFaults.EulerCharacteristics(mesh);
    }

    private static IEnumerable<Level> Straight(params (double Bottom, double Top, Region Plan)[] layers) =>
        layers.SelectMany(l => (Level[])[new(l.Bottom, l.Plan), new(l.Top, l.Plan)]);
}
