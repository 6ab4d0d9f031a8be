using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;

namespace BuckGen.Design.Bucks;

/// <summary>Which side of the sheet the buck touches.</summary>
public enum BuckKind
{
    /// <summary>A raised buck: the sheet is pulled down over it. Material grows toward the base.</summary>
    Male,

    /// <summary>A cavity in a block: the sheet is pulled down into it. The cavity shrinks toward its floor.</summary>
    Female,
}

/// <summary>The plane in which the drafted wall stands exactly on the drawn outline.</summary>
public enum OutlineAt
{
    /// <summary>The upper plane: a male buck's top, a cavity's rim.</summary>
    Face,

    /// <summary>The lower plane: a male buck's foot, a cavity's floor.</summary>
    Base,
}

/// <summary>Where a straight-cut layer lies relative to the sloping wall.</summary>
public enum Steps
{
    /// <summary>Wood is left proud of the wall and sanded down to the line.</summary>
    Outside,

    /// <summary>The layer stays behind the wall; the steps are filled.</summary>
    Inside,

    /// <summary>Half of the step is sanded, half filled.</summary>
    Middle,
}

/// <summary>What a maker decides about the stack of wood. Lengths in mm, angles in degrees.</summary>
public record StackSpec
{
    /// <summary>Male or female.</summary>
    public BuckKind Kind { get; init; } = StackSettings.Kind.Default;

    /// <summary>
    /// Wanted depth, mm, above 0: of the finished part when the spec orders one, else of what comes off the buck untrimmed.
    /// </summary>
    public required double Depth { get; init; }

    /// <summary>
    /// Slope of the walls away from upright, degrees, -45 to 45; below 0 the part locks, and a finding says so. Where the side
    /// has stretches of its own they decide, and a design gives the smallest of them here.
    /// </summary>
    public double Draft { get; init; } = StackSettings.Draft.Value;

    /// <summary>
    /// The stretches of the side from the flange to the face, for one that is stepped, curved or domed; empty for one draft.
    /// </summary>
    public ImmutableArray<SideStretch> Side { get; init; } = [];

    /// <summary>
    /// Radius that a router or sanding gives the upper edge of the glued buck, mm, 0 for a sharp edge. The layers are cut as for
    /// the sharp edge, and sizes count to it.
    /// </summary>
    public double EdgeRadius { get; init; } = SideSettings.EdgeRadius.Value;

    /// <summary>True when there is more wood lower down: the walls lean the right way.</summary>
    internal bool IsWiderBelow => !Side.IsEmpty || Draft >= 0;

    /// <summary>Where the drawn outline is to size.</summary>
    public OutlineAt OutlineAt { get; init; } = StackSettings.OutlineAt.Default;

    /// <summary>The stocks the shop has, with their measured thicknesses.</summary>
    public required ImmutableArray<Stock> Stock { get; init; }

    /// <summary>How corners of drafted layers are joined.</summary>
    public CornerJoin Corners { get; init; } = CornerJoin.Round;

    /// <summary>Where the straight-cut layers lie relative to the wall.</summary>
    public Steps Steps { get; init; } = StackSettings.Steps.Default;

    /// <summary>How far the stack may miss its depth, mm, before more layers are used to come nearer.</summary>
    public double DepthTolerance { get; init; } = StackSettings.DepthTolerance.Value;

    /// <summary>The plate under the stack; null for none.</summary>
    public BasePlate? Base { get; init; }

    /// <summary>Wood round a cavity at its rim, mm; female only.</summary>
    public double BlockMargin { get; init; } = StackSettings.BlockMargin.Value;

    /// <summary>The dowels.</summary>
    public DowelSpec Dowels { get; init; } = new();

    /// <summary>Wanted height of the lettering, mm; smaller letters are used where these don't fit; 0 for none.</summary>
    public double LetterHeight { get; init; } = StackSettings.LetterHeight.Value;

    /// <summary>The tolerances of the run.</summary>
    public Tolerance Tolerance { get; init; } = Tolerance.Default;

    /// <summary>Checks every number against its range.</summary>
    /// <exception cref="SpecException">A number is out of range; the message names it, its limit and the remedy.</exception>
    public virtual void Validate()
    {
        StackSettings.Depth.Require(Depth);
        // Walls that lean the wrong way are accepted, so that a finding can explain what is wrong with them.
        StackSettings.AnyDraft.Require(Draft);
        SideStretch.Require(Side);
        SideSettings.EdgeRadius.Require(EdgeRadius);
        StackSettings.DepthTolerance.Require(DepthTolerance);
        StackSettings.BlockMargin.Require(BlockMargin);
        DowelSettings.Diameter.Require(Dowels.Diameter);
        DowelSettings.Fit.Require(Dowels.Fit);
        DowelSettings.Wall.Require(Dowels.Wall);
        StackSettings.LetterHeight.Require(LetterHeight);
        StackSettings.MitreLimit.Require(Corners.MitreLimit);
        OutlineSettings.Chord.Require(Tolerance.Chord);
        OutlineSettings.Join.Require(Tolerance.Join);
        OutlineSettings.Coincident.Require(Tolerance.Coincident);
        BaseSettings.Margin.Require(Base?.Margin);
        if (Stock.IsDefaultOrEmpty) throw new SpecException("No stock is given; name at least one thickness, such as 12mm.");
        foreach (var stock in Stock) stock.Validate();
        Base?.Stock.Validate();
        Base?.Under?.Validate();
    }
}
