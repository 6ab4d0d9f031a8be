using System.Collections.Immutable;
using BuckGen.Designs;
using BuckGen.Pictures;
using BuckGen.Pictures.Tiling;

namespace BuckGen.Output;

/// <summary>Templates in real size, for an office printer.</summary>
internal static class TemplateFiles
{
    /// <summary>Where the vents are drilled; none for a design without.</summary>
    public static IEnumerable<OutputFile> Drilling(BuckDesign design, OutputOptions options) =>
        Printed("templates/drilling.pdf", DrillTemplate.ForPaper(design, options.Title) is { } template ? [template] : [], options.Paper);

    /// <summary>Where the part is trimmed and the panel opened; none for a design without jigs and panel.</summary>
    public static IEnumerable<OutputFile> Trimming(BuckDesign design, OutputOptions options) =>
        Printed("templates/trim.pdf", TrimTemplates.Of(design, options.Title), options.Paper);

    private static IEnumerable<OutputFile> Printed(string path, ImmutableArray<PaperTemplate> templates, Paper paper)
    {
        if (!templates.IsEmpty) yield return new(path, PdfPicture.Write([.. templates.SelectMany(t => Tiles.Of(t, paper))]));
    }
}
