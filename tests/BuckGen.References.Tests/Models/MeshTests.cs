using System.Globalization;
using System.Text.RegularExpressions;
using BuckGen.Design;
using BuckGen.Output.Models;
using BuckGen.Output.Models.Meshing;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Models;

/// <summary>Model files as a mesh checker and a glTF validator see them.</summary>
public partial class MeshTests(MeshedBucks bucks, ITestOutputHelper log) : IClassFixture<MeshedBucks>
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    private static readonly Reference AdMesh = new("admesh", ["--version"], "apt-get install admesh");

    private static readonly Reference GltfValidator = new(
        "node", [RepositoryFolder.Script("validate_gltf.js")], "npm ci --prefix tests/BuckGen.References.Tests/Scripts");

    public static TheoryData<string> Names => [.. MeshedBucks.Names];

    // ADMesh: knows nothing of our corners' numbers, only of coordinates; what it joins must be closed and turned the right way
    // round.
    [Theory]
    [MemberData(nameof(Names))]
    public void ADMesh_finds_a_closed_mesh_of_the_right_volume(string name)
    {
        AdMesh.Need();
        var design = bucks.Design(name);
        var layers = design.Layers.Sum(l => l.Region.Area * l.Thickness);
        Judge(BuckModel.Stepped(design), layers);
        // Its own volume is compared with the drafted outlines elsewhere.
        var smooth = bucks.Smooth(name);
        Judge(smooth, smooth.Volume);

        void Judge(SolidMesh mesh, double volume)
        {
            using var scratch = new ScratchFolder();
            var file = scratch.File("model.stl");
            File.WriteAllBytes(file, [.. StlFile.Write(mesh)]);
            var said = AdMesh.Run(Minute, file).All;
            var wrong = Result().Matches(said)
                .Where(m => m.Groups[1].Value is not ("Number of parts" or "Volume") && Number(m) != 0)
                .Select(m => m.Value.Trim());
            Assert.Empty(wrong);
            Assert.Equal(mesh.Triangles.Length, int.Parse(Facets().Match(said).Groups[1].Value, CultureInfo.InvariantCulture));
            var measured = Number(Result().Matches(said).Single(m => m.Groups[1].Value == "Volume"));
            Assert.InRange(measured / volume, 0.999, 1.001);
            log.WriteLine(
                $"{name}: {mesh.Triangles.Length} triangles, {measured:F0} mm³, {measured / volume:F6} of what is expected.");
        }
    }

    // The validator of the glTF specification's own makers.
    [Theory]
    [MemberData(nameof(Names))]
    public void The_glTF_validator_finds_nothing_wrong(string name)
    {
        GltfValidator.Need();
        var mesh = bucks.Smooth(name);
        using var scratch = new ScratchFolder();
        var file = scratch.File("model.glb");
        File.WriteAllBytes(file, [.. GlbFile.Write(mesh, "buck")]);

        var report = Written.GateTests.Json(GltfValidator.Run(Minute, RepositoryFolder.Script("validate_gltf.js"), file))
            .Single();

        Faults.None(Written.GateTests.FaultsOf(report));
        Assert.Equal((mesh.Triangles.Length, mesh.Points.Length),
            (report.GetProperty("triangles").GetInt32(), report.GetProperty("vertices").GetInt32()));
    }

    // The formed sheet with its colours.
    [Theory]
    [InlineData("examples/boathouse-sign/job.toml")]
    [InlineData("examples/specimen-box/job.toml")]
    public void The_glTF_validator_finds_nothing_wrong_with_the_formed_sheet(string name)
    {
        GltfValidator.Need();
        var design = bucks.Design(name);
        var part = BuckDesign.Create(design.Outline, design.Spec with { Prediction = new() }).Formed!;
        using var scratch = new ScratchFolder();
        var file = scratch.File("part.glb");
        File.WriteAllBytes(file, [.. GlbFile.Write(part, "part")]);

        var report = Written.GateTests.Json(GltfValidator.Run(Minute, RepositoryFolder.Script("validate_gltf.js"), file))
            .Single();

        Faults.None(Written.GateTests.FaultsOf(report));
        Assert.Equal((part.Triangles.Length, part.Points.Length),
            (report.GetProperty("triangles").GetInt32(), report.GetProperty("vertices").GetInt32()));
    }

    [Fact]
    public void Both_notice_what_is_wrong()
    {
        AdMesh.Need();
        GltfValidator.Need();
        var mesh = BuckModel.Stepped(bucks.Design("dxf/os_tag.dxf"));
        using var scratch = new ScratchFolder();
        var (stl, glb) = (scratch.File("model.stl"), scratch.File("model.glb"));
        // The last triangle goes; an index beyond the last corner comes.
        byte[] open = [.. StlFile.Write(mesh)[..^50]], astray = [.. GlbFile.Write(mesh, "buck")];
        BitConverter.TryWriteBytes(open.AsSpan(80), mesh.Triangles.Length - 1);
        BitConverter.TryWriteBytes(astray.AsSpan(astray.Length - 4), mesh.Points.Length);
        File.WriteAllBytes(stl, open);
        File.WriteAllBytes(glb, astray);

        Assert.Contains(Result().Matches(AdMesh.Run(Minute, stl).All), m => m.Groups[1].Value == "Total disconnected facets"
            && Number(m) > 0);
        var report = Written.GateTests.Json(GltfValidator.Run(Minute, RepositoryFolder.Script("validate_gltf.js"), glb)).Single();
        Assert.NotEmpty(Written.GateTests.FaultsOf(report));
    }

    private static double Number(Match line) => double.Parse(line.Groups[2].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        "(Total disconnected facets|Number of parts|Degenerate facets|Edges fixed|Facets removed|"
        + @"Facets added|Facets reversed|Backwards edges|Normals fixed|Volume) *: *(-?[\d.]+)")]
    private static partial Regex Result();

    [GeneratedRegex(@"Number of facets *: *(\d+)")]
    private static partial Regex Facets();
}
