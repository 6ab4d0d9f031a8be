using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Design.Parts;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;

namespace BuckGen.Design;

/// <summary>Orders a lid from the finished part that it mates with, and measures how they fit.</summary>
internal static class LidDesigner
{
    /// <summary>The lid's buck, with the play between lid and part.</summary>
    public static BuckDesign Design(BuckDesign part, LidSpec lid, DesignExtensions extensions,
        IProgress<DesignProgress>? progress, CancellationToken cancellation)
    {
        lid.Validate();
        if (part is not { Part: { Shell: { } shell } finished })
            throw new SpecException("The lid is sized from the finished part, but nothing is formed of that part.");
        var spec = Spec(part.Spec, lid, finished);
        var outline = Outline.FromRegion(part.Outline.Name, Drawing(finished, lid, spec, cancellation));
        var design = BuckDesign.Create(outline, spec, extensions, progress, cancellation);
        if (design.Part is not { Shell: { } lidShell } made) return design;
        var play = MatingPlay.Measure(lid.Fit, lid.Skirt, lid.Clearance,
            new(shell, finished.MouthHeight), new(lidShell, lid.Fit == LidFit.Over ? 0 : FlangeFace(spec)),
            cancellation);
        // The maker silenced findings of the part; the lid need not have them too.
        ImmutableArray<Finding> findings = [.. design.Findings.Where(f => f.Id != Silencing.IdleId)];
        return play is null ? design : design with
        {
            Mating = play,
            Findings = FindingList.Append(findings, MatingFindings.Find(play, made.SizeTolerance)),
        };
    }

    /// <summary>What the lid's buck is made of: the shop's things are those of the part.</summary>
    private static BuckSpec Spec(BuckSpec part, LidSpec lid, FinishedPart finished)
    {
        var over = lid.Fit == LidFit.Over;
        var spec = part with
        {
            Draft = lid.Draft ?? finished.Shell!.PieceAt(finished.MouthHeight).Draft,
            // It slides along the part: a wall with bends, or a round at its edge, would foul.
            Side = [],
            EdgeRadius = 0,
            Depth = lid.Skirt,
            Part = over ? new() { Side = PartSide.Inside, At = PartEnd.Face, CutHeight = part.Part?.CutHeight }
                : new() { Side = PartSide.Outside, At = PartEnd.Mouth },
            // The height of its ring is chosen for its own depth.
            Jig = over && part.Jig is { } jig ? jig with { TrimHeight = null } : null,
            Panel = null,
            Flange = null,
        };
        if (over) return spec;
        // The flange lies on the mouth of the part, and the skirt begins below it.
        return spec with
        {
            Depth = lid.Skirt + part.Sheet!.Gauge,
            Flange = new(part.Flange?.Stock ?? part.Base?.Stock ?? part.Stock[0])
            {
                Width = FirstPlay(finished, lid, spec) - BelowFlange(spec)
                    + finished.Mouth.Wall.Mean / finished.Shell!.PieceAt(finished.MouthHeight).CosineOfDraft
                    + (lid.Fit == LidFit.Into ? lid.Brim : 0),
            },
        };
    }

    /// <summary>The outline of the lid where it is to size: the part's at its mouth, and the play there.</summary>
    private static Region Drawing(FinishedPart part, LidSpec lid, BuckSpec spec, CancellationToken cancellation)
    {
        var (outline, distance) = lid.Fit == LidFit.Over
            ? (PartShell.Filled(part.Mouth.Outside), lid.Clearance)
            : (part.Mouth.Inside, BelowFlange(spec) - FirstPlay(part, lid, spec));
        var drawn = distance == 0 ? outline
            : CheckedOffsetter.Standard(spec.Tolerance).Offset(outline, distance, CornerJoin.Round, cancellation);
        return drawn.IsEmpty
            ? throw new SpecException(FormattableString.Invariant(
                $"Nothing is left of the lid when {-distance:0.##} mm of play are taken off; use less clearance."))
            : drawn;
    }

    /// <summary>
    /// Play at the mouth of a lid that goes into the part. Where the part narrows faster than the lid, the play is smallest at
    /// the end of the skirt.
    /// </summary>
    private static double FirstPlay(FinishedPart part, LidSpec lid, BuckSpec spec)
    {
        double Slope(double draft) => Math.Tan(draft * Math.PI / 180);
        if (part.Shell!.Side.StraightDraft is { } draft)
            return lid.Clearance + lid.Skirt * Math.Max(0, Slope(draft) - Slope(spec.Draft));
        double[] below = [.. part.Shell.WithBends([0, part.MouthHeight + lid.Skirt]).Select(h => h - part.MouthHeight)];
        return lid.Clearance + below.Where(b => b >= 0 && b <= lid.Skirt)
            .Max(b => part.Shell.Narrowing(part.MouthHeight, part.MouthHeight + b) - b * Slope(spec.Draft));
    }

    /// <summary>How much wider the lid is in the plane where its flange touched the wood than on the part's mouth, mm.</summary>
    private static double BelowFlange(BuckSpec lid) => FlangeFace(lid) * Math.Tan(lid.Draft * Math.PI / 180);

    /// <summary>
    /// From the plane in which the lid's flange touched the wood to the side of the flange that lies on the part, mm. Over a male
    /// buck the body stands on the other side of the flange.
    /// </summary>
    private static double FlangeFace(BuckSpec lid) => lid.Kind == BuckKind.Male ? lid.Sheet!.Gauge : 0;
}
