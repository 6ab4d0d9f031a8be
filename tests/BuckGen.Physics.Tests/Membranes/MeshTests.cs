using BuckGen.Geometry;
using BuckGen.Physics.Membranes;
using Xunit;

namespace BuckGen.Physics.Tests.Membranes;

public class MeshTests
{
    private static readonly Bounds Frame = new(-150, -100, 150, 100);

    /// <summary>Fine along a circle, coarser away from it.</summary>
    private static double Wanted(Vec2 p) => Math.Max(3, 0.3 * Math.Abs(p.Length - 60));

    [Fact]
    public void A_frame_is_filled_whole_and_its_rim_is_the_frame()
    {
        var mesh = FrameMesh.CrissCross(Frame, 20);

        Assert.Equal(15 * 10 * 4, mesh.Triangles.Length);
        AssertSound(mesh);
    }

    [Fact]
    public void A_refined_mesh_is_as_fine_as_wanted_and_no_node_hangs()
    {
        var mesh = Bisection.Refine(FrameMesh.CrissCross(Frame, 40), Wanted);

        AssertSound(mesh);
        Assert.All(mesh.Triangles, t =>
        {
            var (a, b, c) = (mesh.Nodes[t.A], mesh.Nodes[t.B], mesh.Nodes[t.C]);
            Assert.True(a.DistanceTo(b) <= Wanted((a + b + c) * (1.0 / 3)) * 1.001);
            // Halves of right-angled triangles with two equal sides are such triangles again.
            var area = mesh.AreaOf(t);
            Assert.Equal(a.DistanceTo(b) * a.DistanceTo(b) / 4, area, area * 0.2);
        });
        // An even mesh as fine would have 26 667.
        Assert.InRange(mesh.Triangles.Length, 500, 10_000);
    }

    [Fact]
    public void A_mesh_refined_by_a_mirrored_wish_is_a_mirror_image()
    {
        var mesh = Bisection.Refine(FrameMesh.CrissCross(Frame, 40), Wanted);

        static (long, long) Key(double x, double y) => ((long)Math.Round(x * 1e6), (long)Math.Round(y * 1e6));
        var places = mesh.Nodes.Select(p => Key(p.X, p.Y)).ToHashSet();
        Assert.Equal(mesh.Nodes.Length, places.Count);
        Assert.All(mesh.Nodes, p => Assert.True(places.Contains(Key(-p.X, p.Y)) && places.Contains(Key(p.X, -p.Y))));
    }

    [Fact]
    public void A_graded_mesh_forms_like_an_even_one()
    {
        const double half = Formed.Size;
        double Size(Vec2 p) => Math.Max(3, 0.25 * (half - Math.Max(p.X, p.Y)));
        var even = Formed.Quarter(6);
        var sheet = ClampedSheet.FromMesh(Bisection.Refine(even.Mesh, Size), even.Material, even.Thickness, [0], [0]);

        var formed = MembraneForming.Form(sheet, new Cavity(half, 0.5 * half), new(30 * Formed.PressureUnit));

        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        Assert.Equal(0.763, formed.ThicknessRatios().Where(p => p.Position.Plan.Length < 0.15 * half)
            .Average(p => p.ThicknessRatio), 0.015);
    }

    [Fact]
    public void What_cannot_be_formed_is_refused_by_name()
    {
        void Refused<T>(string words, Action act)
            where T : Exception => Assert.Contains(words, Assert.Throws<T>(act).Message, StringComparison.Ordinal);

        var sheet = Formed.Quarter(2);
        void Form(ClampedSheet wrong) => MembraneForming.Form(wrong, new NoTool(), new(1000));
        Refused<ArgumentOutOfRangeException>("thickness of the sheet is 0 mm", () => Form(sheet with { Thickness = 0 }));
        Refused<ArgumentOutOfRangeException>("first constant of the material", () => Form(sheet with { Material = new(0) }));
        Refused<ArgumentOutOfRangeException>("pressure", () => MembraneForming.Form(sheet, new NoTool(), new(-1)));
        Refused<ArgumentOutOfRangeException>("rise of the tool", () =>
            MembraneForming.Form(sheet, new NoTool(), new(1000) { Rise = -1 }));
        Refused<ArgumentException>("boundary conditions for", () => Form(sheet with { BoundaryConditions = [] }));
        Refused<ArgumentException>("clamped nowhere", () =>
            Form(sheet with { BoundaryConditions = [.. sheet.BoundaryConditions.Select(_ => BoundaryCondition.None)] }));
        Refused<ArgumentException>("it must be above 0", () => Form(sheet with { Mesh = new(sheet.Mesh.Nodes, [new(0, 4, 1)]) }));
        Refused<ArgumentOutOfRangeException>("size of a cell", () => FrameMesh.CrissCross(Frame, 1e-3));
    }

    /// <summary>Every triangle counter-clockwise, each side shared by two triangles or on the frame, nothing missing.</summary>
    private static void AssertSound(TriangleMesh mesh)
    {
        mesh.Validate();
        Assert.Equal(Frame.Width * Frame.Height, mesh.Area, 1e-6);
        Assert.All(mesh.BoundaryEdges(), s =>
        {
            var (a, b) = (mesh.Nodes[s.From], mesh.Nodes[s.To]);
            Assert.True((a.X == b.X && Math.Abs(a.X) == 150) || (a.Y == b.Y && Math.Abs(a.Y) == 100));
        });
        Assert.Equal(2 * (Frame.Width + Frame.Height), mesh.BoundaryEdges()
            .Sum(s => mesh.Nodes[s.From].DistanceTo(mesh.Nodes[s.To])), 1e-6);
        Assert.Equal(1,
            mesh.Nodes.Length - (3 * mesh.Triangles.Length + mesh.BoundaryEdges().Length) / 2 + mesh.Triangles.Length);
    }
}
