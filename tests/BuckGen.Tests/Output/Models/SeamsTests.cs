using BuckGen.Geometry;
using BuckGen.Output.Models.Meshing;
using Xunit;

namespace BuckGen.Tests.Output.Models;

/// <summary>Which edge of which triangle is sewn to which.</summary>
public class SeamsTests
{
    private static readonly SurfacePoint O = new(0, new(0, 0)), Right = new(0, new(1, 0)), Back = new(0, new(0, 1)),
        Up = new(1, new(0, 0));

    /// <summary>The four sides of a tetrahedron, each seen from outside.</summary>
    private static readonly SurfacePoint[] Tetrahedron = [O, Back, Right, O, Right, Up, Right, Back, Up, Back, O, Up];

    [Fact]
    public void The_edges_of_a_triangle_follow_each_other_round_it() =>
        Assert.Equal([1, 2, 0, 4, 5, 3], Enumerable.Range(0, 6).Select(Seams.Next));

    [Fact]
    public void Every_edge_of_a_closed_surface_is_sewn_once_to_the_one_that_leads_back()
    {
        var seams = Seams.Find(Tetrahedron, Place).ToArray();

        Assert.Equal(Enumerable.Range(0, 12), seams.SelectMany(s => (int[])[s.Edge, s.Other]).Order());
        Assert.All(seams, s => Assert.Equal((Tetrahedron[s.Edge], Tetrahedron[Seams.Next(s.Edge)]),
            (Tetrahedron[Seams.Next(s.Other)], Tetrahedron[s.Other])));
    }

    [Fact]
    public void An_edge_that_stays_open_is_refused_with_its_place() =>
        Assert.Equal($"The model is open along an edge from {Place(O)} to {Place(Right)}.",
            Assert.Throws<InvalidOperationException>(() => Seams.Find([O, Right, Up, Right, Back, Up, Back, O, Up], Place)
                .ToArray()).Message);

    /// <summary>
    /// Two wedges of wood share one edge and nothing else: each keeps its own two sides, wherever the edge points and however
    /// the wedges are turned about it.
    /// </summary>
    [Theory]
    [InlineData(0, 0, 7)]
    [InlineData(0, 7, 0)]
    [InlineData(7, 0, 0)]
    [InlineData(0, 0, -7)]
    [InlineData(3, -5, 2)]
    [InlineData(-4, 1, 6)]
    public void Two_bodies_that_touch_along_an_edge_come_apart(double x, double y, double z)
    {
        var axis = new Vec3(x, y, z);
        // Two directions square to the axis and to each other.
        var side = axis.Cross(x == 0 && y == 0 ? new(1, 0, 0) : new(0, 0, 1));
        var across = axis.Cross(side);
        side *= 1 / side.Length;
        across *= 1 / across.Length;
        SurfacePoint from = new(0, new(0, 0)), to = new(0, new(1, 0));
        for (var turn = 0; turn < 360; turn += 15)
        {
            // Round the axis: wood from 0 to 40 degrees and from 100 to 170, air between.
            SurfacePoint[] rims = [.. Enumerable.Range(0, 4).Select(n => new SurfacePoint(1, new(n, 0)))];
            double[] angles = [turn, turn + 40, turn + 100, turn + 170];
            // A wedge's first side has its wood behind it and leads back along the axis; its second leads forth.
            SurfacePoint[] corners = [to, from, rims[0], from, to, rims[1], to, from, rims[2], from, to, rims[3]];

            var seams = Seams.Find(corners, p => p == from ? default : p == to ? axis : Direction(angles[p.Point.X]))
                .Take(2);

            Assert.Equal([(3, 0), (9, 6)], seams.Order());
        }

        Vec3 Direction(double degrees) =>
            side * Math.Cos(degrees * Math.PI / 180) + across * Math.Sin(degrees * Math.PI / 180);
    }

    private static Vec3 Place(SurfacePoint p) => new(p.Point.X, p.Point.Y, p.Level);
}
