using System.Collections.Immutable;
using System.Text;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Findings;
using BuckGen.Output.Models;
using BuckGen.Output.Models.Meshing;
using BuckGen.Output.Pictures;
using BuckGen.Output.Pictures.Png;
using BuckGen.Output.Reports;
using BuckGen.Output.Reports.Card;
using BuckGen.Output.Reports.Page;

namespace BuckGen.Output.Files;

/// <summary>
/// The files of one run as they are made, and what could not be made. Our own writers work on all cores; plug-ins are called one
/// after another.
/// </summary>
internal sealed class FilesInWork
{
    private const int MaxExtensionLength = 9;

    /// <summary>Maximum number of triangles of the model on the page: about 4 MB of it.</summary>
    private const int MaxModelTriangles = 150_000;

    /// <summary>Width of the preview, pixels.</summary>
    private const int PreviewWidth = 1600;

    private readonly List<FileInWork> files = [];
    private readonly List<Finding> failures = [];
    private readonly List<FormatInUse> formats;
    private readonly CutPlan plan;
    private readonly OutputOptions options;
    private readonly IProgress<string>? progress;
    private readonly CancellationToken cancellation;

    /// <summary>The buck as it is after sanding, for the files and for the page; null without models.</summary>
    private readonly Lazy<SolidMesh?> smooth;

    public FilesInWork(CutPlan plan, OutputOptions options, IProgress<string>? progress, CancellationToken cancellation)
    {
        (this.plan, this.options, this.progress, this.cancellation) = (plan, options, progress, cancellation);
        smooth = new(() => options.Model && !plan.Design.Layers.IsEmpty ? BuckModel.Smooth(plan.Design) : null);
        // DXF always, since other files rely on it; then the requested formats.
        formats = [Asked(CutFileFormats.Dxf(options.DxfVersion)), .. options.Svg ? [Asked(CutFileFormats.Svg)]
            : Array.Empty<FormatInUse>()];
        foreach (var format in options.Formats)
        {
            var (further, failure) = ForeignCode.Call(format, () => format.Name, () => Fit(Asked(format)));
            if (further is not null) formats.Add(further);
            else failures.Add(failure!);
        }
    }

    public void AddDrilling()
    {
        Add(DrillFiles.Lists(plan.Design, options));
        Add(TemplateFiles.Drilling(plan.Design, options));
        Add(DrillFiles.Programs(plan.Design, options));
    }

    public void AddTrimming() => Add(TemplateFiles.Trimming(plan.Design, options));

    public void AddLayers()
    {
        foreach (var layer in plan.Design.Layers)
            Add(CutFilePaths.Layer(layer.Number), () => LayerDrawing.Create(layer), isBoard: false);
    }

    public void AddAccessories()
    {
        foreach (var layer in plan.Design.Accessories)
            Add(CutFilePaths.Accessory(layer), () => LayerDrawing.Create(layer), isBoard: false);
    }

    public void AddBoards()
    {
        foreach (var board in plan.Boards) Add(CutFilePaths.Board(board), () => BoardDrawing.Create(board), isBoard: true);
    }

    public void AddModels()
    {
        if (options.Model) Add(ModelFiles.Create(plan.Design, smooth.Value));
    }

    public void AddProcessCard()
    {
        if (!plan.Groups.IsEmpty)
        {
            Add(new OutputFile(OutputFiles.ProcessCardPath, GroupCard.Write(plan, options.Title)));
            return;
        }

        var (card, failed) = ProcessCard.Write(plan, options.Title, options.Sections);
        failures.AddRange(failed);
        if (card is { } bytes) Add(new OutputFile(OutputFiles.ProcessCardPath, bytes));
    }

