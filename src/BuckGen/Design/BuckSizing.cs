using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Parts;
using BuckGen.Design.Prediction;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;

namespace BuckGen.Design;

/// <summary>
/// The one place where the drawing, the wall, the shrinkage, the draft and the height of the cut meet. From the order it makes
/// the drafted shape of the buck, and chooses the boards of its depth.
/// </summary>
internal sealed class BuckSizing
{
    /// <summary>Maximum number of lines and arcs in the outlines of all heights together.</summary>
    private const long MaxPieces = 1_000_000;

    /// <summary>How exactly the mean wall is found, mm, and the passes allowed for it.</summary>
    private const double WallResolution = 0.002;
    private const int MaxPasses = 5;

    private readonly Outline outline;
    private readonly BuckSpec spec;
    private readonly CheckedOffsetter offsetter;
    private readonly CancellationToken cancellation;
    private readonly Cooling enlarging;
    private readonly Region source;
    private readonly double drawingScale;
    private readonly double foot;

    private BuckSizing(Outline outline, BuckSpec spec, CheckedOffsetter offsetter, CancellationToken cancellation)
    {
        (this.outline, this.spec, this.offsetter, this.cancellation) = (outline, spec, offsetter, cancellation);
        drawingScale = ScaleTo(spec.Part?.Size, outline);
        var centre = outline.Region.Bounds.Centre;
        enlarging = new(spec.ShrinkageAllowed, centre);
        source = enlarging.Undo(
            drawingScale == 1 ? outline.Region : outline.Region.Transformed(Affine.Scaling(drawingScale, centre)));
        foot = LayerStack.Plates(spec, spec.Plenum?.Stock).Aggregate(0.0, (height, plate) => height + plate.Stock.Thickness);
    }

