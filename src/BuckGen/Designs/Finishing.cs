using System.Collections.Immutable;
using BuckGen.Bucks;
using BuckGen.Findings;
using BuckGen.Forming;
using BuckGen.Geometry.Offsetting;
using BuckGen.Trimming;

namespace BuckGen.Designs;

/// <summary>What follows the forming: the jigs that trim the part, the panel it goes into.</summary>
internal sealed record Finishing(TrimJig? Jig, FlangeTemplate? Flange, FacePanel? Panel)
{
    /// <summary>The layers of jigs and panel.</summary>
    public ImmutableArray<Layer> Layers =>
    [
        .. Jig?.Ring ?? [], .. Jig?.Core ?? [], .. Jig?.Bed is { } bed ? [bed] : Array.Empty<Layer>(),
        .. Flange is { } flange ? [flange.Template, flange.Nest] : Array.Empty<Layer>(),
        .. Panel is { } panel ? [panel.Panel, .. panel.Inlays is { } inlays ? [inlays] : Array.Empty<Layer>()] : Array.Empty<Layer>(),
    ];

    public IEnumerable<Finding> Findings =>
    [
        .. Jig?.Findings ?? [], .. Flange?.Findings ?? [], .. Panel?.Findings ?? [],
        .. Layers.SelectMany(l => l.Parts.Where(p => p.Label is null).Select(p => LayerMarks.NoRoom(l.NameOf(p), p.Shape, l.Top))),
    ];

    public static Finishing Of(DraftedShape shape, BuckSpec spec, Blank? blank, IOffsetter offsetter)
    {
        // Without an area at both ends there is nothing to form; other findings say so.
        if (blank is null || shape.At(shape.Foot).IsEmpty || shape.At(shape.Face).IsEmpty) return new(null, null, null);
        var shell = new PartShell(shape, spec.Kind, PartSizing.LevelWall(blank, spec.Draft), offsetter);
        return new(
            spec.Jig is { } jig ? TrimJig.Of(shell, jig, spec, offsetter) : null,
            spec.Flange is { } flange ? FlangeTemplate.Of(shell, flange, spec.Jig?.Clearance ?? new JigSpec().Clearance, spec) : null,
            spec.Panel is { } panel ? FacePanel.Of(shell, panel, spec) : null);
    }
}
