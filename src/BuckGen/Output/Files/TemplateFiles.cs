using System.Collections.Immutable;
using BuckGen.Design;
using BuckGen.Findings;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Pdf;
using BuckGen.Output.Pictures.Templates;

namespace BuckGen.Output.Files;

/// <summary>Templates at full size, for an office printer.</summary>
/// <param name="Files">The files.</param>
/// <param name="Findings">Those that are left out.</param>
internal sealed record TemplateFiles(ImmutableArray<OutputFile> Files, ImmutableArray<Finding> Findings)
{
    private static readonly TemplateFiles None = new([], []);

    /// <summary>Where the vents are drilled; none for a design without.</summary>
    public static TemplateFiles Drilling(BuckDesign design, OutputOptions options) =>
        Printed("templates/drilling.pdf", DrillTemplate.ForPaper(design, options.Title) is { } template ? [template]
            : [], options.Paper);

    /// <summary>Where the part is trimmed and the panel opened; none for a design without jigs and panel.</summary>
    public static TemplateFiles Trimming(BuckDesign design, OutputOptions options) =>
        Printed("templates/trim.pdf", TrimTemplates.Create(design, options.Title), options.Paper);

    private static TemplateFiles Printed(string path, ImmutableArray<PaperTemplate> templates, Paper paper)
    {
        if (templates.IsEmpty) return None;
        var pages = templates.Max(t => Tiles.Count(t, paper));
        return pages > Tiles.MaxPages
            ? new([], [TooLarge(path, pages, paper)])
            : new([new(path, PdfPicture.Write([.. templates.SelectMany(t => Tiles.Split(t, paper))]))], []);
    }

    private static Finding TooLarge(string path, long pages, Paper paper) =>
        new("template-too-large", Severity.Warning,
            FormattableString.Invariant(
                $"The paper template {path} would be spread over {pages} pages of {paper}, the limit is {Tiles.MaxPages}; ")
                + "it is left out.",
            "Have the drawings of the layers plotted at full size instead.")
        {
            Value = pages,
            Limit = Tiles.MaxPages,
        };
}
