using BuckGen.Bucks;
using BuckGen.Findings;
using BuckGen.Forming;
using BuckGen.Geometry.Offsetting;
using BuckGen.Trimming;

namespace BuckGen.Designs;

/// <summary>What follows the buck: the blank it takes, the jigs that trim the part, the panel it goes into.</summary>
internal sealed record Finishing(Blank? Blank, TrimJig? Jig, FlangeTemplate? Flange, FacePanel? Panel)
{
    public IEnumerable<Finding> Findings => [.. Jig?.Findings ?? [], .. Flange?.Findings ?? [], .. Panel?.Findings ?? []];

    public static Finishing Of(DraftedShape shape, BuckSpec spec, double depth, double[] heights, IOffsetter offsetter)
    {
        // Without an area at both ends there is nothing to form; other findings say so.
        if (spec.Sheet is null || shape.At(shape.Foot).IsEmpty || shape.At(shape.Face).IsEmpty) return new(null, null, null, null);
        var blank = Blank.Of(shape, spec, depth, heights);
        var shell = new PartShell(shape, spec.Kind, PartSizing.LevelWall(blank, spec.Draft), offsetter);
        return new(
            blank,
            spec.Jig is { } jig ? TrimJig.Of(shell, jig, spec, offsetter) : null,
            spec.Flange is { } flange ? FlangeTemplate.Of(shell, flange, spec.Jig?.Clearance ?? new JigSpec().Clearance, spec) : null,
            spec.Panel is { } panel ? FacePanel.Of(shell, panel, spec) : null);
    }
}
