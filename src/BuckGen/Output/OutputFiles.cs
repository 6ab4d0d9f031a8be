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
    /// The layers, the sheets to cut, what else the options ask for, and the summary; only the summary when the plan has errors and is not forced.
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
            files.AddRange(DrillFiles.Of(plan.Design, options));
            AddAccessoriesAndSheets(files, plan, options);
            if (options.Model) files.AddRange(ModelFiles.Of(plan.Design));
            if (ProcessCard.Write(plan.Design, options.Title) is { } card) files.Add(new(ProcessCardPath, card));
        }

        return WithSummary(plan, options, files);
    }

    /// <summary>Path of the process card below the output folder.</summary>
    public const string ProcessCardPath = "process-card.txt";

    /// <summary>Only the jigs, laid out on sheets of their own, and the summary; only the summary when the plan has errors and is not forced.</summary>
    /// <param name="plan">The design laid out on sheets.</param>
    /// <param name="options">Which files.</param>
    /// <param name="force">True to make the cut files in spite of errors.</param>
    public static ImmutableArray<OutputFile> Jigs(CutPlan plan, OutputOptions options, bool force = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        var files = ImmutableArray.CreateBuilder<OutputFile>();
        if (!plan.HasErrors || force) AddAccessoriesAndSheets(files, plan, options);

        return WithSummary(plan, options, files);
    }

    /// <summary>Only the drill map and the summary.</summary>
    /// <param name="plan">The design laid out on sheets.</param>
    /// <param name="options">Which files.</param>
    public static ImmutableArray<OutputFile> DrillMap(CutPlan plan, OutputOptions options)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        return WithSummary(plan, options, DrillFiles.Of(plan.Design, options));
    }

    private static ImmutableArray<OutputFile> WithSummary(CutPlan plan, OutputOptions options, IEnumerable<OutputFile> files)
    {
        ImmutableArray<OutputFile> made = [.. files];
        var summary = Summary.Of(plan, options.Title, [.. made.Select(f => f.Path), SummaryPath], options.Rates);
        return [.. made, new(SummaryPath, SummaryJson.Write(summary))];
    }

    /// <summary>Path of the summary below the output folder.</summary>
    public const string SummaryPath = "summary.json";

    private static void AddAccessoriesAndSheets(ImmutableArray<OutputFile>.Builder files, CutPlan plan, OutputOptions options)
    {
        foreach (var layer in plan.Design.Accessories) Add(files, CutFilePaths.Accessory(layer), LayerDrawing.Of(layer), options);
        foreach (var sheet in plan.Sheets) Add(files, CutFilePaths.Sheet(sheet), SheetDrawing.Of(sheet), options);
    }

    private static void Add(ImmutableArray<OutputFile>.Builder files, string path, CutDrawing drawing, OutputOptions options)
    {
        files.Add(new(path, DxfCutFile.Write(drawing, options.DxfVersion)));
        if (options.Svg) files.Add(new(Path.ChangeExtension(path, ".svg"), SvgCutFile.Write(drawing)));
    }
}
