using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;

namespace BuckGen.Design.Prediction;

/// <summary>The findings about the predicted part: thin spots, webs, places that the sheet does not reach.</summary>
internal static class FormedPartFindings
{
    /// <summary>Largest sag over the shorter side of the frame that the simulation starts from (our limit).</summary>
    private const double MaxSagShare = 0.25;

    /// <summary>What stands as near to the rim of a cavity as this is a fault of the part, mm (our definition).</summary>
    private const double RimReach = 3;

    private const string Source = "simulated stretching of the sheet over the designed buck";

    /// <summary>Why the wall cannot be predicted; null when it can.</summary>
    public static Finding? WhyNotPredicted(StackSpec spec, FormingSpec forming, Blank? blank)
    {
        if (blank is null)
            return NotPredicted("nothing is left of the plane in which the sheet is clamped", "Use less draft or a lower buck.");
        if (!spec.IsWiderBelow)
        {
            return NotPredicted("the walls of the buck lean over and lock the part", "Give the walls draft.")
                with
            { Value = spec.Draft, Limit = 0 };
        }
        var (sag, shorter) = (forming.Sag, Math.Min(blank.Opening.Width, blank.Opening.Height));
        if (sag > MaxSagShare * shorter)
        {
            return NotPredicted(
                FormattableString.Invariant($"a sag of {sag:0.#} mm is more than a quarter of the frame's shorter side"),
                "Heat the sheet less, or correct [forming] sag.")
                with
            { Value = sag, Limit = MaxSagShare * shorter };
        }
        return blank.Gap < Blank.MinClearance
            ? NotPredicted("the part does not fit into the frame", "Use a larger frame or a smaller part.")
                with
            { Value = blank.Gap, Limit = Blank.MinClearance }
            : null;
    }

    private static Finding NotPredicted(string reason, string remedy) =>
        new("wall-not-predicted", Severity.Note, $"The wall of the part is not predicted, because {reason}.",
            remedy)
        { Source = Source };

    public static IEnumerable<Finding> Find(
        FormedPart part, BuckKind kind, Region footprint, SheetSpec sheet, FormerSpec former, double maxThinning,
        DraftedWall wall)
    {
        // What folds beside the block of a cavity lies as low as the part, but it is waste.
        bool IsTrimmedOff(Vec2 place, double height) => wall.HeightOf(height) < wall.CutHeight
            || (kind == BuckKind.Female && !footprint.Contains(place) && footprint.DistanceToEdge(place) > RimReach);
        if (!part.IsConverged)
        {
            yield return new("forming-unsure", Severity.Warning,
                part.BurstAt is null
                    ? "The prediction of the wall did not converge."
                    : "The prediction of the wall failed here: the sheet folds or tears, or the shape is too fine for the "
                        + "triangles.",
                "Do not use the predicted wall. Try detail = \"fine\" in [forming], more draft, rounder corners or more "
                + "room between parts.")
            {
                Place = part.BurstAt,
                Source = Source,
            };
            yield break;
        }

        foreach (var finding in (Finding?[])[Thin(part, maxThinning), Film(part, sheet), Unjudged(part), TooNarrow(part),
            Plug(part, kind, former)])
            if (finding is not null) yield return finding;
        WebPlace[] folds = [.. part.Webs.Where(w => !IsTrimmedOff(w.Place, w.Height))];
        foreach (var web in folds.Where(w => w.StaysWhenSoft))
            yield return new("sheet-webs", Severity.Warning, "The sheet folds on itself here: a web will stand on the part.",
                "Give the parts more room or more draft, or add a block beside the web that the sheet meets first.")
            {
                Place = web.Place,
                Height = web.Height,
                Source = Source,
            };
        BridgedPlace[] gaps = [.. part.Bridged.Where(b => !IsTrimmedOff(b.Place, b.Height))];
        foreach (var place in gaps.Where(b => b.Range.Low > 0))
            yield return new("sheet-bridges", Severity.Warning,
                $"The sheet does not reach the buck here: it stands {WallText.Format(place.Range, "0.#")} off.",
                "Make the corner rounder or the gap wider, set a vent there, or use a thinner sheet.")
            {
                Place = place.Place,
                Height = place.Height,
                Value = place.Gap,
                Source = Source,
            };
        if (Perhaps(part.Modulus, folds, gaps) is { } perhaps) yield return perhaps;
        var (webs, bridged) =
            (part.Webs.Count(w => IsTrimmedOff(w.Place, w.Height)), part.Bridged.Count(b => IsTrimmedOff(b.Place, b.Height)));
        if (webs + bridged > 0) yield return TrimmedOff(kind, webs, bridged);
    }

    /// <summary>What goes with the flange is no fault of the part: one note for all of it.</summary>
    private static Finding TrimmedOff(BuckKind kind, int webs, int bridged)
    {
        string[] what =
        [
            .. webs > 0 ? (string[])[$"folds in {CountText.Format(webs, "place")}"] : [],
            .. bridged > 0 ? (string[])[$"does not reach the buck in {CountText.Format(bridged, "place")}"] : [],
        ];
        return new("faults-trimmed-off", Severity.Note,
            $"{(kind == BuckKind.Female ? "Outside the cavity" : "Under the cut")} the sheet {string.Join(" and ", what)}; "
                + "that is trimmed off with the flange.",
            "Leave it, unless a web keeps the ring from going round the part.")
        {
            Value = webs + bridged,
            Source = Source,
        };
    }

