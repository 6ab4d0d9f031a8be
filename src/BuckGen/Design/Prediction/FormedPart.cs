using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Design.Prediction;

/// <summary>
/// The formed sheet as it is predicted: a net of triangles with its thickness. Heights are above the bottom of the stack, lengths
/// in mm.
/// </summary>
public sealed record FormedPart
{
    /// <summary>How it was computed.</summary>
    public required FormingSpec Spec { get; init; }

    /// <summary>Thickness of the sheet before, mm.</summary>
    public required double Gauge { get; init; }

    /// <summary>Height of the clamp frame at the end, mm.</summary>
    public required double FrameHeight { get; init; }

    /// <summary>The points of the net, where they end up.</summary>
    public required ImmutableArray<FormedPoint> Points { get; init; }

    /// <summary>The triangles of the net, by the numbers of their points.</summary>
    public required ImmutableArray<FormedTriangle> Triangles { get; init; }

    /// <summary>
    /// Radius of the ball that must be able to touch a thin place for it to count, mm: <see cref="FormingSpec.CornerBall"/>, or
    /// twice <see cref="MinEdgeLength"/> where that is more.
    /// </summary>
    public required double BallRadius { get; init; }

    /// <summary>
    /// The thinnest place of the part where a ball of <see cref="BallRadius"/> can touch it; null when nothing of the sheet ends up on
    /// the part.
    /// </summary>
    public required ThinnestPlace? Thinnest { get; init; }

    /// <summary>The thinnest place of the whole sheet inside the frame, found in the same way.</summary>
    public required ThinnestPlace? ThinnestOfSheet { get; init; }

    /// <summary>Mean thickness of the part: of what lies inside the footprint, mm.</summary>
    public required double MeanThickness { get; init; }

    /// <summary>Mean thickness of the whole sheet inside the frame, mm: gauge times flat area over formed area.</summary>
    public required double MeanThicknessOfSheet { get; init; }

    /// <summary>Plastic after forming over plastic before, less 1: how well the volume is kept.</summary>
    public required double VolumeError { get; init; }

    /// <summary>Where the sheet stands off the part by more than a corner's usual rounding, the farthest first.</summary>
    public required ImmutableArray<BridgedPlace> Bridged { get; init; }

    /// <summary>Where the sheet has folded on itself, each web once.</summary>
    public required ImmutableArray<Vec2> Webs { get; init; }

    /// <summary>False when the sheet did not come to rest: then there is no net, and the numbers mean nothing.</summary>
    public required bool IsConverged { get; init; }

    /// <summary>Where the simulated sheet failed; null when it did not.</summary>
    public Vec2? BurstAt { get; init; }

    /// <summary>
    /// Gauge with which the thinnest place has the wanted least wall, mm, found by forming again; null when none is wanted, or
    /// when it is below 0.1 or above 25 mm.
    /// </summary>
    public double? RequiredGauge { get; init; }

    /// <summary>Sides of the smallest triangles, mm: walls lower or gaps narrower than a few of them are not resolved.</summary>
    public required double MinEdgeLength { get; init; }

    /// <summary>
    /// How much the thinnest place changes from a net of triangles twice as large or more, as a share, with the ball of the
    /// coarser one; null when one of them shows no part.
    /// </summary>
    public double? MeshSensitivity { get; init; }
}

/// <summary>A point of the formed sheet.</summary>
/// <param name="X">mm, as in the design.</param>
/// <param name="Y">mm, as in the design.</param>
/// <param name="Z">Height above the bottom of the stack, mm.</param>
/// <param name="Thickness">Thickness there, mm, as the mean of the triangles round it.</param>
/// <param name="ContactOrder">Its place in the order in which points met the buck, from 0; -1 for those that did not.</param>
public readonly record struct FormedPoint(double X, double Y, double Z, double Thickness, int ContactOrder);

/// <summary>A triangle of the formed sheet.</summary>
/// <param name="A">First point.</param>
/// <param name="B">Second point.</param>
/// <param name="C">Third point; seen from above they run counter-clockwise before forming.</param>
/// <param name="Thickness">Thickness, mm.</param>
/// <param name="MaxStretch">Largest stretch in one direction, length after over length before.</param>
public readonly record struct FormedTriangle(int A, int B, int C, double Thickness, double MaxStretch)
{
    /// <summary>The three corners.</summary>
    internal MeshTriangle Corners => new(A, B, C);
}

/// <summary>A thin place.</summary>
/// <param name="Thickness">Thickness, mm.</param>
/// <param name="Place">Where in the plan.</param>
/// <param name="Height">Height above the bottom of the stack, mm.</param>
public sealed record ThinnestPlace(double Thickness, Vec2 Place, double Height);

/// <summary>A place that the sheet does not reach.</summary>
/// <param name="Place">Where in the plan.</param>
/// <param name="Height">Height above the bottom of the stack, mm.</param>
/// <param name="Gap">How far the sheet stands off, mm.</param>
public sealed record BridgedPlace(Vec2 Place, double Height, double Gap);
