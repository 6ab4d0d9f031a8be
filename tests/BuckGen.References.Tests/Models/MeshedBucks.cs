using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Reading;
using BuckGen.Jobs;
using BuckGen.Output.Models;
using BuckGen.Output.Models.Meshing;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Models;

/// <summary>Designs and their smooth meshes, each made once for all tests of them.</summary>
public sealed class MeshedBucks
{
    // Letters with counters, many islands, curves, two islands that touch, a large drawing.
    private static readonly string[] Outlines =
    [
        "svg/ink_word_plain.svg", "dxf/ez_islands_r2004.dxf", "dxf/kc_board.dxf", "dxf/fc_dog_r14_spline.dxf", "dxf/os_tag.dxf",
        "dxf/ez_comb_necks.dxf", "dxf/ez_boat_4m.dxf", "svg/paper_shapes.svg",
    ];

    public static string[] Names { get; } = [.. Outlines, "examples/boathouse-sign/job.toml", "examples/specimen-box/job.toml"];

    private readonly Dictionary<string, BuckDesign> designs = [];
    private readonly Dictionary<string, SolidMesh> meshes = [];

    internal BuckDesign Design(string name) => designs.TryGetValue(name, out var made) ? made : designs[name] = Create(name);

    internal SolidMesh Smooth(string name) =>
        meshes.TryGetValue(name, out var made) ? made : meshes[name] = BuckModel.Smooth(Design(name));

    private static BuckDesign Create(string name)
    {
        if (name.EndsWith(".toml", StringComparison.Ordinal))
        {
            var path = Path.Combine(RepositoryFolder.Path, name);
            var job = JobFile.Read(File.ReadAllText(path), Path.GetFileName(path));
            var drawing = Path.Combine(Path.GetDirectoryName(path)!, job.OutlineFile);
            return BuckDesign.Create(OutlineReader.Read(File.ReadAllBytes(drawing), job.OutlineFile, job.Reading), job.Buck);
        }

        var number = Array.IndexOf(Outlines, name);
        return BuckDesign.Create(CorpusFiles.Valid().Single(f => f.File == name).Read(), new()
        {
            Depth = 24,
            Stock = [new("12 mm", 12)],
            Kind = number % 2 == 0 ? BuckKind.Male : BuckKind.Female,
            Corners = number % 3 == 0 ? CornerJoin.Mitre : CornerJoin.Round,
            Base = number % 4 < 2 ? new(new("9 mm", 9)) : null,
        });
    }
}
