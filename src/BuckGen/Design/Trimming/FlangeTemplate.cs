using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Design.Trimming;

/// <summary>
/// For a part whose flange stays. The part hangs in the nest, flange up, and the template lies on it. A router whose bushing
/// follows the template cuts the flange to width.
/// </summary>
/// <param name="TrimLine">The finished edge of the flange.</param>
/// <param name="Offset">How far the template's edge stays inside the trim line, mm: half of bushing less bit.</param>
/// <param name="Template">The template; without parts, and not among the layers, when the bushing leaves nothing of it.</param>
/// <param name="Nest">The nest, with its screw holes.</param>
/// <param name="Findings">What its maker should know.</param>
public sealed record FlangeTemplate(Region TrimLine, double Offset, Layer Template, Layer Nest, ImmutableArray<Finding> Findings)
    : JigParts([.. Template.Parts.IsEmpty ? Array.Empty<Layer>() : [Template], Nest], Findings)
{
    /// <summary>Where the flange is narrowest.</summary>
    public RimWidth Narrowest { get; init; }

    /// <summary>The kind of the rim.</summary>
    public FlangeRim Rim { get; init; }

    internal static FlangeTemplate Create(PartShell shell, FlangeSpec flange, double clearance, StackSpec spec)
    {
        var letterHeight = spec.LetterHeight;
        var part = PartShell.Filled(shell.Outside(0));
        var trimLine = FlangeEdge.Create(shell, part, flange);
        var (narrowest, cuts) = (RimWidth.Find(part, trimLine), PanelEdgeCheck.ReachesOver(trimLine, part, spec.Tolerance));
        // Outside work cuts larger than the template by the offset.
        var template = shell.Moved(trimLine, -flange.Offset);
        var edge = Loop.Rectangle(trimLine.Bounds.Grown(flange.Land));
        var nest = Region.FromLoops(shell.Moved(part, clearance).Islands.Select(i => i.Outer).Prepend(edge));
        var inset = flange.Land / 2;
        var corners = edge.Bounds.Grown(-inset);
        ImmutableArray<DowelHole> screws =
        [
            .. ((Vec2[])[new(corners.MinX, corners.MinY), new(corners.MaxX, corners.MinY), new(corners.MaxX, corners.MaxY),
                new(corners.MinX, corners.MaxY)])
                .Select(c => new DowelHole(c, flange.Screw)),
        ];
        return new(trimLine, flange.Offset,
            PlainLayers.Create(1, LayerRole.Jig, "TEMPLATE", flange.Stock, 0, template, [], letterHeight),
            PlainLayers.Create(1, LayerRole.Jig, "NEST", flange.Stock, 0, nest, screws, letterHeight),
            [
                .. template.Islands.Length == trimLine.Islands.Length ? Array.Empty<Finding>() : [Lost(flange, trimLine)],
                .. cuts is { } place ? [Cuts(place)] : Narrow(flange, narrowest, spec.Tolerance),
            ])
        {
            Narrowest = narrowest,
            Rim = flange.Rim,
        };
    }

    private static Finding Cuts(Vec2 place) =>
        new("flange-rim-cuts", Severity.Error,
            FormattableString.Invariant($"The part reaches over the drawn rim of its flange, or over a hole in it, at {place}."),
            "Draw the rim larger, or move it; both drawings share one origin.")
        {
            Place = place,
            Value = 0,
            Limit = 0,
        };

    private static IEnumerable<Finding> Narrow(FlangeSpec flange, RimWidth narrowest, Tolerance tolerance)
    {
        // Arcs are followed to the chord error on either side.
        if (narrowest.Width >= flange.Width - 2 * tolerance.Chord) yield break;
        yield return new("flange-narrow", Severity.Warning,
            FormattableString.Invariant($"The flange is only {narrowest.Width:0.##} mm wide at {narrowest.Place}; it should be ")
                + FormattableString.Invariant($"{flange.Width:0.##} mm all along the rim."),
            flange.Rim == FlangeRim.Drawn ? "Draw the rim farther out there, or give a smaller width."
                : "Use a larger margin or a smaller corner radius, or give a smaller width.")
        {
            Place = narrowest.Place,
            Value = narrowest.Width,
            Limit = flange.Width,
        };
    }

    private static Finding Lost(FlangeSpec flange, Region trimLine) =>
        new("template-vanishes", Severity.Error,
            FormattableString.Invariant($"The template must stay {flange.Offset:0.##} mm inside the trim line for a bushing of ")
                + FormattableString.Invariant($"{flange.Bushing:0.##} mm and a bit of {flange.Bit:0.##} mm; parts of it vanish."),
            "Use a smaller bushing or a bit with a bearing, or a wider flange.")
        {
            Place = trimLine.Bounds.Centre,
            Value = flange.Offset,
        };
}
