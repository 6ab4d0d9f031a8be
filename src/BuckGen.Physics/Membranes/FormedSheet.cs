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
    public required ImmutableArray<SheetStretch> Stretch { get; init; }

    /// <summary>
    /// Place of each node in the order in which the tool was met, from 0; -1 for nodes of the frame and those that never met it.
    /// </summary>
    public required ImmutableArray<int> ContactOrder { get; init; }

    /// <summary>The nodes that neither met the tool nor are held by the frame, and how far off they are.</summary>
    public required ImmutableArray<OpenNode> Open { get; init; }

    /// <summary>The nodes that the sheet's own underside has caught: where webs stand.</summary>
    public required ImmutableArray<int> Webbed { get; init; }

    /// <summary>Pressure difference at the end, Pa.</summary>
    public required double Pressure { get; init; }

    /// <summary>Volume swept below the plane of the frame, mm³; negative for what stands above it.</summary>
    public required double Volume { get; init; }

    /// <summary>How it ended. Only a sheet at rest is worth reading.</summary>
    public required FormingOutcome Outcome { get; init; }

    /// <summary>Why the sheet did not come to rest, in plain words with the remedy; null where it did.</summary>
    public string? Trouble => Outcome switch
    {
        FormingOutcome.AtRest => null,
        FormingOutcome.Burst => FormattableString.Invariant(
            $"The sheet burst near {BurstPlace.Plan} at a height of {BurstPlace.Z:0.#} mm: it touches nothing there and was stretched to more than 200 times its area. ")
            + "Either nothing holds it at this pressure, or the flanks of a web have passed each other. Use less pressure or smaller triangles.",
        _ => "The sheet had not come to rest after 200 000 steps. Use larger triangles, or allow a larger residual on the way.",
    };

    /// <summary>Steps taken.</summary>
    public required int Steps { get; init; }

    /// <summary>Area of the formed sheet, mm².</summary>
    public double Area => Sheet.Mesh.Triangles.Sum(AreaOf);

    /// <summary>Volume of plastic before and after: the sum of thickness times area, mm³.</summary>
    public (double Before, double After) Plastic => (
        Sheet.Mesh.Area * Sheet.Thickness, Sheet.Mesh.Triangles.Select((t, i) => AreaOf(t) * Thickness[i]).Sum());

    /// <summary>Mean thickness over the formed surface, mm.</summary>
    public double MeanThickness => Plastic.After / Area;

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
            if (thinnest is { } least && Thickness[i] >= least.Thickness) continue;
            var place = MiddleOf(Sheet.Mesh.Triangles[i]);
            if (counts is null || counts(place)) thinnest = new(Thickness[i], place, i);
        }
        return thinnest;
    }

    /// <summary>The middle of a triangle.</summary>
    public Vec3 MiddleOf(MeshTriangle t) => (Nodes[t.A] + Nodes[t.B] + Nodes[t.C]) * (1.0 / 3);

    /// <summary>The thinnest triangle of which a corner still moves.</summary>
    public Vec3 BurstPlace
    {
        get
        {
            var open = Open.Select(o => o.Node).ToHashSet();
            var free = Enumerable.Range(0, Thickness.Length).Where(i => Sheet.Mesh.Triangles[i] is var t && (open.Contains(t.A) || open.Contains(t.B) || open.Contains(t.C)));
            return MiddleOf(Sheet.Mesh.Triangles[free.MinBy(i => Thickness[i])]);
        }
    }

    private double AreaOf(MeshTriangle t) => (Nodes[t.B] - Nodes[t.A]).Cross(Nodes[t.C] - Nodes[t.A]).Length / 2;
}

/// <summary>How the forming of a sheet ended.</summary>
internal enum FormingOutcome
{
    /// <summary>The sheet came to rest: its unbalanced force fell to 0.0001 of the forces where it is held.</summary>
    AtRest,

    /// <summary>It did not within 200 000 steps.</summary>
    TooSlow,

    /// <summary>
    /// A free triangle was stretched to 200 times its area. Either nothing holds the sheet at this pressure, or the flanks of a
    /// web have passed each other and been blown up; a finer mesh helps then.
    /// </summary>
    Burst,
}

/// <summary>The two stretches of a triangle.</summary>
/// <param name="Larger">The larger, length after over length before.</param>
/// <param name="Smaller">The smaller.</param>
internal readonly record struct SheetStretch(double Larger, double Smaller)
{
    /// <summary>Whether the sheet is wrinkled there: narrower than a strip drawn as far draws itself in.</summary>
    public bool IsWrinkled => Smaller * Smaller * Math.Max(Larger, 1) < 1 - 1e-6 && Smaller < 1;
}

/// <summary>A node that did not reach the tool.</summary>
/// <param name="Node">Which.</param>
/// <param name="Distance">How far off the tool, mm.</param>
internal readonly record struct OpenNode(int Node, double Distance);

/// <summary>The thinnest place.</summary>
/// <param name="Thickness">Thickness, mm.</param>
/// <param name="Place">Where, in the formed sheet.</param>
/// <param name="Triangle">Which triangle.</param>
internal readonly record struct ThinPlace(double Thickness, Vec3 Place, int Triangle);
