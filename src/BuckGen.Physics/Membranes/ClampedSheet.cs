using System.Collections.Immutable;

namespace BuckGen.Physics.Membranes;

/// <summary>A flat sheet of even thickness in its clamp frame, before forming.</summary>
/// <param name="Mesh">The sheet inside the frame, cut into triangles; with planes of symmetry, the part of it that is
/// computed.</param>
/// <param name="BoundaryConditions">What each node may not do, in the order of the nodes.</param>
/// <param name="Material">What the hot sheet is made of.</param>
/// <param name="Thickness">Thickness, mm, 0.001 to 100.</param>
internal sealed record ClampedSheet(TriangleMesh Mesh, ImmutableArray<BoundaryCondition> BoundaryConditions, HyperelasticMaterial Material, double Thickness)
{
    /// <summary>A sheet clamped all along its rim, but where the rim lies in a plane of symmetry.</summary>
    /// <param name="mesh">The sheet inside the frame.</param>
    /// <param name="material">What the hot sheet is made of.</param>
    /// <param name="thickness">Thickness, mm, 0.001 to 100.</param>
    /// <param name="symmetryX">Planes of symmetry x = const, mm.</param>
    /// <param name="symmetryY">Planes of symmetry y = const, mm.</param>
    public static ClampedSheet FromMesh(
        TriangleMesh mesh, HyperelasticMaterial material, double thickness, double[]? symmetryX = null, double[]? symmetryY = null)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        var boundaryConditions = new BoundaryCondition[mesh.Nodes.Length];
        foreach (var (from, to) in mesh.BoundaryEdges())
        {
            var (a, b) = (mesh.Nodes[from], mesh.Nodes[to]);
            var boundaryCondition = LiesInPlane(a.X, b.X, symmetryX) ? BoundaryCondition.FixedX : LiesInPlane(a.Y, b.Y, symmetryY) ? BoundaryCondition.FixedY : BoundaryCondition.Clamped;
            boundaryConditions[from] |= boundaryCondition;
            boundaryConditions[to] |= boundaryCondition;
        }
        return new(mesh, [.. boundaryConditions], material, thickness);
    }

    /// <summary>
    /// Half the width of a strip, the radius of a disc, half the side of a square frame: twice the area over the length that is
    /// clamped, mm.
    /// </summary>
    internal double CharacteristicLength()
    {
        var clamped = Mesh.BoundaryEdges().Where(s => BoundaryConditions[s.From] == BoundaryCondition.Clamped && BoundaryConditions[s.To] == BoundaryCondition.Clamped)
            .Sum(s => Mesh.Nodes[s.From].DistanceTo(Mesh.Nodes[s.To]));
        return clamped > 0 ? 2 * Mesh.Area / clamped : throw new ArgumentException("The sheet is clamped nowhere.");
    }

    internal void Validate()
    {
        ArgumentNullException.ThrowIfNull(Mesh);
        ArgumentNullException.ThrowIfNull(Material);
        Mesh.Validate();
        Material.Validate();
        Bound.Check(Thickness, 0.001, 100, "thickness of the sheet", " mm");
        if (BoundaryConditions.Length != Mesh.Nodes.Length)
            throw new ArgumentException($"There are {BoundaryConditions.Length} boundary conditions for {Mesh.Nodes.Length} nodes.");
    }

    private static bool LiesInPlane(double a, double b, double[]? planes) => planes is not null && planes.Any(p => IsNear(a, p) && IsNear(b, p));

    private static bool IsNear(double value, double plane) => Math.Abs(value - plane) <= 1e-9 * (1 + Math.Abs(plane));
}
