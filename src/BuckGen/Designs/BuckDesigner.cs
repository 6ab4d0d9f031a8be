using BuckGen.Bucks;
using BuckGen.Checks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Outlines;
using BuckGen.Venting;

namespace BuckGen.Designs;

/// <summary>Walks the steps from outline to design: size, stack, drafted layers, dowels, marks, findings.</summary>
internal static class BuckDesigner
{
    /// <summary>How exactly the height of a change of shape is found, mm.</summary>
    private const double HeightResolution = 0.02;

    /// <summary>Farthest the wall moves between two heights that are compared, mm.</summary>
    private const double LookStep = 0.25;

    public static BuckDesign Design(Outline outline, BuckSpec spec, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(spec);
        spec.Validate();
        if (outline.Region.IsEmpty) throw new OutlineException($"{outline.Name}: no closed outline is left to make a buck from.");
        try
        {
            return DesignChecked(outline, spec, cancellation);
        }
        catch (OffsetFailedException failure)
        {
            throw new OutlineException($"{outline.Name}: {failure.Message}", failure);
        }
    }

    private static BuckDesign DesignChecked(Outline outline, BuckSpec spec, CancellationToken cancellation)
    {
        var offsetter = CheckedOffsetter.Standard(spec.Tolerance);
        var plan = StackPlan.Choose(spec.StackDepth, spec.Stock, spec.DepthTolerance);
        var foot = LayerStack.Plates(spec).Aggregate(0.0, (height, plate) => height + plate.Stock.Thickness);
        var heights = Heights(plan, foot).ToArray();
        var shape = new DraftedShape(Enlarged(outline.Region, spec.Shrinkage), spec, foot, heights[^1], offsetter);
        shape.Prepare(heights, cancellation);
        var solid = new StackedSolid(shape, spec);

        var blanks = LayerStack.Build(solid, spec, plan, cancellation);
        // A plenum is shaped last, round the bores, and lies flush under the base: it takes no part in the rest.
        var upper = blanks.Where(b => b.Role != LayerRole.Plenum).ToArray();
        var dowels = DowelColumns.Place(upper, solid, spec, IslandLetters.Assign(upper), offsetter);
        var outward = CloseSteps(shape, heights).OrderBy(h => Math.Abs(h - shape.ReferenceHeight)).ToArray();
        shape.Prepare(outward, cancellation);
        var changes = RegionChanges.Find(shape.At, outward, shape.OffsetAt(outward[^1]) > 0, HeightResolution, cancellation);
        var vents = spec.Vents is not null
            ? VentDesigner.Design(upper, dowels.Holes.SelectMany(h => h), solid, Closings(changes, spec), spec, offsetter)
            : null;
        blanks = [.. blanks.Select(b => b.Role == LayerRole.Plenum ? PlenumLayer.Shaped(b, spec, vents) : b)];
        var holes = blanks.Select(b => b.Role == LayerRole.Plenum ? [] : dowels.Holes[Array.IndexOf(upper, b)]).ToArray();
        var (layers, labelFindings) = LayerMarks.Complete(
            blanks, IslandLetters.Assign(blanks), holes, LayerVents.Of(blanks, vents), solid, spec);

        IEnumerable<Finding> findings =
        [
            .. StackChecks.Of(plan, spec, solid, blanks),
            .. ShapeChangeFindings.Of(changes, spec),
            .. SlotFindings.Of(shape.At(shape.ReferenceHeight), shape, changes, spec),
            .. dowels.Findings,
            .. vents?.Findings ?? [],
            .. PlenumChecks.Of(spec, blanks),
            .. labelFindings,
        ];
        var flange = spec.Kind == BuckKind.Male ? shape.At(shape.Foot) : shape.At(shape.Face);
        return new(outline, spec, plan, layers, vents, flange,
            [.. findings.OrderByDescending(f => f.Severity).ThenBy(f => f.Height ?? double.NegativeInfinity)]);
    }

    /// <summary>Where a hole of a male buck, or a cavity, comes to its end.</summary>
    private static IEnumerable<Vec2> Closings(IEnumerable<RegionChange> changes, BuckSpec spec)
    {
        // Seen from the base upward air only widens: then nothing closes.
        var end = spec.Kind == BuckKind.Male ? RegionChangeKind.HoleCloses : RegionChangeKind.IslandVanishes;
        return spec.OutlineAt == OutlineAt.Face ? changes.Where(c => c.Kind == end).Select(c => c.Place) : [];
    }

    /// <summary>Heights between which the wall moves little, so that no part can come and go unseen.</summary>
    private static IEnumerable<double> CloseSteps(DraftedShape shape, double[] heights)
    {
        for (var i = 0; i < heights.Length; i++)
        {
            yield return heights[i];
            if (i + 1 == heights.Length) yield break;
            var steps = (int)Math.Ceiling(Math.Abs(shape.OffsetAt(heights[i + 1]) - shape.OffsetAt(heights[i])) / LookStep);
            for (var k = 1; k < steps; k++) yield return heights[i] + (heights[i + 1] - heights[i]) * k / steps;
        }
    }

    /// <summary>The faces of all layers and the middles between them.</summary>
    private static IEnumerable<double> Heights(StackPlan plan, double foot)
    {
        yield return foot;
        foreach (var sheet in plan.Sheets)
        {
            var top = foot + sheet.Thickness;
            yield return (foot + top) / 2;
            yield return top;
            foot = top;
        }
    }

    /// <summary>The outline made larger so that the cooled part is to size: divided by 1 - shrinkage.</summary>
    private static Region Enlarged(Region region, double shrinkage) =>
        shrinkage == 0 ? region : region.Transformed(Affine.Scaling(1 / (1 - shrinkage / 100), region.Bounds.Centre));
}
