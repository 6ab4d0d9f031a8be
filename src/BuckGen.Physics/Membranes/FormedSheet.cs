using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>A sheet after forming, as a net of triangles. Positions go with the tool; z = 0 is the clamp frame.</summary>
internal sealed record FormedSheet
{
    /// <summary>The sheet before.</summary>
    public required ClampedSheet Sheet { get; init; }

    /// <summary>Where the nodes are, mm.</summary>
    public required ImmutableArray<Vec3> Nodes { get; init; }

    /// <summary>
    /// Thickness of each triangle, mm: its volume of plastic over its area. Where it is wrinkled, that of the gathered sheet.
    /// </summary>
    public required ImmutableArray<double> Thickness { get; init; }

    /// <summary>The larger and the smaller stretch of each triangle, length after over length before.</summary>
    public required ImmutableArray<PrincipalStretches> Stretches { get; init; }

    /// <summary>
    /// Place of each node in the order in which the tool was met, from 0; -1 for nodes of the frame and those that never met it.
    /// </summary>
    public required ImmutableArray<int> ContactOrder { get; init; }

    /// <summary>The nodes that neither met the tool nor are held by the frame, and how far off they are.</summary>
    public required ImmutableArray<FreeNode> FreeNodes { get; init; }

    /// <summary>The nodes that the sheet's own underside has caught: where webs stand.</summary>
    public required ImmutableArray<int> WebNodes { get; init; }

    /// <summary>Pressure difference at the end, Pa.</summary>
    public required double Pressure { get; init; }

    /// <summary>Volume swept below the plane of the frame, mm³; negative for what stands above it.</summary>
    public required double SweptVolume { get; init; }

    /// <summary>How it ended. Only a sheet at rest is worth reading.</summary>
    public required FormingOutcome Outcome { get; init; }

    /// <summary>Why the sheet did not come to rest, in plain words with the remedy; null where it did.</summary>
    public string? FailureMessage => Outcome switch
    {
        FormingOutcome.Converged => null,
        FormingOutcome.Burst => FormattableString.Invariant(
            $"The sheet burst near {BurstPosition.Plan} at a height of {BurstPosition.Z:0.#} mm: it touches nothing there and was stretched to more than 200 times its area. ")
            + "Either nothing holds it at this pressure, or the flanks of a web have passed each other. Use less pressure or smaller triangles.",
        _ => "The sheet did not converge within 200 000 steps. Use larger triangles, or allow a larger tolerance on the path.",
    };

    /// <summary>Steps taken.</summary>
    public required int Steps { get; init; }

    /// <summary>Area of the formed sheet, mm².</summary>
    public double Area => Sheet.Mesh.Triangles.Sum(AreaOf);

    /// <summary>Volume of plastic before forming, mm³.</summary>
    public double PlasticVolumeBefore => Sheet.Mesh.Area * Sheet.Thickness;

    /// <summary>Volume of plastic after forming, the sum of thickness times area, mm³: equal to that before, but for rounding.</summary>
    public double PlasticVolumeAfter => Sheet.Mesh.Triangles.Select((t, i) => AreaOf(t) * Thickness[i]).Sum();

    /// <summary>Mean thickness over the formed surface, mm.</summary>
    public double MeanThickness => PlasticVolumeAfter / Area;

    /// <summary>The thinnest triangle, away from places where the mesh alone decides.</summary>
    /// <remarks>
    /// At a sharp edge of a hollow tool the thickness has no least value: the finer the mesh, the thinner. So a minimum means
    /// something only at a stated distance from such edges, or where they are rounded.
    /// </remarks>
    /// <param name="counts">Which places count, by the middle of the triangle; all of them where it is null.</param>
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

    /// <summary>The middle of a triangle.</summary>
    public Vec3 CentroidOf(MeshTriangle t) => (Nodes[t.A] + Nodes[t.B] + Nodes[t.C]) * (1.0 / 3);

    /// <summary>The thinnest triangle of which a corner still moves.</summary>
    public Vec3 BurstPosition
    {
        get
        {
            var freeNodes = FreeNodes.Select(o => o.Node).ToHashSet();
            var stretching = Enumerable.Range(0, Thickness.Length).Where(i => Sheet.Mesh.Triangles[i] is var t && (freeNodes.Contains(t.A) || freeNodes.Contains(t.B) || freeNodes.Contains(t.C)));
            return CentroidOf(Sheet.Mesh.Triangles[stretching.MinBy(i => Thickness[i])]);
        }
    }

    private double AreaOf(MeshTriangle t) => (Nodes[t.B] - Nodes[t.A]).Cross(Nodes[t.C] - Nodes[t.A]).Length / 2;
}

/// <summary>How the forming of a sheet ended.</summary>
internal enum FormingOutcome
{
    /// <summary>The sheet came to rest: its unbalanced force fell to 0.0001 of the forces where it is held.</summary>
    Converged,

    /// <summary>It did not within 200 000 steps.</summary>
    StepLimit,

    /// <summary>
    /// A free triangle was stretched to 200 times its area. Either nothing holds the sheet at this pressure, or the flanks of a
    /// web have passed each other and been blown up; a finer mesh helps then.
    /// </summary>
    Burst,
}

/// <summary>The two stretches of a triangle.</summary>
/// <param name="Max">The larger, length after over length before.</param>
/// <param name="Min">The smaller.</param>
internal readonly record struct PrincipalStretches(double Max, double Min)
{
    /// <summary>Whether the sheet is wrinkled there: narrower than a strip drawn as far draws itself in.</summary>
    public bool IsWrinkled => Min * Min * Math.Max(Max, 1) < 1 - 1e-6 && Min < 1;
}

/// <summary>A node that did not reach the tool.</summary>
/// <param name="Node">Which.</param>
/// <param name="Gap">How far off the tool, mm.</param>
internal readonly record struct FreeNode(int Node, double Gap);

/// <summary>The thinnest place.</summary>
/// <param name="Thickness">Thickness, mm.</param>
/// <param name="Position">Where, in the formed sheet.</param>
/// <param name="Triangle">Which triangle.</param>
internal readonly record struct ThinPlace(double Thickness, Vec3 Position, int Triangle);
