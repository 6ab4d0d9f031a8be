using System.Collections.Immutable;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Catalogs;
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

/// <summary>What a drawing shows.</summary>
public enum Drawn
{
    /// <summary>The buck itself.</summary>
    Buck,

    /// <summary>The inside of the finished part.</summary>
    Inside,

    /// <summary>The outside of the finished part.</summary>
    Outside,
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

/// <summary>A plate under the whole stack.</summary>
/// <param name="Stock">Stock it is cut from.</param>
/// <param name="Margin">How far it reaches beyond the foot of the buck on every side, mm.</param>
/// <param name="Under">Stock of a second plate below it, which carries the relief bores of the vents; null for none.</param>
public sealed record BasePlate(Stock Stock, double Margin = 20, Stock? Under = null);

/// <summary>Dowels that hold the layers in place while they are glued.</summary>
/// <param name="Diameter">Diameter of the dowel, mm.</param>
/// <param name="Fit">How much wider the hole is than the dowel, mm. 0.1 to 0.2 is common practice (no source).</param>
/// <param name="Wall">Least wood between a hole and any edge, mm.</param>
public sealed record DowelSpec(double Diameter = 6, double Fit = 0.15, double Wall = 4)
{
    /// <summary>Diameter of the hole, mm.</summary>
    public double HoleDiameter => Diameter + Fit;
}

/// <summary>Everything a maker decides about a buck. Lengths in mm, angles in degrees.</summary>
public sealed record BuckSpec
{
    /// <summary>Steepest and flattest draft allowed, degrees.</summary>
    public const double MaxDraft = 45;

    /// <summary>Greatest depth taken, mm.</summary>
    public const double MaxDepth = 1000;

    /// <summary>Male or female.</summary>
    public BuckKind Kind { get; init; } = BuckKind.Male;

    /// <summary>Wanted depth of the part, mm, above 0.</summary>
    public required double Depth { get; init; }

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

    /// <summary>
    /// Shrinkage of the plastic on cooling, per cent of length, 0 to 10; the buck is made larger by it. Null to follow the
    /// drawing: nothing when it shows the buck; the middle of the plastic's range in the catalog when it shows the part.
    /// </summary>
    public double? Shrinkage { get; init; }

    /// <summary>The shrinkage allowed for, per cent.</summary>
    public double ShrinkageAllowed => Shrinkage ?? (Drawn == Drawn.Buck ? 0 : ShrinkageOfPlastic?.Middle ?? 0);

    /// <summary>The plastic's range for a buck of this kind, per cent; null when the plastic is not known.</summary>
    internal FigureRange? ShrinkageOfPlastic =>
        Sheet?.Plastic is { } plastic ? (Kind == BuckKind.Female ? plastic.ShrinkageFemale : null) ?? plastic.Shrinkage : null;

    /// <summary>Depth the stack must have so that the cooled part has the wanted one, mm: divided by 1 - shrinkage.</summary>
    public double StackDepth => Depth / (1 - ShrinkageAllowed / 100);

    /// <summary>How far the stack may miss its depth, mm, before more layers are used to come nearer.</summary>
    public double DepthTolerance { get; init; } = 0.5;

    /// <summary>The plate under the stack; null for none.</summary>
    public BasePlate? Base { get; init; }

    /// <summary>The vents; null for none. They need a base plate.</summary>
    public VentSpec? Vents { get; init; }

    /// <summary>The layer under the base that leads the air away; null for none. It needs a base plate.</summary>
    public PlenumSpec? Plenum { get; init; }

    /// <summary>The plastic sheet; null when not given. The blank, vents, jigs and panels need it.</summary>
    public SheetSpec? Sheet { get; init; }

    /// <summary>The former.</summary>
    public FormerSpec Former { get; init; } = new();

    /// <summary>How the wall of the formed part is predicted; null for no prediction. It needs the plastic sheet.</summary>
    public FormingSpec? Prediction { get; init; }

