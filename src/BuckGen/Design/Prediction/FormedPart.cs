using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Prediction;

/// <summary>
/// The predicted sheet after forming: a mesh with its thickness. Heights are above the bottom of the stack, lengths in mm.
/// </summary>
public sealed record FormedPart
{
    /// <summary>The settings of the simulation.</summary>
    public required FormingSpec Spec { get; init; }

    /// <summary>Thickness of the sheet before forming, mm.</summary>
    public required double Gauge { get; init; }

    /// <summary>Height of the clamp frame at the end of forming, mm.</summary>
    public required double FrameHeight { get; init; }

    /// <summary>The nodes of the mesh after forming.</summary>
    public required ImmutableArray<FormedPoint> Points { get; init; }

    /// <summary>The triangles of the mesh, by the numbers of their nodes.</summary>
    public required ImmutableArray<FormedTriangle> Triangles { get; init; }

    /// <summary>
    /// Radius of the ball that touches the thinnest place, mm: <see cref="FormingSpec.CornerBall"/>, or that of a ball as wide as
    /// four triangles if it is larger; in a gap at most a quarter of its width.
    /// </summary>
    public required double BallRadius { get; init; }

    /// <summary>
    /// The thinnest place of the part that a ball of its place can touch; null when no ball can touch the part anywhere.
    /// </summary>
    public required ThinnestPlace? Thinnest { get; init; }

    /// <summary>The thinnest place of the whole sheet inside the frame, found in the same way.</summary>
    public required ThinnestPlace? ThinnestOfSheet { get; init; }

    /// <summary>
    /// Between which limits the thinnest place lies, by mesh and material, mm; null when a simulation for them failed.
    /// </summary>
    public FigureRange? ThinnestRange => RangeOf(Thinnest);

    /// <summary>
    /// Limits of the thickness that 1 % of the area of the part does not exceed, mm; null when a simulation for them failed.
    /// </summary>
    public FigureRange? ThicknessOf1Percent { get; init; }

    /// <summary>
    /// Limits of the thickness that 5 % of the area of the part does not exceed, mm; null when a simulation for them failed.
    /// </summary>
    public FigureRange? ThicknessOf5Percent { get; init; }

    /// <summary>The narrowest gap in which the sheet is not judged: too few triangles lie across it. Null for none.</summary>
    public NarrowGap? NotJudged { get; init; }

    /// <summary>Mean thickness of the part, which is the sheet inside the footprint and beyond the cut, mm.</summary>
    public required double MeanThickness { get; init; }

    /// <summary>Limits of that mean, by mesh and material, mm; null when a simulation for them failed.</summary>
    public FigureRange? MeanRange { get; init; }

    /// <summary>Shear modulus of the hot sheet between which the material lies, MPa.</summary>
    public required FigureRange Modulus { get; init; }

    /// <summary>
    /// Ratio of the thinnest wall of the softest sheet, and of the stiffest, to that of the one between; null when one of them
    /// did not converge.
    /// </summary>
    public FigureRange? MaterialSensitivity { get; init; }

    /// <summary>The wall from flange to face; null when no mesh lies on the wall or on the face.</summary>
    public PartWall? Wall { get; init; }

    /// <summary>Mean thickness of the whole sheet inside the frame, mm: gauge times flat area over formed area.</summary>
    public required double MeanThicknessOfSheet { get; init; }

    /// <summary>Relative error of the volume of plastic after forming.</summary>
    public required double VolumeError { get; init; }

    /// <summary>
    /// Where the sheet stands off the part by more than the usual rounding of a corner, largest gap first; then where only the
    /// stiffest sheet does.
    /// </summary>
    public required ImmutableArray<BridgedPlace> Bridged { get; init; }

    /// <summary>Where the sheet folds on itself, the highest point of each web.</summary>
    public required ImmutableArray<WebPlace> Webs { get; init; }

    /// <summary>False when the simulation did not converge: then there is no mesh, and the numbers are meaningless.</summary>
    public required bool IsConverged { get; init; }

    /// <summary>Where the simulated sheet burst; null when it did not.</summary>
    public Vec2? BurstAt { get; init; }

