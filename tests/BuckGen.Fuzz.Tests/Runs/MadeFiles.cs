using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design.Bucks;
using BuckGen.Output.Files;
using BuckGen.Output.Reports;

namespace BuckGen.Fuzz.Tests.Runs;

/// <summary>
/// What is written for a design. Report, pictures and templates take most of the time, so that few runs make them.
/// </summary>
/// <param name="Layers">The bytes of each layer's DXF, those of jigs and panel included.</param>
/// <param name="Boards">The bytes of each board's DXF.</param>
/// <param name="Summary">The bytes of summary.json.</param>
/// <param name="All">Every file; none when only these were made.</param>
internal sealed record MadeFiles(
    IReadOnlyList<(Layer Layer, ImmutableArray<byte> Dxf)> Layers,
    IReadOnlyList<(BoardLayout Board, ImmutableArray<byte> Dxf)> Boards,
    ImmutableArray<byte> Summary, ImmutableArray<OutputFile> All)
{
    /// <summary>The cut files and the summary alone.</summary>
    public static MadeFiles Few(CutPlan plan, OutputOptions options)
    {
        var layers = plan.Design.Layers.Concat(plan.Design.Accessories)
            .Select(l => (l, DxfCutFile.Write(LayerDrawing.Create(l), options.DxfVersion)));
        var boards = plan.Boards.Select(b => (b, DxfCutFile.Write(BoardDrawing.Create(b), options.DxfVersion)));
        return new([.. layers], [.. boards],
            SummaryJson.Write(BuckGen.Output.Reports.Summary.Create(plan, options.Title, [])), []);
    }

    /// <summary>Everything.</summary>
    public static MadeFiles Whole(CutPlan plan, OutputOptions options, CancellationToken cancellation)
    {
        var files = OutputFiles.Create(plan, options, force: true, cancellation: cancellation);
        var written = files.ToDictionary(f => f.Path, f => f.Content);
        var summary = SummaryJson.Read(written[OutputFiles.SummaryPath]);
        var layers = plan.Design.Layers.Zip(summary.Layers, (l, r) => (l, written[r.File!]))
            .Concat(plan.Design.Accessories.Zip(summary.Accessories, (l, r) => (l, written[r.File!])));
        return new([.. layers], [.. plan.Boards.Zip(summary.Boards, (s, r) => (s, written[r.File!]))],
            written[OutputFiles.SummaryPath], files);
    }
}
