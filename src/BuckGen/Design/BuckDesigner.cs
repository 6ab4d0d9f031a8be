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

namespace BuckGen.Design;

/// <summary>Walks the steps from outline to design: size, stack, drafted layers, dowels, marks, findings.</summary>
internal static class BuckDesigner
{
    /// <summary>How exactly the height of a change of shape is found, mm.</summary>
    private const double HeightResolution = 0.02;

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
            return spec.Groups is { } groups
                ? GroupDesigner.Design(outline, spec, groups, extensions, progress, cancellation)
                : DesignChecked(outline, spec, extensions,
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
        if (spec.Part is { } part) spec = spec with { OutlineAt = part.PlaneFor(spec.Kind) };
        var sized = BuckSizing.Create(outline, spec, offsetter, cancellation);
        spec = spec with { Jig = sized.Jig, Draft = sized.Shape.Side.MinDraft };
        var (plan, heights, shape) = (sized.Plan, sized.Heights, sized.Shape);
        var solid = new StackedSolid(shape, spec);
        solid.RequireWoodBesideLip();

        next();
        var blanks = LayerStack.Build(solid, spec, spec.Plenum?.Stock, plan, cancellation);
        next();
        // A plenum is shaped last, round the bores, and lies flush under the base: it takes no part in the rest.
        var upper = blanks.Where(b => b.Role != LayerRole.Plenum).ToArray();
        var dowels = DowelColumns.Place(upper, solid, spec, IslandLetters.Assign(upper), offsetter, cancellation);
        next();
        var changes = Changes(shape, heights, cancellation);
        var blank = Blank.Compute(shape, spec, spec.Sheet, spec.Former, plan.Depth, heights, offsetter, cancellation);
        next();
        var vents = spec.Vents is { } venting && blank is not null
            ? VentDesigner.Design(upper, dowels.Holes.SelectMany(h => h), solid, Closings(changes, shape, spec.Kind), venting,
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

        var flange = sized.FlangeOutline(spec.Kind, cancellation);
        if (spec.Prediction is not null) next();
        var (formed, ofForming) =
            Predicted(new(solid, layers, flange, sized.CutOnWood(spec)), spec, blank, cancellation);
        next();
        var finishing = Finishing.Create(
            outline, spec, sized, blank, formed?.Wall, extensions.Jigs, offsetter, cancellation);
        next();
        List<Finding> findings =
        [
            .. StackChecks.Run(plan, spec, solid, blanks),
            .. ShrinkageFinding.Find(spec.Part is not null, spec.Shrinkage, spec.ShrinkageOfPlastic),
            .. ShapeChangeFindings.Find(changes, HeightResolution, shape.ReferenceHeight, spec.Kind),
            .. SlotFindings.Find(shape.At(shape.ReferenceHeight, cancellation), shape, changes, spec),
            .. dowels.Findings,
            .. vents?.Findings ?? [],
            .. spec.Plenum is { } plenum ? PlenumChecks.Run(plenum, spec.Base!, blanks) : [],
            .. spec.LetterHeight == 0 ? [] : LeftOffLabels.Find([.. layers, .. finishing.Jigs.SelectMany(j => j.Layers)]),
            .. finishing.Findings,
            .. DesignChecks.Run(
                new(spec, spec.Sheet, spec.Former, spec.Checks, shape, plan, blanks, blank), extensions.Checks, cancellation),
            .. ofForming,
        ];
        return new(outline, spec, plan, layers, vents, flange, FindingList.Create(findings, spec.Checks.Silenced))
        {
            Sizing = sized.Sizing.For(flange),
            Part = finishing.Part,
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
        if (FormedPartFindings.WhyNotPredicted(spec, wanted, wood.Footprint.IsEmpty ? null : blank) is { } reason)
            return (null, [reason]);
        var forming = new PartForming(new(wood, sheet, spec.Vents?.Air ?? new(), blank!, spec.Former, wanted));
        var part = forming.Predict(cancellation);
        return (part, FormedPartFindings.Find(
            part, spec.Kind, wood.Footprint, sheet, spec.Former, spec.Checks.MaxThinning, forming.Wall));
    }

    /// <summary>Where parts of the outline come and go, from its reference plane down to the foot and up to the face.</summary>
    private static List<RegionChange> Changes(DraftedShape shape, double[] heights, CancellationToken cancellation)
    {
        var close = shape.CloseHeights(heights).Append(shape.ReferenceHeight).Distinct().Order().ToArray();
        shape.Prepare(close, cancellation);
        double[][] ways =
        [
            [.. close.Where(h => h <= shape.ReferenceHeight).Reverse()],
            [.. close.Where(h => h >= shape.ReferenceHeight)],
        ];
        return [.. ways.Where(w => w.Length > 1).SelectMany(way =>
            RegionChanges.Find(
                h => shape.At(h, cancellation), way, shape.OffsetAt(way[^1]) > 0, HeightResolution, cancellation))];
    }

    /// <summary>
    /// Where a hole of a male buck, or a cavity, closes. That is below the reference plane, for above it air only widens.
    /// </summary>
    private static IEnumerable<Vec2> Closings(IEnumerable<RegionChange> changes, DraftedShape shape, BuckKind kind)
    {
        var end = kind == BuckKind.Male ? RegionChangeKind.HoleCloses : RegionChangeKind.IslandVanishes;
        return changes.Where(c => c.Kind == end && c.At < shape.ReferenceHeight).Select(c => c.Place);
    }
}
