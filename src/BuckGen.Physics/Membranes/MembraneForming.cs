using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>Forms a hot sheet on a rigid tool and computes its thickness.</summary>
/// <remarks>
/// <para>
/// The sheet is a hyperelastic membrane of constant-strain triangles: incompressible and without bending stiffness. That is a
/// fair assumption while it is thin compared with the radii of the tool. It sticks where it touches the tool, unless the load
/// gives a friction coefficient. The shape of a sheet that sticks depends little on the material, the thickness of shallow
/// parts by a few per cent.
/// </para>
/// <para>
/// Equilibrium is found by dynamic relaxation with viscous damping (A. S. Day, J. R. H. Otter and P. Underwood, from memory);
/// wrinkled triangles have the relaxed energy of A. C. Pipkin (IMA J. Appl. Math. 36 (1986) 85, from memory).
/// </para>
/// </remarks>
public static class MembraneForming
{
    /// <summary>Forms a sheet. On one machine the same input gives the same numbers, bit for bit.</summary>
    /// <param name="sheet">The sheet in its frame.</param>
    /// <param name="tool">The tool, in coordinates in which z = 0 is the clamp frame at the end.</param>
    /// <param name="load">Rise of the tool, pressure, friction and tolerances.</param>
    /// <param name="cancellation">Stops the simulation.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    /// <exception cref="ArgumentException">The mesh is damaged or clamped nowhere, or there are not as many boundary conditions
    /// as nodes.</exception>
    /// <returns>The formed sheet; read its <see cref="FormedSheet.Outcome"/> before its numbers.</returns>
    /// <exception cref="OperationCanceledException">The simulation was cancelled.</exception>
    public static FormedSheet Form(ClampedSheet sheet, ITool tool, FormingLoad load, CancellationToken cancellation = default) =>
        FormInStages(sheet, tool, load, [], cancellation)[^1];

    /// <summary>
    /// Forms a sheet and records it in equilibrium under some smaller pressures on the way. On one machine the same input gives
    /// the same numbers, bit for bit.
    /// </summary>
    /// <remarks>
    /// The shape depends on the pressure over modulus and thickness alone. So a stage is also a sheet that is stiffer or thicker
    /// in the same ratio, under the full pressure.
    /// </remarks>
    /// <param name="sheet">The sheet in its frame.</param>
    /// <param name="tool">The tool, in coordinates in which z = 0 is the clamp frame at the end.</param>
    /// <param name="load">Rise of the tool, full pressure, friction and tolerances.</param>
    /// <param name="stops">The smaller pressures, Pa, ascending, above 0 and below the full one.</param>
    /// <param name="cancellation">Stops the simulation.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    /// <exception cref="ArgumentException">The mesh is damaged or clamped nowhere, there are not as many boundary conditions as
    /// nodes, or the pressures do not ascend.</exception>
    /// <returns>
    /// The sheet at each stop and at the full pressure. After a stage that failed, the later ones are that stage.
    /// </returns>
    /// <exception cref="OperationCanceledException">The simulation was cancelled.</exception>
    public static ImmutableArray<FormedSheet> FormInStages(
        ClampedSheet sheet, ITool tool, FormingLoad load, ImmutableArray<double> stops, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(tool);
        ArgumentNullException.ThrowIfNull(load);
        sheet.Validate();
        load.Validate(stops);
        using var run = new DynamicRelaxation(sheet, tool, load);
        var stages = ImmutableArray.CreateBuilder<FormedSheet>();
        foreach (var pressure in stops.Add(load.Pressure))
        {
            stages.Add(stages is [.., { Outcome: not FormingOutcome.Converged } failed]
                ? failed
                : Result(sheet, run, run.RunToEquilibrium(pressure, cancellation)));
        }
        return stages.ToImmutable();
    }

    private static FormedSheet Result(ClampedSheet sheet, DynamicRelaxation run, FormingOutcome outcome)
    {
        ImmutableArray<Vec3> nodes =
            [.. Enumerable.Range(0, run.Nodes.Count).Select(i => new Vec3(run.Nodes.X[i], run.Nodes.Y[i], run.Nodes.Z[i]))];
        ImmutableArray<PrincipalStretches> stretch =
            [.. sheet.Mesh.Triangles.Select(t => PrincipalStretchesOf(t, sheet, nodes))];
        return new()
        {
            Sheet = sheet,
            Nodes = nodes,
            Stretches = stretch,
            Thickness = [.. stretch.Zip(sheet.Mesh.Triangles, (s, t) => sheet.ThicknessBefore(t) / (s.Max * s.Min))],
            ContactOrder = [.. run.Contact.ContactOrder],
            FreeNodes = [.. Enumerable.Range(0, nodes.Length).Where(i => run.Contact.IsFree[i])
                .Select(i => new FreeNode(i, run.Contact.GapAt(nodes[i])))],
            WebNodes = [.. run.SelfContact.WebNodes.Order()],
            Pressure = run.Pressure * 1e6,
            SweptVolume = run.Volume,
            Outcome = outcome,
            Steps = run.Steps,
        };
    }

    private static PrincipalStretches PrincipalStretchesOf(MeshTriangle t, ClampedSheet sheet, ImmutableArray<Vec3> nodes)
    {
        var (p, q) = sheet.EdgesBefore(t);
        var (u, v) = (nodes[t.B] - nodes[t.A], nodes[t.C] - nodes[t.A]);
        var detM = 1 / p.Cross(q).LengthSquared;
        var traceC = detM * (q.LengthSquared * u.Dot(u) - 2 * p.Dot(q) * u.Dot(v) + p.LengthSquared * v.Dot(v));
        var normal = u.Cross(v);
        var detC = detM * normal.Dot(normal);
        var maxEigenvalue = (traceC + Math.Sqrt(Math.Max(traceC * traceC - 4 * detC, 0))) / 2;
        return new(Math.Sqrt(maxEigenvalue), Math.Sqrt(detC / maxEigenvalue));
    }
}
