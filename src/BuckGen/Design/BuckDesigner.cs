using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Design.Forming;
using BuckGen.Design.Prediction;
using BuckGen.Design.Specs;
using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;

namespace BuckGen.Design;

/// <summary>Walks the steps from outline to design: size, stack, drafted layers, dowels, marks, findings.</summary>
internal static class BuckDesigner
{
    /// <summary>How exactly the height of a change of shape is found, mm.</summary>
    private const double HeightResolution = 0.02;

    /// <summary>Maximum number of lines and arcs in the outlines of all heights together.</summary>
    private const long MaxPieces = 1_000_000;

    public static BuckDesign Design(Outline outline, BuckSpec spec, DesignExtensions extensions,
        IProgress<DesignProgress>? progress,
        CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(spec);
        spec.Validate();
        if (outline.Region.IsEmpty) throw new OutlineException($"{outline.Name}: no closed outline is left to make a buck from.");
        OutlineSize.Require(outline.Name, outline.Region, spec.Tolerance);
        try
        {
            return DesignChecked(outline, spec, extensions,
                DesignProgress.Reporter(progress, spec.Prediction is not null, cancellation), cancellation);
        }
        catch (OffsetFailedException failure)
        {
            throw new OutlineException($"{outline.Name}: {failure.Message}", failure);
        }
    }

    private static BuckDesign DesignChecked(Outline outline, BuckSpec spec, DesignExtensions extensions, Action next,
        CancellationToken cancellation)
    {
        next();
        var offsetter = CheckedOffsetter.Standard(spec.Tolerance);
        var plan = StackPlan.Choose(spec.StackDepth, spec.Stock, spec.DepthTolerance);
        RequireFew(outline, plan, spec);
        var foot = LayerStack.Plates(spec, spec.Plenum?.Stock).Aggregate(0.0, (height, plate) => height + plate.Stock.Thickness);
        var heights = plan.HeightsFrom(foot).ToArray();
        var (shape, sizing) = Sized(outline, spec, heights, plan.Depth, offsetter, cancellation);
        var solid = new StackedSolid(shape, spec);

        next();
        var blanks = LayerStack.Build(solid, spec, spec.Plenum?.Stock, plan, cancellation);
        next();
        // A plenum is shaped last, round the bores, and lies flush under the base: it takes no part in the rest.
        var upper = blanks.Where(b => b.Role != LayerRole.Plenum).ToArray();
        var dowels = DowelColumns.Place(upper, solid, spec, IslandLetters.Assign(upper), offsetter, cancellation);
        next();
        var outward = shape.CloseHeights(heights).OrderBy(h => Math.Abs(h - shape.ReferenceHeight)).ToArray();
        shape.Prepare(outward, cancellation);
        var changes =
            RegionChanges.Find(h => shape.At(h, cancellation), outward, shape.OffsetAt(outward[^1]) > 0, HeightResolution,
                cancellation);
        var blank = Blank.Compute(shape, spec, spec.Sheet, spec.Former, plan.Depth, heights, offsetter, cancellation);
        next();
        var vents = spec.Vents is { } venting && blank is not null
            ? VentDesigner.Design(upper, dowels.Holes.SelectMany(h => h), solid, Closings(changes, spec), venting,
                spec.Sheet?.Plastic,
                blank, offsetter, cancellation)
            : null;
        // Of a plenum nothing may be left; then there is no such layer, and a finding says why.
        blanks =
        [
            .. blanks.Select(b => b.Role == LayerRole.Plenum ? PlenumLayer.Shaped(b, spec.Plenum!, spec, vents, cancellation) : b)
                .Where(b => !b.Wood.IsEmpty),
        ];
        next();
        var holes = blanks.Select(b => b.Role == LayerRole.Plenum ? [] : dowels.Holes[Array.IndexOf(upper, b)]).ToArray();
        var layers = LayerMarks.Complete(
            blanks, IslandLetters.Assign(blanks), holes, LayerVents.ByLayer(blanks, vents), solid, spec, cancellation);

        next();
        var finishing = Finishing.Create(shape, spec, blank, extensions.Jigs, offsetter, cancellation);
        next();
        List<Finding> findings =
        [
            .. StackChecks.Run(plan, spec, solid, blanks),
            .. ShrinkageFinding.Find(spec.Drawn, spec.Shrinkage, spec.ShrinkageOfPlastic),
            .. ShapeChangeFindings.Find(changes, HeightResolution, spec),
            .. SlotFindings.Find(shape.At(shape.ReferenceHeight, cancellation), shape, changes, spec),
            .. dowels.Findings,
            .. vents?.Findings ?? [],
            .. spec.Plenum is { } plenum ? PlenumChecks.Run(plenum, spec.Base!, blanks) : [],
            .. LeftOffLabels.Find(layers.Concat(finishing.Jigs.SelectMany(j => j.Layers))),
            .. finishing.Findings,
            .. DesignChecks.Run(
                new(spec, spec.Sheet, spec.Former, spec.Checks, shape, plan, blanks, blank), extensions.Checks, cancellation),
        ];
        var flange = spec.Kind == BuckKind.Male ? shape.At(shape.Foot, cancellation) : shape.At(shape.Face, cancellation);
        if (spec.Prediction is not null) next();
        var (formed, ofForming) = Predicted(new(solid, layers, flange), spec, blank, cancellation);
        findings.AddRange(ofForming);
        return new(outline, spec, plan, layers, vents, flange, FindingList.Create(findings, spec.Checks.Silenced))
        {
            Sizing = sizing.For(flange),
            Blank = blank,
            Jigs = finishing.Jigs,
            Solid = solid,
            Formed = formed,
        };
    }