    /// <summary>What the drawing shows: the buck itself, or the inside or the outside of the finished part.</summary>
    public Drawn Drawn { get; init; } = Drawn.Buck;

    /// <summary>The trim jig; null for none.</summary>
    public JigSpec? Jig { get; init; }

    /// <summary>The flange template and its nest; null for none.</summary>
    public FlangeSpec? Flange { get; init; }

    /// <summary>The face panel; null for none.</summary>
    public PanelSpec? Panel { get; init; }

    /// <summary>The limits that the design is checked against.</summary>
    public CheckSpec Checks { get; init; } = new();

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
    public void Validate()
    {
        Require(Depth > 0 && Depth <= MaxDepth, "depth", Depth, " mm", $"above 0 and at most {MaxDepth} mm");
        // Walls that lean the wrong way are accepted, so that a finding can explain what is wrong with them.
        Require(Draft >= -MaxDraft && Draft <= MaxDraft, "draft", Draft, " degrees", $"from -{MaxDraft} to {MaxDraft} degrees");
        if (Shrinkage is { } shrinkage) Require(shrinkage is >= 0 and <= 10, "shrinkage", shrinkage, " %", "from 0 to 10 %");
        Require(DepthTolerance is >= 0 and <= 50, "depth tolerance", DepthTolerance, " mm", "from 0 to 50 mm");
        Require(BlockMargin is > 0 and <= 500, "block margin", BlockMargin, " mm", "above 0 and at most 500 mm");
        Require(Dowels.Diameter is >= 1 and <= 50, "dowel diameter", Dowels.Diameter, " mm", "from 1 to 50 mm");
        Require(Dowels.Fit is >= 0 and <= 2, "dowel fit", Dowels.Fit, " mm", "from 0 to 2 mm");
        Require(Dowels.Wall is >= 0.5 and <= 100, "dowel wall", Dowels.Wall, " mm", "from 0.5 to 100 mm");
        Require(LetterHeight is >= 2 and <= 50, "letter height", LetterHeight, " mm", "from 2 to 50 mm");
        Require(Corners.MitreLimit is >= 1 and <= 20, "mitre limit", Corners.MitreLimit, "", "from 1 to 20");
        Require(Tolerance.Chord is >= 0.0005 and <= 1, "tolerance", Tolerance.Chord, " mm", "from 0.0005 to 1 mm");
        Require(Tolerance.Join is >= 0 and <= 10, "joining distance", Tolerance.Join, " mm", "from 0 to 10 mm");
        Require(Tolerance.Coincident is > 0 and <= 0.01, "distance of coincident points", Tolerance.Coincident, " mm", "above 0 and at most 0.01 mm");
        if (Base is not null) Require(Base.Margin is >= 0 and <= 500, "base margin", Base.Margin, " mm", "from 0 to 500 mm");
        Vents?.Validate(Base);
        Sheet?.Validate();
        Former.Validate();
        Checks.Validate();
        Jig?.Validate();
        Flange?.Validate();
        Panel?.Validate();
        if (Sheet is null && (Vents is not null || Jig is not null || Flange is not null || Panel is not null))
            throw new SpecException("Vents, jigs and panels are sized by the formed sheet: give the thickness of the plastic sheet.");
        if (Sheet is null && Drawn != Drawn.Buck)
            throw new SpecException("To size the buck from the part, give the thickness of the plastic sheet.");
        if (Sheet is null && Prediction is not null)
            throw new SpecException("To predict the wall, give the thickness of the plastic sheet.");
        Prediction?.Validate();
        Plenum?.Validate(Base);
        if (Stock.IsDefaultOrEmpty) throw new SpecException("No stock is given; name at least one thickness, such as 12mm.");
        foreach (var stock in Stock) stock.Validate();
        Base?.Stock.Validate();
        Base?.Under?.Validate();
    }

    internal static void Require(bool holds, string what, double value, string unit, string range)
    {
        if (!holds) throw new SpecException(FormattableString.Invariant($"The {what} is {value}{unit}; it must be {range}."));
    }
}
