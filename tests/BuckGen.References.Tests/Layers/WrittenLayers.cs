using System.Collections.Concurrent;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design;
using BuckGen.Dxf;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Layers;

/// <summary>The layers of one buck.</summary>
internal sealed record WrittenCase(string Kind, string At, string Steps, string Corners, string[] Layers);

/// <summary>An outline and the bucks made of it. The area is null where readers may differ on it.</summary>
internal sealed record WrittenOutline(
    string File, string Source, string Exported, double MmPerUnit, double? Area, IReadOnlyList<WrittenCase> Cases);

/// <summary>Layer files of many outlines, made in many ways.</summary>
internal sealed class WrittenLayers
{
    /// <summary>
    /// Two of its squares share an edge: BuckGen keeps them apart, as the corpus asks, and GEOS dissolves the edge.
    /// </summary>
    private const string SharedEdge = "dxf/ez_touching.dxf";

    private const int LongOutline = 150, VeryLongOutline = 5000;

    private readonly ConcurrentBag<WrittenOutline> outlines = [];
    private readonly ConcurrentBag<string> refusals = [];

    public IReadOnlyCollection<WrittenOutline> Outlines => outlines;

    /// <summary>Outlines that were read but not made into a buck.</summary>
    public IReadOnlyCollection<string> Refusals => refusals;

    /// <summary>
    /// Core outlines are made in six ways, the others and the very long core ones in a few, each in other ones than its
    /// neighbours.
    /// </summary>
    public static WrittenLayers Create(IReadOnlyList<CorpusFile> files, ScratchFolder scratch)
    {
        var written = new WrittenLayers();
        Parallel.ForEach(files.Index(), numbered =>
        {
            var (number, file) = numbered;
            if (file.File != SharedEdge) written.Add(number, file, scratch);
        });
        return written;
    }

    private void Add(int number, CorpusFile file, ScratchFolder scratch)
    {
        Outline outline;
        try
        {
            outline = file.Read();
        }
        catch (OutlineException)
        {
            return; // The intake tests say which files must be read.
        }

        var pieces = outline.Region.Loops.Sum(loop => loop.Segments.Length);
        var ways = LayerCase.Turn(number, pieces > VeryLongOutline ? 1 : !file.IsCore ? 2 : pieces > LongOutline ? 3 : 6);
        var exported = scratch.File($"{file.File}/outline.dxf");
        WriteDxf(exported, new(file.File, [.. outline.Region.Loops.Select(OuterOrInner)], outline.Region.Bounds));
        outlines.Add(new(
            file.File, file.FullPath, exported, file.MillimetresPerUnit,
            file.AreaTolerance <= CorpusFile.UsualAreaTolerance ? file.Area : null,
            [.. ways.Select((way, i) => Made(outline, way, $"{file.File}/{i}", scratch)).OfType<WrittenCase>()]));
    }

    private WrittenCase? Made(Outline outline, LayerCase way, string folder, ScratchFolder scratch)
    {
        try
        {
            var layers = BuckDesign.Create(outline, way.Spec).Layers.Select(layer =>
            {
                var path = scratch.File($"{folder}/layer-{layer.Number:00}.dxf");
                WriteDxf(path, LayerDrawing.Create(layer));
                return path;
            });
            return new(way.Kind.ToString(), way.At.ToString(), way.Steps.ToString(), way.Corners.ToString(), [.. layers]);
        }
        catch (OutlineException refusal)
        {
            refusals.Add($"{way}: {refusal.Message}");
            return null;
        }
    }

    private static CutPath OuterOrInner(Loop loop) =>
        CutPath.FromLoop(loop.SignedArea > 0 ? CutLayer.CutOuter : CutLayer.CutInner, loop);

    private static void WriteDxf(string path, CutDrawing drawing) =>
        File.WriteAllBytes(path, [.. DxfCutFile.Write(drawing, DxfVersion.R12)]);
}