    /// <summary>
    /// Gauge at which the thinnest place has the wanted minimum wall, mm, found by repeated simulation. It is null when no
    /// minimum is wanted, or when the gauge would be below 0.1 or above 25 mm.
    /// </summary>
    public double? RequiredGauge { get; init; }

    /// <summary>Limits of that gauge, as far as those of the thinnest place; null when one of the two is not known.</summary>
    public FigureRange? RequiredGaugeRange => (RequiredGauge, ThinnestRange, Thinnest) is ({ } gauge, { } range, { } thin)
        ? new(gauge * thin.Thickness / range.High, gauge * thin.Thickness / range.Low) : null;

    /// <summary>
    /// Edge length of the triangles at walls with room before them, mm: walls lower than a few of them are not resolved. In gaps
    /// the triangles are smaller.
    /// </summary>
    public required double MinEdgeLength { get; init; }

    /// <summary>
    /// Relative difference of the thinnest place from that of a mesh of triangles at least twice as large, with the ball of the
    /// coarser mesh. It is null when one of them has no such place.
    /// </summary>
    public double? MeshSensitivity { get; init; }

    /// <summary>How deep a plug pushed the sheet below the rim, mm; null for no plug.</summary>
    public double? PlugDepth { get; init; }

    /// <summary>
    /// What each uncertain input does to the thinnest wall, the largest effect first; empty unless
    /// <see cref="FormingSpec.CompareInputs"/> is set.
    /// </summary>
    public ImmutableArray<InputEffect> InputEffects { get; init; } = [];

    /// <summary>Between which limits a thin place lies, mm; null when a simulation for them failed.</summary>
    internal FigureRange? RangeOf(ThinnestPlace? place) =>
        (place, MeshSensitivity, MaterialSensitivity) is ({ } thin, { } change, { } material)
            ? MaterialError.Widen(MeshError.Range(thin.Thickness, change, Spec.Detail), material) : null;
}

/// <summary>A node of the formed sheet.</summary>
/// <param name="X">mm, as in the design.</param>
/// <param name="Y">mm, as in the design.</param>
/// <param name="Z">Height above the bottom of the stack, mm.</param>
/// <param name="Thickness">Thickness, mm, as the mean of the triangles around it.</param>
/// <param name="ContactOrder">Its place in the order in which nodes came into contact with the buck, from 0; -1 for those without
/// contact.</param>
public readonly record struct FormedPoint(double X, double Y, double Z, double Thickness, int ContactOrder);

/// <summary>A triangle of the formed sheet.</summary>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="C">Third node; seen from above they are counter-clockwise before forming.</param>
/// <param name="Thickness">Thickness, mm.</param>
/// <param name="MaxStretch">Larger principal stretch, length after over length before.</param>
public readonly record struct FormedTriangle(int A, int B, int C, double Thickness, double MaxStretch)
{
    /// <summary>The three corners.</summary>
    internal MeshTriangle Corners => new(A, B, C);
}

/// <summary>A thin place.</summary>
/// <param name="Thickness">Thickness, mm.</param>
/// <param name="Place">Position in plan.</param>
/// <param name="Height">Height above the bottom of the stack, mm.</param>
public sealed record ThinnestPlace(double Thickness, Vec2 Place, double Height);

/// <summary>The highest point of a web.</summary>
/// <param name="Place">Position in plan.</param>
/// <param name="Height">Height above the bottom of the stack, mm.</param>
public sealed record WebPlace(Vec2 Place, double Height)
{
    /// <summary>True when the softest sheet folds there too. A web that only a stiffer one has goes when it is hotter.</summary>
    public bool StaysWhenSoft { get; init; } = true;
}

/// <summary>A place where the sheet does not touch the buck.</summary>
/// <param name="Place">Position in plan.</param>
/// <param name="Height">Height above the bottom of the stack, mm.</param>
/// <param name="Gap">Gap between sheet and buck, mm.</param>
public sealed record BridgedPlace(Vec2 Place, double Height, double Gap)
{
    /// <summary>Limits of the gap, by mesh and material, mm.</summary>
    public FigureRange Range { get; init; } = new(Gap, Gap);
}