    /// <summary>The predicted part with its findings; no part when none is asked for, or when a finding says why.</summary>
    private static (FormedPart? Part, IEnumerable<Finding> Findings) Predicted(
        FormedWood wood, BuckSpec spec, Blank? blank, CancellationToken cancellation)
    {
        if (spec is not { Prediction: { } wanted, Sheet: { } sheet }) return (null, []);
        if (FormedPartFindings.WhyNotPredicted(spec, wood.Footprint.IsEmpty ? null : blank) is { } reason)
            return (null, [reason]);
        var part = new PartForming(wood, sheet, spec.Vents?.Air ?? new(), blank!, wanted).Predict(cancellation);
        return (part, FormedPartFindings.Find(part, spec.Kind, sheet, spec.Former, spec.Checks.MaxThinning));
    }

    /// <summary>
    /// Time, memory and files grow with the outlines of all heights together: two a layer, and more where the wall leans far.
    /// </summary>
    private static void RequireFew(Outline outline, StackPlan plan, BuckSpec spec)
    {
        var heights =
            (long)(2 * plan.LayerStocks.Length
                + plan.Depth * Math.Tan(Math.Abs(spec.Draft) * Math.PI / 180) / DraftedShape.SampleStep);
        var pieces = outline.Region.Segments.Count();
        if (pieces * heights > MaxPieces)
            throw new SpecException(FormattableString.Invariant(
                $"{outline.Name} has {pieces} lines and arcs; with {plan.LayerStocks.Length} layers and {spec.Draft:0.##} ")
                + FormattableString.Invariant(
                    $"degrees of draft it is computed at {heights} heights, {pieces * heights} lines and arcs in all; the ")
                    + FormattableString.Invariant(
                        $"limit is {MaxPieces}. Simplify the drawing, or use thicker stock, less depth or less draft."));
    }

    /// <summary>
    /// The drafted shape of the buck, enlarged for shrinkage and moved for the wall where the drawing shows the part.
    /// </summary>
    private static (DraftedShape Shape, PartSizing Sizing) Sized(
        Outline outline, BuckSpec spec, double[] heights, double depth, CheckedOffsetter offsetter,
        CancellationToken cancellation)
    {
        var enlarged = PartSizing.Enlarged(outline.Region, spec.ShrinkageAllowed);
        var shape = Drafted(enlarged);
        var direction = PartSizing.Direction(spec.Kind, spec.Drawn);
        if (direction == 0) return (shape, new(spec.Drawn, spec.ShrinkageAllowed, 0));
        // The wall is thin beside the part, so that its thickness is taken from the outline as drawn.
        var wall = Blank.Compute(shape, spec, spec.Sheet, spec.Former, depth, heights, offsetter, cancellation) is { } blank
            ? direction * PartSizing.LevelWall(blank, spec.Draft)
            : 0;
        var moved = NegligibleLoops.Remove(offsetter.Offset(enlarged, wall, spec.Corners, cancellation), spec.Tolerance.Chord);
        return moved.IsEmpty
            ? throw new OutlineException(
                FormattableString.Invariant(
                    $"{outline.Name}: nothing is left of the outline when the wall of {-wall:0.##} mm is taken off; use a ")
                    + "thinner sheet or a larger part.")
            : (Drafted(moved), new(spec.Drawn, spec.ShrinkageAllowed, wall));

        DraftedShape Drafted(Region region)
        {
            var drafted = new DraftedShape(region, spec, heights[0], heights[^1], offsetter);
            drafted.Prepare(heights, cancellation);
            return drafted;
        }
    }

    /// <summary>Where a hole of a male buck, or a cavity, closes.</summary>
    private static IEnumerable<Vec2> Closings(IEnumerable<RegionChange> changes, BuckSpec spec)
    {
        // Seen from the base upward air only widens: then nothing closes.
        var end = spec.Kind == BuckKind.Male ? RegionChangeKind.HoleCloses : RegionChangeKind.IslandVanishes;
        return spec.OutlineAt == OutlineAt.Face ? changes.Where(c => c.Kind == end).Select(c => c.Place) : [];
    }
}
