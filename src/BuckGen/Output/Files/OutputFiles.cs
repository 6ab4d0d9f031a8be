using System.Collections.Immutable;
using BuckGen.Cancellation;
using BuckGen.Cutting.Boards;
using BuckGen.Output.Reports;

namespace BuckGen.Output.Files;

/// <summary>Every file of a job, made in memory. The same plan gives the same bytes.</summary>
public static class OutputFiles
{
    /// <summary>Path of the process card below the output folder.</summary>
    public const string ProcessCardPath = "process-card.txt";

    /// <summary>Path of the report below the output folder.</summary>
    public const string ReportPath = "report.html";

    /// <summary>Path of the report's preview picture below the output folder.</summary>
    internal const string PreviewPath = "report.png";

    /// <summary>Path of the summary below the output folder.</summary>
    public const string SummaryPath = "summary.json";

    /// <summary>
    /// The layers, the boards to cut, what else the options ask for, the report with its preview, and the summary. Only report,
    /// preview and summary when the plan has errors and is not forced.
    /// </summary>
    /// <param name="plan">The design laid out on boards.</param>
    /// <param name="options">Which files.</param>
    /// <param name="force">True to make the cut files in spite of errors.</param>
    /// <param name="progress">Receives every file.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static ImmutableArray<OutputFile> Create(
        CutPlan plan, OutputOptions options, bool force = false, IProgress<string>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        return Made(plan, options, made =>
        {
            if (plan.HasErrors && !force) return;
            made.AddLayers();
            made.AddDrilling();
            made.AddAccessories();
            made.AddTrimming();
            made.AddBoards();
            made.AddModels();
            made.AddProcessCard();
        }, progress, cancellation);
    }

    /// <summary>
    /// Only the jigs, laid out on boards of their own, the report with its preview, and the summary. Only report, preview and
    /// summary when the plan has errors and is not forced.
    /// </summary>
    /// <param name="plan">The design laid out on boards.</param>
    /// <param name="options">Which files.</param>
    /// <param name="force">True to make the cut files in spite of errors.</param>
    /// <param name="progress">Receives every file.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static ImmutableArray<OutputFile> Jigs(
        CutPlan plan, OutputOptions options, bool force = false, IProgress<string>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        return Made(plan, options, made =>
        {
            if (plan.HasErrors && !force) return;
            made.AddAccessories();
            made.AddTrimming();
            made.AddBoards();
        }, progress, cancellation);
    }

    /// <summary>Only the drill map with its templates, the report with its preview and the summary.</summary>
    /// <param name="plan">The design laid out on boards.</param>
    /// <param name="options">Which files.</param>
    /// <param name="progress">Receives every file.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static ImmutableArray<OutputFile> DrillMap(
        CutPlan plan, OutputOptions options, IProgress<string>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        return Made(plan, options, made => made.AddDrilling(), progress, cancellation);
    }

    private static ImmutableArray<OutputFile> Made(
        CutPlan plan, OutputOptions options, Action<FilesInWork> add, IProgress<string>? progress,
        CancellationToken cancellation)
    {
        return CancellableWork.Run(
            () =>
            {
                var files = InWork(plan, options, "");
                foreach (var (group, i) in plan.Groups.Select((g, i) => (g, i)))
                {
                    var title = options.Title.Length == 0 ? "" : FormattableString.Invariant($"{options.Title}, buck {i + 1}");
                    files = files.AddRange(InWork(group, options with { Title = title }, BuckFolders.OfGroup(i + 1) + "/"));
                }

                return files;
            },
            cancellation);

        ImmutableArray<OutputFile> InWork(CutPlan one, OutputOptions how, string folder)
        {
            var made = new FilesInWork(one, how, progress, cancellation);
            add(made);
            return [.. made.WithSummary().Select(f => f with { Path = folder + f.Path })];
        }
    }
}
