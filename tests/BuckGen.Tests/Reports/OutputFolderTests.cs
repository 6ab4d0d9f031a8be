using System.Collections.Immutable;
using System.Text;
using BuckGen.Output;
using Xunit;

namespace BuckGen.Tests.Reports;

public sealed class OutputFolderTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buckgen-").FullName;

    public void Dispose() => Directory.Delete(folder, true);

    [Fact]
    public void Files_lie_where_their_paths_say()
    {
        OutputFolder.Write(folder, Run("cut/a.dxf", "layers/b.dxf"));

        Assert.Equal(["cut/a.dxf", "layers/b.dxf", "summary.json"], Present());
        Assert.Equal("cut/a.dxf", File.ReadAllText(Path.Combine(folder, "cut/a.dxf")));
    }

    [Fact]
    public void What_an_earlier_run_made_and_this_one_did_not_is_removed()
    {
        OutputFolder.Write(folder, Run("layers/layer-01.dxf", "layers/layer-02.dxf"));
        OutputFolder.Write(folder, Run("layers/layer-01.dxf"));

        Assert.Equal(["layers/layer-01.dxf", "summary.json"], Present());
    }

    [Fact]
    public void What_somebody_else_put_there_is_left_alone()
    {
        Directory.CreateDirectory(Path.Combine(folder, "layers"));
        File.WriteAllText(Path.Combine(folder, "layers/notes.txt"), "mine");
        OutputFolder.Write(folder, Run("layers/layer-01.dxf"));
        OutputFolder.Write(folder, Run());

        Assert.Equal(["layers/notes.txt", "summary.json"], Present());
    }

    [Fact]
    public void A_summary_that_names_files_outside_the_folder_removes_none_of_them()
    {
        var outside = Path.Combine(Path.GetTempPath(), $"buckgen-outside-{Guid.NewGuid():N}.txt");
        File.WriteAllText(outside, "mine");
        try
        {
            File.WriteAllText(Path.Combine(folder, "summary.json"), $$"""{ "schema": "buckgen-summary/1", "files": ["../{{Path.GetFileName(outside)}}", "{{outside}}", 5] }""");
            OutputFolder.Write(folder, Run("a.dxf"));

            Assert.True(File.Exists(outside));
        }
        finally
        {
            File.Delete(outside);
        }
    }

    [Theory]
    [InlineData("not json at all")]
    [InlineData("[]")]
    [InlineData("{ \"files\": 3 }")]
    [InlineData("{ \"files\": [\"keep.txt\"] }")]
    [InlineData("{ \"schema\": \"buckgen-summary/1\", \"files\": [\"keep.txt\"] }")]
    [InlineData("")]
    public void A_summary_that_is_not_ours_is_overwritten_and_nothing_else_touched(string text)
    {
        File.WriteAllText(Path.Combine(folder, "summary.json"), text);
        File.WriteAllText(Path.Combine(folder, "keep.txt"), "mine");

        OutputFolder.Write(folder, Run("a.dxf"));

        Assert.Equal(["a.dxf", "keep.txt", "summary.json"], Present());
    }

    [Fact]
    public void An_interrupted_run_leaves_the_last_complete_result()
    {
        OutputFolder.Write(folder, Run("layers/layer-01.dxf"));
        // The second file cannot be made: its folder's name is taken by a file.
        ImmutableArray<OutputFile> broken = [Made("layers/layer-01.dxf", "new"), Made("layers/layer-01.dxf/x", "no"), Made("summary.json", "{}")];

        Assert.ThrowsAny<IOException>(() => OutputFolder.Write(folder, broken));

        Assert.Equal("layers/layer-01.dxf", File.ReadAllText(Path.Combine(folder, "layers/layer-01.dxf")));
        Assert.Contains("layers/layer-01.dxf", File.ReadAllText(Path.Combine(folder, "summary.json")));
    }

    private string[] Present() => [.. Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
        .Select(p => Path.GetRelativePath(folder, p).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    private static ImmutableArray<OutputFile> Run(params string[] paths) =>
    [
        .. paths.Select(p => Made(p, p)),
        Made("summary.json", $$"""{ "schema": "buckgen-summary/1", "files": [{{string.Join(", ", paths.Append("summary.json").Select(p => $"\"{p}\""))}}] }"""),
    ];

    private static OutputFile Made(string path, string text) => new(path, [.. Encoding.UTF8.GetBytes(text)]);
}