    /// <summary>What a hotter, softer sheet does not do is no fault of the buck: one note for all such places.</summary>
    private static Finding? Perhaps(FigureRange modulus, IEnumerable<WebPlace> folds, IEnumerable<BridgedPlace> gaps)
    {
        var (webs, bridged) = (folds.Where(w => !w.StaysWhenSoft).ToArray(), gaps.Where(b => b.Range.Low == 0).ToArray());
        if (webs.Length + bridged.Length == 0) return null;
        string[] what =
        [
            .. webs.Length > 0 ? (string[])[$"fold on itself in {CountText.Format(webs.Length, "place")}"] : [],
            .. bridged.Length > 0
                ? (string[])[$"not reach the buck in {CountText.Format(bridged.Length, "place")}, by up to "
                    + FormattableString.Invariant($"{bridged.Max(b => b.Range.High):0.#} mm")] : [],
        ];
        return new("formed-cool", Severity.Note,
            $"{(modulus.Low < modulus.High ? "Formed at the cool end of its range, the" : "The")} sheet may "
                + $"{string.Join(", and ", what)}.",
            "Heat it to the hot end of its range, or give the parts more room, more draft and rounder corners.")
        {
            Place = bridged.Length > 0 ? bridged[0].Place : webs[0].Place,
            Height = bridged.Length > 0 ? bridged[0].Height : webs[0].Height,
            Value = webs.Length + bridged.Length,
            Source = Source,
        };
    }

    private static Finding? Unjudged(FormedPart part) => part.Thinnest is null
        ? new("wall-not-judged", Severity.Note,
            "The thinnest wall is not known: no place of the part has room for a ball of "
                + FormattableString.Invariant($"{part.BallRadius:0.#} mm radius."),
            "Try detail = \"fine\" in [forming], which uses a smaller ball, or set a smaller corner-ball.")
        {
            Value = part.BallRadius,
            Source = Source,
        }
        : null;

    private static Finding? TooNarrow(FormedPart part) => part.NotJudged is { } gap
        ? new("gap-not-judged", Severity.Note,
            FormattableString.Invariant($"The wall is not predicted in gaps narrower than {gap.MinJudged:0.#} mm; this one is ")
                + FormattableString.Invariant($"{gap.Width:0.#} mm wide."),
            "Fill it or make it wider; or form a first part and measure.")
        {
            Place = gap.Place,
            Value = gap.Width,
            Limit = gap.MinJudged,
            Source = Source,
        }
        : null;

    private static Finding? Plug(FormedPart part, BuckKind kind, FormerSpec former) =>
        part.PlugDepth is null && kind == BuckKind.Female && former.PlugGap is { } gap
            ? new("plug-not-predicted", Severity.Note,
                FormattableString.Invariant($"The wall is predicted without the plug: none fits that leaves {gap:0.#} mm all ")
                    + "round and ends above the floor.",
                "Set a smaller plug-gap or plug-depth in [former], or leave the plug out.")
            { Value = gap, Source = Source }
            : null;

    /// <summary>
    /// Thin where tearing is near, anywhere in the frame: a hole beside the part loses the vacuum as well. A note where only the
    /// lower end of the range is that thin.
    /// </summary>
    private static Finding? Thin(FormedPart part, double maxThinning) => part.ThinnestOfSheet is { } thin
            && part.Gauge / Math.Min(thin.Thickness, part.RangeOf(thin)?.Low ?? thin.Thickness) is var thinning
            && thinning > maxThinning
        ? new("thin-spot", part.Gauge / thin.Thickness > maxThinning ? Severity.Warning : Severity.Note,
            $"The sheet here is {WallText.Format(part.RangeOf(thin))} thick, "
                + FormattableString.Invariant($"down to 1/{thinning:0.#} of the gauge, and may tear."),
            "Use more draft, rounder corners, a shallower shape, a larger frame round a male buck, or a thicker sheet.")
        {
            Place = thin.Place,
            Height = thin.Height,
            Value = thinning,
            Limit = maxThinning,
            Source = Source + "; the limit is common practice, no source",
        }
        : null;

    /// <summary>A wall that is too thin in the middle of its range is a warning, one that only may be is a note.</summary>
    private static Finding? Film(FormedPart part, SheetSpec sheet) => part.Thinnest is { } thin
            && sheet.MinWall is { } wanted && Math.Min(thin.Thickness, part.ThinnestRange?.Low ?? thin.Thickness) < wanted
        ? new("wall-too-thin", thin.Thickness < wanted ? Severity.Warning : Severity.Note,
            $"The thinnest wall {(part.ThinnestRange?.High < wanted ? "will" : "may")} be too thin: "
                + $"{WallText.Format(part.ThinnestRange)}; "
                + FormattableString.Invariant($"{wanted:0.###} mm is wanted."),
            part.RequiredGaugeRange is { } gauge
                ? $"Start with a sheet of {WallText.Format(gauge)}, or use more draft and rounder corners."
                : "Use a thicker sheet, more draft or rounder corners.")
        {
            Place = thin.Place,
            Height = thin.Height,
            Value = thin.Thickness,
            Limit = wanted,
            Source = Source,
        }
        : null;
}
