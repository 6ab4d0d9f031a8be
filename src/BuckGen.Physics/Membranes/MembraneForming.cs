using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>Forms a hot sheet on a rigid tool and computes its thickness.</summary>
/// <remarks>
/// The sheet is a membrane, without stiffness in bending (fair while it is thin against the radii of the tool), of one
/// temperature, and keeps its volume. What touches the tool sticks there, unless the load gives a friction. The shape of what
/// sticks depends on the material but little, the thickness of shallow parts by a few per cent.
/// </remarks>
internal static class MembraneForming
{
    /// <summary>Forms a sheet. The same input gives the same numbers, bit for bit, on one machine.</summary>
    /// <param name="sheet">The sheet in its frame.</param>
    /// <param name="tool">What it is formed on.</param>
    /// <param name="load">What is done to it.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="ArgumentException">The mesh is damaged or clamped nowhere.</exception>
    public static FormedSheet Form(ClampedSheet sheet, ITool tool, FormingLoad load, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(tool);
        ArgumentNullException.ThrowIfNull(load);
        sheet.Validate();
        load.Validate();
        using var run = new DynamicRelaxation(sheet, tool, load);
        var outcome = run.RunToEquilibrium(cancellation);
        ImmutableArray<Vec3> nodes = [.. Enumerable.Range(0, run.Nodes.Count).Select(i => new Vec3(run.Nodes.X[i], run.Nodes.Y[i], run.Nodes.Z[i]))];
        ImmutableArray<PrincipalStretches> stretch = [.. sheet.Mesh.Triangles.Select(t => PrincipalStretchesOf(t, sheet.Mesh, nodes))];
        return new()
        {
            Sheet = sheet,
            Nodes = nodes,
            Stretches = stretch,
            Thickness = [.. stretch.Select(s => sheet.Thickness / (s.Max * s.Min))],
            ContactOrder = [.. run.Contact.ContactOrder],
            FreeNodes = [.. Enumerable.Range(0, nodes.Length).Where(i => run.Contact.IsFree[i]).Select(i => new FreeNode(i, run.Contact.GapAt(nodes[i])))],
            WebNodes = [.. run.SelfContact.WebNodes.Order()],
            Pressure = run.Pressure * 1e6,
            SweptVolume = run.Volume,
            Outcome = outcome,
            Steps = run.Steps,
        };
    }

    private static PrincipalStretches PrincipalStretchesOf(MeshTriangle t, TriangleMesh mesh, ImmutableArray<Vec3> nodes)
    {
        var (p, q) = (mesh.Nodes[t.B] - mesh.Nodes[t.A], mesh.Nodes[t.C] - mesh.Nodes[t.A]);
        var (u, v) = (nodes[t.B] - nodes[t.A], nodes[t.C] - nodes[t.A]);
        var detM = 1 / (p.Cross(q) * p.Cross(q));
        var traceC = detM * (q.LengthSquared * u.Dot(u) - 2 * p.Dot(q) * u.Dot(v) + p.LengthSquared * v.Dot(v));
        var normal = u.Cross(v);
        var detC = detM * normal.Dot(normal);
        var maxEigenvalue = (traceC + Math.Sqrt(Math.Max(traceC * traceC - 4 * detC, 0))) / 2;
        return new(Math.Sqrt(maxEigenvalue), Math.Sqrt(detC / maxEigenvalue));
    }
}
