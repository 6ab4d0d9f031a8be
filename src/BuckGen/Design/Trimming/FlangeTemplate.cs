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
    internal static FlangeTemplate Create(PartShell shell, FlangeSpec flange, double clearance, double letterHeight)
    {
        var part = PartShell.Filled(shell.Outside(0));
        var trimLine = PartShell.Filled(shell.Moved(part, flange.Width));
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
            template.Islands.Length == trimLine.Islands.Length ? [] : [Lost(flange, trimLine)]);
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
