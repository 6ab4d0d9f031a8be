using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
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
    /// <summary>Steepest and flattest draft allowed, degrees.</summary>
    public const double MaxDraft = 45;

    /// <summary>Greatest depth taken, mm.</summary>
    public const double MaxDepth = 1000;

    /// <summary>Male or female.</summary>
    public BuckKind Kind { get; init; } = BuckKind.Male;

    /// <summary>Wanted depth of the part, mm, above 0.</summary>
    public required double Depth { get; init; }

    /// <summary>Depth the stack must have so that the part has the wanted one, mm.</summary>
    public virtual double StackDepth => Depth;

    /// <summary>
    /// Slope of the walls away from upright, degrees, -45 to 45; below 0 the part locks, and a finding says so.
    /// </summary>
    public double Draft { get; init; } = 5;

    /// <summary>Where the drawn outline is to size.</summary>
    public OutlineAt OutlineAt { get; init; } = OutlineAt.Face;

    /// <summary>The stocks the shop has, with their measured thicknesses.</summary>
    public required ImmutableArray<Stock> Stock { get; init; }

    /// <summary>How corners of drafted layers are joined.</summary>
    public CornerJoin Corners { get; init; } = CornerJoin.Round;

    /// <summary>Where the straight-cut layers lie relative to the wall.</summary>
    public Steps Steps { get; init; } = Steps.Outside;

    /// <summary>How far the stack may miss its depth, mm, before more layers are used to come nearer.</summary>
    public double DepthTolerance { get; init; } = 0.5;

    /// <summary>The plate under the stack; null for none.</summary>
    public BasePlate? Base { get; init; }

    /// <summary>Wood round a cavity at its rim, mm; female only.</summary>
    public double BlockMargin { get; init; } = 25;

    /// <summary>The dowels.</summary>
    public DowelSpec Dowels { get; init; } = new();

    /// <summary>Wanted height of the lettering, mm; smaller letters are used where these don't fit.</summary>
    public double LetterHeight { get; init; } = 8;

    /// <summary>The tolerances of the run.</summary>
    public Tolerance Tolerance { get; init; } = Tolerance.Default;

    /// <summary>Checks every number against its range.</summary>
    /// <exception cref="SpecException">A number is out of range; the message names it, its limit and the remedy.</exception>
    public virtual void Validate()
    {
        SpecRange.Require(Depth > 0 && Depth <= MaxDepth, "depth", Depth, " mm", $"above 0 and at most {MaxDepth} mm");
        // Walls that lean the wrong way are accepted, so that a finding can explain what is wrong with them.
        SpecRange.Require(Draft >= -MaxDraft && Draft <= MaxDraft, "draft", Draft, " degrees", $"from -{MaxDraft} to {MaxDraft} degrees");
        SpecRange.Require(DepthTolerance is >= 0 and <= 50, "depth tolerance", DepthTolerance, " mm", "from 0 to 50 mm");
        SpecRange.Require(BlockMargin is > 0 and <= 500, "block margin", BlockMargin, " mm", "above 0 and at most 500 mm");
        SpecRange.Require(Dowels.Diameter is >= 1 and <= 50, "dowel diameter", Dowels.Diameter, " mm", "from 1 to 50 mm");
        SpecRange.Require(Dowels.Fit is >= 0 and <= 2, "dowel fit", Dowels.Fit, " mm", "from 0 to 2 mm");
        SpecRange.Require(Dowels.Wall is >= 0.5 and <= 100, "dowel wall", Dowels.Wall, " mm", "from 0.5 to 100 mm");
        SpecRange.Require(LetterHeight is >= 2 and <= 50, "letter height", LetterHeight, " mm", "from 2 to 50 mm");
        SpecRange.Require(Corners.MitreLimit is >= 1 and <= 20, "mitre limit", Corners.MitreLimit, "", "from 1 to 20");
        SpecRange.Require(Tolerance.Chord is >= 0.0005 and <= 1, "tolerance", Tolerance.Chord, " mm", "from 0.0005 to 1 mm");
        SpecRange.Require(Tolerance.Join is >= 0 and <= 10, "joining distance", Tolerance.Join, " mm", "from 0 to 10 mm");
        SpecRange.Require(Tolerance.Coincident is > 0 and <= 0.01, "distance of coincident points", Tolerance.Coincident, " mm", "above 0 and at most 0.01 mm");
        if (Base is not null) SpecRange.Require(Base.Margin is >= 0 and <= 500, "base margin", Base.Margin, " mm", "from 0 to 500 mm");
        if (Stock.IsDefaultOrEmpty) throw new SpecException("No stock is given; name at least one thickness, such as 12mm.");
        foreach (var stock in Stock) stock.Validate();
        Base?.Stock.Validate();
        Base?.Under?.Validate();
    }
}
