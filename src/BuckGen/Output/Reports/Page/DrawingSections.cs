using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Trimming;
using BuckGen.Output.Pictures;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Svg;

namespace BuckGen.Output.Reports.Page;

/// <summary>The drawings: section, stack, the turnable model, layers, jigs, boards.</summary>
internal static class DrawingSections
{
    public static void Add(Html page, CutPlan plan, ImmutableArray<ModelData> models)
    {
        var design = plan.Design;
        page.Raw("<h2 id=\"drawings\">Drawings</h2>\n<p class=\"small\">First-angle views: the plan is seen from above, "
            + "the section from the front. Sizes in mm, inches in brackets. Scales hold on paper, printed at 100 %.</p>\n");
        if (SectionPicture.Draw(design) is { } section)
            Figure(page, section, "Section A-A through the layers as they are cut; the blue line is the wall after sanding.");
        if (StackPicture.Draw("The layers lifted apart", design.Layers) is { } stack)
            Figure(page, stack, "The layers lifted apart, lowest below.");
        if (!models.IsEmpty) AddView(page, models);
        if (design.Formed is { } part) WallSection.Add(page, design, part);
        if (design.Groups.IsEmpty) AddLayers(page, "layers", "Layers", design, design.Layers);
        var jigs = design.Accessories.ToArray();
        if (jigs.Length > 0)
        {
            AddLayers(page, "jigs", "Jigs and panel", design, jigs);
            if (design.Jig is { } jig
                && StackPicture.Draw("The trim jig lifted apart",
                    [.. jig.Bed is { } bed ? [bed with { Bottom = 0, Top = bed.Thickness }] : Array.Empty<Layer>(),
                        .. Raised(jig.Core, jig.Bed), .. Raised(jig.Ring, jig.Bed)]) is { } assembly)
                Figure(page, assembly,
                    "The trim jig lifted apart: the core is glued on the bed, the part goes over it, the ring round both. "
                    + FormattableString.Invariant($"The ring is {jig.Height:0.##} mm high, measured from the ")
                    + $"{FlangeFaceText.Format(jig.HeightFrom)}.");
        }

        page.Raw("<h2 id=\"boards\">Boards to cut</h2>\n<div class=\"pair\">\n");
        foreach (var board in plan.Boards)
            Figure(page, CutPicture.Draw(board),
                FormattableString.Invariant(
                    $"Board {board.Number}: {board.Stock.Name}, {board.Utilisation * 100:0} % used. Parts: ")
                    + $"{string.Join(", ", board.Placements.Select(p => p.Part.Name + FaceDown(p.Part)))}.");
        page.Raw("</div>\n");
    }

    private static void AddView(Html page, ImmutableArray<ModelData> models)
    {
        page.Raw("<figure class=\"screen\"><p id=\"view-choice\" hidden>");
        foreach (var model in models) page.Line($"<button type=\"button\" aria-pressed=\"false\">{model.Name}</button>");
        page.Raw("</p><canvas id=\"view\" hidden tabindex=\"0\" role=\"img\" aria-label=\"")
            .Raw(Html.Escaped(string.Join(" and ", models.Select(m => m.Name.ToLowerInvariant()))))
            .Raw(" in three dimensions; drag or use the arrow keys to turn\"></canvas>")
            .Raw("<figcaption id=\"view-help\" hidden>Drag to turn, wheel to zoom; or arrow keys, plus and minus.")
            .Raw(models.Any(m => m.IsColoured) ? " The sheet is dark where it is thin." : "").Raw("</figcaption></figure>\n");
    }

    /// <summary>The widest picture that still can be read in half the page's width, mm on paper.</summary>
    private const double Broad = 140;

    /// <summary>A picture with its words; the words are also what is read to those who do not see it.</summary>
    public static void Figure(Html page, Picture picture, string caption) => page
        .Raw(picture.Page.Width > Broad ? "<figure class=\"broad\">" : "<figure>")
        .Raw("<div class=\"drawing\" tabindex=\"0\">").Raw(SvgPicture.Inline(picture))
        .Line($"</div><figcaption>{caption}</figcaption></figure>");

    private static void AddLayers(Html page, string id, string heading, BuckDesign design, IReadOnlyList<Layer> layers)
    {
        page.Line($"<h2 id=\"{id}\">{heading}</h2>").Raw("<div class=\"pair\">\n");
        foreach (var layer in layers) Figure(page, CutPicture.Draw(layer), Words(layer) + EdgeWords(design, layer));
        page.Raw("</div>\n");
    }

    private static string FaceDown(CutPart part) => part.IsFaceDown ? " (face down)" : "";

    private static string EdgeWords(BuckDesign design, Layer layer) => !design.IsRounded(layer) ? ""
        : FormattableString.Invariant($" When the stack is glued, its edge is rounded to {design.Spec.EdgeRadius:0.##} mm.");

    private static string Words(Layer layer)
    {
        var name = layer.Name.Length > 0 ? FormattableString.Invariant($"{layer.Name} {layer.Number}")
            : FormattableString.Invariant($"Layer {layer.Number}");
        var marks = layer.SandTo.IsEmpty && layer.GlueUp.IsEmpty ? "" : " Brown: lines to sand to and to glue up to.";
        return FormattableString.Invariant($"{name}: {layer.Stock.Name}, {layer.Thickness:0.##} mm, {layer.Parts.Length} ")
            + FormattableString.Invariant($"piece{(layer.Parts.Length == 1 ? "" : "s")}.{marks}")
            + (layer.MarkedOnBack ? " Seen from its back, which is marked: it is cut with its face down." : "");
    }

    private static IEnumerable<Layer> Raised(IEnumerable<Layer> layers, Layer? bed) =>
        layers.Select(l => l with { Bottom = l.Bottom + (bed?.Thickness ?? 0), Top = l.Top + (bed?.Thickness ?? 0) });
}
