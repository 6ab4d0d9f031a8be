using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Dxf;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Reading;
using BuckGen.Jobs;
using BuckGen.Output.Files;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Written;

/// <summary>A DXF on disk and the drawing it was made from.</summary>
public sealed record WrittenFile(string Path, DxfVersion Version, CutDrawing Drawing)
{
    /// <summary>Number of paths on a layer.</summary>
    public int Count(CutLayer layer) => Drawing.Paths.Count(p => p.Layer == layer);
}

/// <summary>A board on disk, with the layer file and the island in it that each of its parts comes from.</summary>
public sealed record WrittenBoard(
    WrittenFile File, BoardLayout Layout, CuttingSpec Cutting,
    IReadOnlyList<(string LayerFile, int Island, Affine View)> Sources);

/// <summary>The cut files of the examples and of a few outlines of the corpus, in both forms of DXF.</summary>
[CollectionDefinition(Name)]
public sealed class WrittenBucks : IDisposable, ICollectionFixture<WrittenBucks>
{
    /// <summary>The collection of the tests that look at them.</summary>
    public const string Name = "Written bucks";

    // Letters with counters, a rotated insert, many islands, curves, a hole that all but closes, two islands that touch.
    private static readonly string[] Outlines =
    [
        "svg/ink_word_plain.svg", "dxf/ez_islands_r2004.dxf", "dxf/kc_board.dxf", "dxf/fc_dog_r14_spline.dxf", "dxf/os_tag.dxf",
        "dxf/ez_comb_necks.dxf",
    ];

    private static readonly string[] Jobs = ["boathouse-sign/job.toml", "specimen-box/job.toml"];

    private readonly ScratchFolder scratch = new();

    public WrittenBucks()
    {
        foreach (var job in Jobs) WriteJob(Path.Combine(RepositoryFolder.Path, "examples", job));
        foreach (var (number, file) in CorpusFiles.Valid().Where(f => Outlines.Contains(f.File))
            .Index()) WriteOutline(number, file);
    }

    public List<WrittenFile> Files { get; } = [];

    public List<WrittenBoard> Boards { get; } = [];

    public string[] Paths => [.. Files.Select(f => f.Path)];

    public void Dispose() => scratch.Dispose();

    private void WriteJob(string path)
    {
        var job = JobFile.Read(File.ReadAllText(path), Path.GetFileName(path));
        var drawing = Path.Combine(Path.GetDirectoryName(path)!, job.OutlineFile);
        var outline = OutlineReader.Read(File.ReadAllBytes(drawing), job.OutlineFile, job.Reading);
        var design = BuckDesign.Create(outline, job.Buck);
        Write(job.Title, CutPlan.Create(design, job.Cutting));
        if (job.Lid is { } lid) Write($"{job.Title} lid", CutPlan.Create(design.CreateLid(lid), job.Cutting));
    }

    private void WriteOutline(int number, CorpusFile file)
    {
        // Each in another way: kinds and corners alternate, and every third goes to a router, which adds no kerf.
        var way = new Layers.LayerCase(
            number % 2 == 0 ? BuckKind.Male : BuckKind.Female, OutlineAt.Face, Steps.Outside,
            number % 4 < 2 ? Corners.Round : Corners.Mitre);
        var cutting = new CuttingSpec(number % 3 == 2 ? Machine.Router : Machine.Laser, Kerf: 0.3, Spacing: 6, EdgeMargin: 7);
        Write(file.File, CutPlan.Create(BuckDesign.Create(file.Read(), way.Spec), cutting));
    }

    private void Write(string name, CutPlan plan)
    {
        foreach (var version in Enum.GetValues<DxfVersion>())
        {
            var folder = $"{name.Replace('/', '-').Replace(' ', '-')}-{version}";
            foreach (var file in OutputFiles.Create(plan, new(name, version), force: true))
                File.WriteAllBytes(scratch.File($"{folder}/{file.Path}"), [.. file.Content]);
            // Jigs and panels are gated like the buck itself.
            var layers = plan.Design.Layers.Concat(plan.Design.Accessories).ToDictionary(l => l, l => new WrittenFile(
                scratch.File($"{folder}/{(l.Name.Length == 0 ? CutFilePaths.Layer(l.Number) : CutFilePaths.Accessory(l))}"),
                version, LayerDrawing.Create(l)));
            Files.AddRange(layers.Values);
            foreach (var board in plan.Boards)
            {
                var path = Directory.GetFiles(scratch.File($"{folder}/cut/x").TrimEnd('x'), $"board-{board.Number:00}-*.dxf")
                    .Single();
                Files.Add(new(path, version, BoardDrawing.Create(board)));
                Boards.Add(new(Files[^1], board, plan.Spec, [.. board.Placements.Select(p => Source(p.Part.Name))]));
            }

            (string, int, Affine) Source(string part)
            {
                var layer = layers.Keys.Single(l => l.Parts.Any(p => l.NameOf(p) == part));
                // What is marked on its back is drawn from there.
                return (layers[layer].Path, layer.Parts.ToList().FindIndex(p => layer.NameOf(p) == part),
                    layer.MarkedOnBack ? layer.ToBack : Affine.Identity);
            }
        }
    }
}
