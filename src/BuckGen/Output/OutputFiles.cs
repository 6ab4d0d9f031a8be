using System.Collections.Immutable;
using BuckGen.CutFiles;
using BuckGen.CutPaths;
using BuckGen.Reports;
using BuckGen.Sheets;

namespace BuckGen.Output;

/// <summary>Every file of a job, made in memory. The same plan gives the same bytes.</summary>
public static class OutputFiles
{
    /// <summary>
    /// The layers, the sheets to cut and the summary; only the summary when the plan has errors and is not forced.
    /// </summary>
    /// <param name="plan">The design laid out on sheets.</param>
    /// <param name="options">Which files.</param>
    /// <param name="force">True to make the cut files in spite of errors.</param>
    public static ImmutableArray<OutputFile> Of(CutPlan plan, OutputOptions options, bool force = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        var files = ImmutableArray.CreateBuilder<OutputFile>();
        if (!plan.HasErrors || force)
        {
            foreach (var layer in plan.Design.Layers) Add(files, CutFilePaths.Layer(layer.Number), LayerDrawing.Of(layer), options);
            foreach (var sheet in plan.Sheets) Add(files, CutFilePaths.Sheet(sheet), SheetDrawing.Of(sheet), options);
        }

        var withSummary = files.Select(f => f.Path).Append(SummaryPath);
        files.Add(new(SummaryPath, SummaryJson.Write(Summary.Of(plan, options.Title, [.. withSummary]))));
        return files.ToImmutable();
    }

    /// <summary>Path of the summary below the output folder.</summary>
    public const string SummaryPath = "summary.json";

    private static void Add(ImmutableArray<OutputFile>.Builder files, string path, CutDrawing drawing, OutputOptions options)
    {
        files.Add(new(path, DxfCutFile.Write(drawing, options.DxfVersion)));
        if (options.Svg) files.Add(new(Path.ChangeExtension(path, ".svg"), SvgCutFile.Write(drawing)));
    }
}
