using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>A sheet after forming, as a mesh. The coordinates are those of the tool; z = 0 is the clamp frame.</summary>
public sealed record FormedSheet
{
    /// <summary>The sheet before forming.</summary>
    public required ClampedSheet Sheet { get; init; }

    /// <summary>Positions of the nodes, mm.</summary>
    public required ImmutableArray<Vec3> Nodes { get; init; }

    /// <summary>
    /// Thickness of each triangle, mm: its volume of plastic over its area. Where the sheet is wrinkled, it is the thickness of
    /// the gathered sheet.
    /// </summary>
    public required ImmutableArray<double> Thickness { get; init; }

    /// <summary>Principal stretches of each triangle.</summary>
    public required ImmutableArray<PrincipalStretches> Stretches { get; init; }

    /// <summary>
    /// Order in which the nodes came into contact with the tool, from 0; -1 for nodes of the frame and those without contact.
    /// </summary>
    public required ImmutableArray<int> ContactOrder { get; init; }

    /// <summary>The nodes that are neither in contact nor clamped, with their gaps.</summary>
    public required ImmutableArray<FreeNode> FreeNodes { get; init; }

    /// <summary>The nodes in self-contact of the underside: where webs stand.</summary>
    public required ImmutableArray<int> WebNodes { get; init; }

    /// <summary>Pressure difference at the end, Pa.</summary>
    public required double Pressure { get; init; }

    /// <summary>
    /// Volume between the plane of the frame and the sheet below it, mm³; what stands above the plane counts negative.
    /// </summary>
    public required double SweptVolume { get; init; }

    /// <summary>How the simulation ended. The results are meaningful only if it converged.</summary>
    public required FormingOutcome Outcome { get; init; }

    /// <summary>Why the simulation did not converge, with the remedy; null when it did.</summary>
    public string? FailureMessage => Outcome switch
    {
        FormingOutcome.Converged => null,
        FormingOutcome.Burst => FormattableString.Invariant(
            $"The sheet burst near {BurstPosition.Plan} at a height of {BurstPosition.Z:0.#} mm: it touches nothing there ")
            + "and was stretched to more than 200 times its area. Either nothing holds it at this pressure, or the flanks of a "
            + "web have passed each other. Use less pressure or smaller triangles.",
        _ => FormattableString.Invariant($"The sheet did not converge within {Steps} steps. ")
            + "Use larger triangles, or allow a larger tolerance on the path.",
    };

    /// <summary>Number of steps of dynamic relaxation.</summary>
    public required int Steps { get; init; }

    /// <summary>Area of the formed sheet, mm².</summary>
    public double Area => Sheet.Mesh.Triangles.Sum(AreaOf);

    /// <summary>Volume of plastic before forming, mm³.</summary>
    public double PlasticVolumeBefore => Sheet.Mesh.Area * Sheet.Thickness;

    /// <summary>
    /// Volume of plastic after forming, the sum of thickness times area, mm³: equal to that before, but for rounding.
    /// </summary>
    public double PlasticVolumeAfter => Sheet.Mesh.Triangles.Select((t, i) => AreaOf(t) * Thickness[i]).Sum();

    /// <summary>Mean thickness over the formed surface, mm.</summary>
    public double MeanThickness => PlasticVolumeAfter / Area;

    /// <summary>The thinnest triangle among those that count.</summary>
    /// <remarks>
    /// At a sharp edge of a female tool the thickness has no minimum: the finer the mesh, the thinner. So a minimum is meaningful
    /// only at a stated distance from such edges, or where they are rounded.
    /// </remarks>
    /// <param name="counts">Which triangles count, by their centroid, mm; null for all.</param>
    /// <returns>Null when no place counts.</returns>
    public ThinPlace? Thinnest(Func<Vec3, bool>? counts = null)
    {
        ThinPlace? thinnest = null;
        for (var i = 0; i < Thickness.Length; i++)
        {
            if (thinnest is { } current && Thickness[i] >= current.Thickness) continue;
            var centroid = CentroidOf(Sheet.Mesh.Triangles[i]);
            if (counts is null || counts(centroid)) thinnest = new(Thickness[i], centroid, i);
        }
        return thinnest;
    }

    /// <summary>The centroid of a triangle, mm.</summary>
    /// <param name="t">A triangle of the mesh.</param>
    public Vec3 CentroidOf(MeshTriangle t) => (Nodes[t.A] + Nodes[t.B] + Nodes[t.C]) * (1.0 / 3);

    /// <summary>The centroid of the thinnest triangle with a free node, mm.</summary>
    public Vec3 BurstPosition
    {
        get
        {
            var freeNodes = FreeNodes.Select(o => o.Node).ToHashSet();
            var stretching = Enumerable.Range(0, Thickness.Length)
                .Where(i => Sheet.Mesh.Triangles[i] is var t
                    && (freeNodes.Contains(t.A) || freeNodes.Contains(t.B) || freeNodes.Contains(t.C)));
            return CentroidOf(Sheet.Mesh.Triangles[stretching.MinBy(i => Thickness[i])]);
        }
    }

    private double AreaOf(MeshTriangle t) => (Nodes[t.B] - Nodes[t.A]).Cross(Nodes[t.C] - Nodes[t.A]).Length / 2;
}

/// <summary>How the simulation ended.</summary>
public enum FormingOutcome
{
    /// <summary>The sheet is in equilibrium: its residual force fell to 0.0001 of the reaction force.</summary>
    Converged,

    /// <summary>It did not converge within the allowed number of steps, at most 200 000.</summary>
    StepLimit,

    /// <summary>
    /// A free triangle was stretched to 200 times its area. Either no tool supports the sheet at this pressure, or the flanks of
    /// a web have passed through each other and been inflated; a finer mesh helps then.
    /// </summary>
    Burst,
}

/// <summary>The two principal stretches of a triangle, length after over length before.</summary>
/// <param name="Max">The larger stretch.</param>
/// <param name="Min">The smaller stretch.</param>
public readonly record struct PrincipalStretches(double Max, double Min)
{
    /// <summary>
    /// Whether the sheet is wrinkled there: narrower than a strip in uniaxial tension with the same larger stretch.
    /// </summary>
    public bool IsWrinkled => Min * Min * Math.Max(Max, 1) < 1 - 1e-6 && Min < 1;
}

/// <summary>A node without contact.</summary>
/// <param name="Node">Number of the node.</param>
/// <param name="Gap">Gap to the tool, mm.</param>
public readonly record struct FreeNode(int Node, double Gap);

/// <summary>The thinnest place.</summary>
/// <param name="Thickness">Thickness, mm.</param>
/// <param name="Position">Position on the formed sheet, mm.</param>
/// <param name="Triangle">Number of the triangle.</param>
public readonly record struct ThinPlace(double Thickness, Vec3 Position, int Triangle);