    /// <summary>All files, with the report and the summary at the end: they list every one, themselves included.</summary>
    public ImmutableArray<OutputFile> WithSummary()
    {
        var card = files.FirstOrDefault(f => f.Path == OutputFiles.ProcessCardPath) is { } written
            ? Encoding.UTF8.GetString(written.Content.Result.AsSpan()) : null;
        // One failing extension fails the same way for every file.
        var findings = FindingList.Append(plan.AllFindings, failures.DistinctBy(f => f.Message));
        var summary =
            Summary.Create(plan, options.Title,
                [.. files.Select(f => f.Path), OutputFiles.ReportPath, OutputFiles.PreviewPath, OutputFiles.SummaryPath],
                options.Rates, findings);
        Add(OutputFiles.ReportPath, () => HtmlReport.Write(plan, summary, findings, card, [.. Models()]));
        Add(OutputFiles.PreviewPath,
            () => PngPicture.Write(PreviewPicture.Draw(plan.Design, summary.Title, findings), PreviewWidth));
        Add(OutputFiles.SummaryPath, () => SummaryJson.Write(summary));
        return [.. files.Select(Finished)];
    }

    /// <summary>
    /// What can be turned on the page: the formed sheet, and the buck as it is after sanding when the job has models. What is too
    /// large for a page is left out.
    /// </summary>
    private IEnumerable<ModelData> Models()
    {
        if (plan.Design.Formed is { IsConverged: true } part && part.Triangles.Length <= MaxModelTriangles)
            yield return ModelData.FromPart("Formed sheet", part);
        if (smooth.Value is { IsEmpty: false } mesh && mesh.Triangles.Length <= MaxModelTriangles)
            yield return ModelData.FromMesh("Buck", mesh);
    }

    private void Add(string path, Func<CutDrawing> draw, bool isBoard)
    {
        var drawing = new Lazy<CutDrawing>(draw);
        foreach (var format in formats.Where(f => isBoard || !f.BoardsOnly).ToArray())
        {
            var file = Path.ChangeExtension(path, format.Ending);
            if (!ForeignCode.IsForeign(format.Format))
            {
                Add(file, () => WriterResult.Write(format.Format, drawing.Value));
                continue;
            }

            var (bytes, failure) = ForeignCode
                .Call(format.Format, () => format.Format.Name, () => WriterResult.Write(format.Format, drawing.Value));
            if (failure is not null)
            {
                LeaveOut(format, failure);
                continue;
            }

            format.Made.Add(file);
            Add(new OutputFile(file, bytes));
        }
    }

    private void Add(string path, Func<ImmutableArray<byte>> write)
    {
        cancellation.ThrowIfCancellationRequested();
        files.Add(new(path, Task.Run(write, cancellation)));
    }

    private void Add(TemplateFiles templates)
    {
        Add(templates.Files);
        failures.AddRange(templates.Findings);
    }

    private void Add(IEnumerable<OutputFile> made)
    {
        foreach (var file in made) Add(file);
    }

    /// <summary>A writer that fails at one file gives none: half a set of programs would be run as if it were whole.</summary>
    private void LeaveOut(FormatInUse format, Finding failure)
    {
        failures.Add(failure);
        formats.Remove(format);
        files.RemoveAll(f => format.Made.Contains(f.Path));
    }

    private static FormatInUse Asked(ICutFileFormat format) => new(format, format.Extension, format.BoardsOnly);

    /// <summary>The format, when its ending can be used.</summary>
    private FormatInUse Fit(FormatInUse format) =>
        format.Ending is not ['.', _, ..] || format.Ending.Length > MaxExtensionLength
            || !format.Ending[1..].All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c))
            ? throw new ForeignResultException(
                $"its ending \"{format.Ending}\" must be a dot and one to eight small letters or digits")
            : format.Ending == CutFileFormats.Svg.Extension || formats.Exists(f => f.Ending == format.Ending)
                ? throw new ForeignResultException($"its ending \"{format.Ending}\" is taken")
                : format;

    private void Add(OutputFile file) => files.Add(new(file.Path, Task.FromResult(file.Content)));

    private OutputFile Finished(FileInWork file)
    {
        var content = file.Content.GetAwaiter().GetResult();
        cancellation.ThrowIfCancellationRequested();
        progress?.Report(file.Path);
        return new(file.Path, content);
    }

    /// <summary>A file whose bytes may still be in the making.</summary>
    private sealed record FileInWork(string Path, Task<ImmutableArray<byte>> Content);

    /// <summary>A format, read once for what must not change.</summary>
    private sealed record FormatInUse(ICutFileFormat Format, string Ending, bool BoardsOnly)
    {
        /// <summary>Paths of the files it made.</summary>
        public List<string> Made { get; } = [];
    }
}
