using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>
/// A sheet of uniform thickness in its clamp frame, before forming: flat, or sagged by its own weight when it was heated.
/// </summary>
/// <param name="Mesh">Mesh of the sheet inside the frame; with planes of symmetry, of the part of it that is computed.</param>
/// <param name="BoundaryConditions">Boundary condition of each node, in the order of the nodes.</param>
/// <param name="Material">Material of the hot sheet.</param>
/// <param name="Thickness">Thickness, mm, 0.001 to 100.</param>
public sealed record ClampedSheet(
    TriangleMesh Mesh, ImmutableArray<BoundaryCondition> BoundaryConditions, HyperelasticMaterial Material, double Thickness)
{
    /// <summary>
    /// Sag of each node below the frame, mm, 0 to 10 000; 0 for clamped nodes. Empty for a flat sheet. A sagged sheet has flowed:
    /// it is free of stress and as much thinner as its area grew.
    /// </summary>
    public ImmutableArray<double> Sag { get; init; } = [];

    /// <summary>
    /// Modulus of each triangle over that of the material, 0.01 to 100: above 1 where the sheet is colder. Empty for 1
    /// everywhere.
    /// </summary>
    public ImmutableArray<double> RelativeModulus { get; init; } = [];

    /// <summary>Largest sag, mm.</summary>
    internal double MaxSag => Sag.IsEmpty ? 0 : Sag.Max();

    /// <summary>Position of a node before forming, mm; z = 0 is the frame.</summary>
    internal Vec3 NodeBefore(int i) => new(Mesh.Nodes[i].X, Mesh.Nodes[i].Y, Sag.IsEmpty ? 0 : -Sag[i]);

    /// <summary>The edges of a triangle from its first node, before forming, mm.</summary>
    internal (Vec3 P, Vec3 Q) EdgesBefore(MeshTriangle t) =>
        (NodeBefore(t.B) - NodeBefore(t.A), NodeBefore(t.C) - NodeBefore(t.A));

    /// <summary>Thickness of a triangle before forming, mm.</summary>
    internal double ThicknessBefore(MeshTriangle t)
    {
        var (p, q) = EdgesBefore(t);
        return Thickness * 2 * Mesh.AreaOf(t) / p.Cross(q).Length;
    }

    /// <summary>
    /// A sheet that is clamped along its whole boundary, except where the boundary lies in a plane of symmetry.
    /// </summary>
    /// <param name="mesh">Mesh of the sheet inside the frame.</param>
    /// <param name="material">Material of the hot sheet.</param>
    /// <param name="thickness">Thickness, mm, 0.001 to 100.</param>
    /// <param name="symmetryX">Planes of symmetry x = const, mm.</param>
    /// <param name="symmetryY">Planes of symmetry y = const, mm.</param>
    /// <exception cref="ArgumentException">An edge belongs to more than two triangles.</exception>
    public static ClampedSheet FromMesh(
        TriangleMesh mesh, HyperelasticMaterial material, double thickness,
        double[]? symmetryX = null, double[]? symmetryY = null)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        var boundaryConditions = new BoundaryCondition[mesh.Nodes.Length];
        foreach (var (from, to) in mesh.BoundaryEdges())
        {
            var (a, b) = (mesh.Nodes[from], mesh.Nodes[to]);
            var boundaryCondition = LiesInPlane(a.X, b.X, symmetryX) ? BoundaryCondition.FixedX
                : LiesInPlane(a.Y, b.Y, symmetryY) ? BoundaryCondition.FixedY : BoundaryCondition.Clamped;
            boundaryConditions[from] |= boundaryCondition;
            boundaryConditions[to] |= boundaryCondition;
        }
        return new(mesh, [.. boundaryConditions], material, thickness);
    }

    /// <summary>
    /// Characteristic length, mm: twice the area over the clamped length. It is half the width of a strip, the radius of a disc,
    /// half the side of a square.
    /// </summary>
    internal double CharacteristicLength()
    {
        var clamped = Mesh.BoundaryEdges()
            .Where(s => BoundaryConditions[s.From] == BoundaryCondition.Clamped
                && BoundaryConditions[s.To] == BoundaryCondition.Clamped)
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
        var count = BoundaryConditions.IsDefault ? 0 : BoundaryConditions.Length;
        if (count != Mesh.Nodes.Length)
            throw new ArgumentException($"There are {count} boundary conditions for {Mesh.Nodes.Length} nodes.");
        Validate(Sag, count, 0, 10_000, "sag", " mm");
        Validate(RelativeModulus, Mesh.Triangles.Length, 0.01, 100, "relative modulus", "");
        if (Sag.Where((s, i) => s != 0 && BoundaryConditions[i] == BoundaryCondition.Clamped).Any())
            throw new ArgumentException("A clamped node can't sag.");
    }

    private static void Validate(ImmutableArray<double> values, int count, double min, double max, string name, string unit)
    {
        if (values.IsDefault || (values.Length != 0 && values.Length != count))
            throw new ArgumentException($"The {name} must be empty or have {count} values.");
        foreach (var value in values) Bound.Check(value, min, max, name, unit);
    }

    private static bool LiesInPlane(double a, double b, double[]? planes) => planes is not null
        && planes.Any(p => IsNear(a, p) && IsNear(b, p));

    private static bool IsNear(double value, double plane) => Math.Abs(value - plane) <= 1e-9 * (1 + Math.Abs(plane));
}