    /// <summary>Sizes the buck.</summary>
    /// <param name="outline">What is drawn.</param>
    /// <param name="spec">What is wanted.</param>
    /// <param name="offsetter">Makes the offsets.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static SizedBuck Create(
        Outline outline, BuckSpec spec, CheckedOffsetter offsetter, CancellationToken cancellation) =>
        new BuckSizing(outline, spec, offsetter, cancellation).Create();

    private SizedBuck Create()
    {
        var plain = With(null);
        // The side that touches the wood needs no wall.
        if (!WallCounts || BlankOf(plain) is not { } blank) return plain;
        // The mean wall follows from the size, and the size from the wall: a few passes agree.
        var (sized, mean) = (plain, 0.0);
        for (var pass = 0; pass < MaxPasses && Math.Abs(blank.MeanThickness - mean) > WallResolution; pass++)
        {
            mean = blank.MeanThickness;
            sized = With(PartWall.FromMean(mean));
            if (BlankOf(sized) is not { } next) return sized;
            blank = next;
        }

        return spec.Prediction is not null && PredictedWall(sized) is { } wall ? With(wall) : sized;
    }

    /// <summary>True when the drawing shows the side of the part that doesn't touch the wood.</summary>
    private bool WallCounts => spec.Part?.Side == (spec.Kind == BuckKind.Male ? PartSide.Outside : PartSide.Inside);

    /// <summary>The buck when the wall is known; without a wall it is sized as if there were none.</summary>
    private SizedBuck With(PartWall? wall)
    {
        var sign = spec.Kind == BuckKind.Male ? -1 : 1;
        var above = spec.Depth + (spec.Part is null ? 0 : sign * (wall?.Face ?? 0));
        var jig = Ring(above);
        var cut = CutBy(jig);
        var depth = above + (spec.Part is null ? 0 : cut.Height);
        if (depth <= 0)
            throw new SpecException(FormattableString.Invariant(
                $"{outline.Name}: a part {spec.Depth:0.##} mm deep leaves no depth for the buck when its wall of ")
                + FormattableString.Invariant($"{wall?.Face ?? 0:0.##} mm is taken off; make it deeper or the sheet thinner."));
        var plan = StackPlan.Choose(depth / enlarging.Scale, spec.Stock, spec.DepthTolerance);
        var heights = plan.HeightsFrom(foot).ToArray();
        var side = SideProfile.Create(spec, heights[^1] - heights[0], 1 / enlarging.Scale);
        // A round that does not fit the wall is refused before anything is made.
        RequireFew(plan, RoundedEdge.Apply(side, spec.Kind, spec.EdgeRadius, spec.Tolerance.Chord));
        var inset = InsetOf(cut, wall) / enlarging.Scale;
        if (inset > heights[^1] - heights[0])
            throw new SpecException(FormattableString.Invariant(
                $"{outline.Name}: the cut lies {cut.Height:0.##} mm above the ")
                + $"{FlangeFaceText.Format(cut.HeightFrom)}, beyond the face of the part; cut lower.");
        var at = spec.Part?.At == PartEnd.Face ? (heights[^1] - heights[0]) * enlarging.Scale - InsetOf(cut, wall)
            : Math.Max(0, cut.Height);
        var level = wall is null ? 0 : side.LevelWall(at / enlarging.Scale, wall.At(at), spec.Kind == BuckKind.Male);
        var allowance = sign * level / enlarging.Scale;
        var shape = new DraftedShape(Moved(allowance), spec, heights[0], heights[^1], offsetter, inset, side);
        shape.Prepare(heights, cancellation);
        return new(plan, heights, shape, cut, jig,
            new(spec.Part?.Side, spec.ShrinkageAllowed, allowance) { DrawingScale = drawingScale, Inset = inset });
    }

    /// <summary>
    /// From the end of the wall at which the part is to size to the plane in which it is, mm on the cooled part. That plane is
    /// the cut, or the inside of the floor over the wood of a cavity.
    /// </summary>
    private double InsetOf(TrimCut cut, PartWall? wall) => spec switch
    {
        { Part.At: PartEnd.Mouth } => Math.Max(0, cut.Height),
        { Part: { At: PartEnd.Face, Side: PartSide.Inside }, Kind: BuckKind.Female } => wall?.Face ?? 0,
        _ => 0,
    };

    private TrimCut CutBy(JigSpec? jig) => TrimCut.Create(spec, spec.Sheet?.Gauge ?? 0, jig, spec.Part?.CutHeight);

    /// <summary>The ring with its height.</summary>
    /// <param name="above">Depth of the buck above the cut, on the cooled part, mm.</param>
    private JigSpec? Ring(double above)
    {
        if (spec.Jig is not { TrimHeight: null } open) return spec.Jig;
        return spec.Part is null
            ? open with { TrimHeight = RingHeight.ForDepth(spec.Depth, spec.Stock) }
            : RingHeight.Choose(open, spec, jig => Math.Max(0.1, (above + CutBy(jig).Height) / enlarging.Scale));
    }

    private Region Moved(double allowance)
    {
        if (allowance == 0) return source;
        var moved = NegligibleLoops.Remove(offsetter.Offset(source, allowance, spec.Corners, cancellation), spec.Tolerance.Chord);
        return moved.IsEmpty
            ? throw new OutlineException(
                FormattableString.Invariant(
                    $"{outline.Name}: nothing is left of the outline when the wall of {-allowance:0.##} mm is taken off; use a ")
                    + "thinner sheet or a larger part.")
            : moved;
    }

    private Blank? BlankOf(SizedBuck sized) => Blank.Compute(
        sized.Shape, spec, spec.Sheet, spec.Former, sized.Plan.Depth, sized.Heights, offsetter, cancellation);

    /// <summary>The wall over the drafted wood, without dowels, vents and marks; null when it is not predicted.</summary>
    private PartWall? PredictedWall(SizedBuck sized)
    {
        var flange = sized.FlangeOutline(spec.Kind, cancellation);
        if (BlankOf(sized) is not { } blank
            || FormedPartFindings.WhyNotPredicted(spec, spec.Prediction!, flange.IsEmpty ? null : blank) is not null) return null;
        var solid = new StackedSolid(sized.Shape, spec);
        var layers = LayerStack.Build(solid, spec, spec.Plenum?.Stock, sized.Plan, cancellation).Select(b => new Layer(
            b.Number, b.Role, b.Stock, b.Bottom, b.Top, [.. b.Wood.Islands.Select(i => new LayerPart("", i, [], [], null))], [],
            []));
        var wood = new FormedWood(solid, [.. layers], flange, 0);
        var inputs = new FormingInputs(wood, spec.Sheet!, spec.Vents?.Air ?? new(), blank, spec.Former, spec.Prediction!);
        return new PartForming(inputs).PredictWall(cancellation);
    }

    /// <summary>How much the drawing is scaled to have the ordered size: the same in both directions.</summary>
    private static double ScaleTo(RectangleSize? ordered, Outline outline)
    {
        if (ordered is not { } size) return 1;
        var drawn = outline.Region.Bounds;
        var (across, along) = (size.Width / drawn.Width, size.Height / drawn.Height);
        return Math.Abs(across / along - 1) <= PartSettings.MaxStretch
            ? Math.Sqrt(across * along)
            : throw new SpecException(FormattableString.Invariant(
                $"The part is ordered {size.Width:0.##} x {size.Height:0.##} mm, but {outline.Name} is drawn ")
                + FormattableString.Invariant($"{drawn.Width:0.##} x {drawn.Height:0.##} mm. Scaled evenly it would be ")
                + FormattableString.Invariant($"{size.Width:0.##} x {drawn.Height * across:0.##} mm; order that size, or draw ")
                + "it in the ordered proportions.");
    }

    /// <summary>
    /// Time, memory and files grow with the outlines of all heights together: two a layer, and more where the wall leans far.
    /// </summary>
    private void RequireFew(StackPlan plan, SideProfile side)
    {
        // A bend has a height of its own.
        var heights = (long)(2 * plan.LayerStocks.Length + side.Bends.Length - 2 + side.Shift / DraftedShape.SampleStep);
        var pieces = outline.Region.Segments.Count();
        if (pieces * heights > MaxPieces)
            throw new SpecException(FormattableString.Invariant(
                $"{outline.Name} has {pieces} lines and arcs; with {plan.LayerStocks.Length} layers and {DraftText(side)} ")
                + FormattableString.Invariant(
                    $"of draft it is computed at {heights} heights, {pieces * heights} lines and arcs in all; the ")
                    + FormattableString.Invariant(
                        $"limit is {MaxPieces}. Simplify the drawing, or use thicker stock, less depth or less draft."));
    }

    private static string DraftText(SideProfile side) => FormattableString.Invariant($"{side.MinDraft:0.##} degrees")
        + (side.StraightDraft is null ? " and more" : "");
}

/// <summary>The size of a buck.</summary>
/// <param name="Plan">The boards of its depth.</param>
/// <param name="Heights">The faces of all layers and the middles between them, rising, mm.</param>
/// <param name="Shape">The drafted shape.</param>
/// <param name="Cut">Where the finished part ends.</param>
/// <param name="Jig">The jig with the height of its ring; null for none.</param>
/// <param name="Sizing">How the drawing was changed.</param>
internal sealed record SizedBuck(
    StackPlan Plan, double[] Heights, DraftedShape Shape, TrimCut Cut, JigSpec? Jig, PartSizing Sizing)
{
    /// <summary>Height of the cut on the wood, from the plane of the flange, mm; 0 or less for none.</summary>
    public double CutOnWood(BuckSpec spec) => Cut.Height / new Cooling(spec.ShrinkageOfPart, default).Scale;

    /// <summary>The outline in the plane of the flange.</summary>
    public Region FlangeOutline(BuckKind kind, CancellationToken cancellation) =>
        Shape.Finished.At(kind == BuckKind.Male ? Shape.Foot : Shape.Face, cancellation);
}
