using BuckGen.Plugins;
using Xunit;

namespace BuckGen.Tests.Plugins;

/// <summary>
/// Loading plug-ins from their files: what fits is listed with its parts, what does not is named with the reason, and nothing
/// is thrown.
/// </summary>
public sealed class PluginSetTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buckgen-plugins-").FullName;

    public void Dispose() => Directory.Delete(folder, true);

    [Fact]
    public void The_samples_bring_a_pattern_and_a_writer()
    {
        var plugins = PluginSet.Load([PluginFiles.Pegboard, PluginFiles.LineProgram, PluginFiles.Pegboard]).Plugins;

        Assert.Equal(["Pegboard", "LineProgram"], plugins.Select(p => p.Name));
        Assert.All(plugins, p => Assert.Null(p.Problem));
        Assert.Equal([new("vent pattern", "pegboard")], plugins[0].Parts);
        Assert.Equal([new("cut-file writer", "ngc")], plugins[1].Parts);
    }

    [Fact]
    public void What_they_bring_is_added_to_the_librarys_own()
    {
        var all = PluginSet.Load([PluginFiles.Pegboard, PluginFiles.LineProgram]).AddTo(Extensions.BuiltIn);

        Assert.Equal(["walls", "grid", "given", "pegboard"], all.VentPatterns.Select(p => p.Name));
        Assert.Equal(["ngc"], all.CutFileFormats.Select(f => f.Name));
        Assert.Equal(Extensions.BuiltIn.Design, all.Design);
    }

    [Fact]
    public void A_part_that_can_t_be_made_is_named_and_the_others_are_taken()
    {
        var plugin = PluginSet.Load([PluginFiles.Faulty]).Plugins.Single();

        Assert.Equal("FaultyCatalog: the catalog fell apart", plugin.Problem);
        Assert.Equal(6, plugin.Parts.Length);
        Assert.DoesNotContain(plugin.Parts, p => p.Kind == "catalog");
    }

    [Fact]
    public void One_that_hangs_is_left_behind()
    {
        var plugins =
            PluginSet.Load([PluginFiles.Hanging, PluginFiles.Pegboard], new() { Start = TimeSpan.FromSeconds(2) }).Plugins;

        Assert.Equal("it did not start within 2 s", plugins[0].Problem);
        Assert.Empty(plugins[0].Parts);
        Assert.Null(plugins[1].Problem);
    }

    [Theory]
    [InlineData("9.0.0", false)]
    [InlineData("0.9.0", false)]
    [InlineData("0.0.1", false)]
    [InlineData("0.1.0", true)]
    public void One_built_against_another_version_is_named(string version, bool fits)
    {
        var plugin = PluginSet.Load([PluginFiles.BuiltAgainst(new(version), PluginFiles.Pegboard, folder)]).Plugins.Single();

        Assert.Equal(fits, plugin.Problem is null);
        if (!fits) Assert.Equal($"it was built against BuckGen {version}, and this is 0.1.0; ask its author for one that fits",
            plugin.Problem);
    }

    [Fact]
    public void What_is_no_plug_in_is_named()
    {
        var text = Path.Combine(folder, "text.dll");
        File.WriteAllText(text, "not an assembly");

        var problems =
            PluginSet.Load(
                [text, Path.Combine(folder, "gone.dll"), typeof(FactAttribute).Assembly.Location,
                    typeof(PluginSetTests).Assembly.Location])
            .Plugins.Select(p => p.Problem).ToArray();

        Assert.Equal("it is not a .NET assembly for this machine", problems[0]);
        Assert.Equal("the file does not exist", problems[1]);
        Assert.Equal("it is not a plug-in: it does not use BuckGen", problems[2]);
    }

    [Fact]
    public void A_folder_is_searched_one_level_deep_by_name()
    {
        Directory.CreateDirectory(Path.Combine(folder, "Pegboard"));
        File.Copy(PluginFiles.Pegboard, Path.Combine(folder, "Pegboard", "Pegboard.dll"));
        File.Copy(PluginFiles.LineProgram, Path.Combine(folder, "LineProgram.dll"));
        File.WriteAllText(Path.Combine(folder, "Pegboard", "other.dll"), "a library of its own");
        File.WriteAllText(Path.Combine(folder, "BuckGen.Dxf.dll"), "copied along by mistake");

        Assert.Equal(["LineProgram.dll", "Pegboard/Pegboard.dll"],
            PluginSet.Find(folder).Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/')));
        Assert.Empty(PluginSet.Find(Path.Combine(folder, "nowhere")));
    }

    [Fact]
    public void What_is_no_extension_can_t_be_added() =>
        Assert.Contains("is not an extension", Assert.Throws<ArgumentException>(() => Extensions.BuiltIn.With("text")).Message);
}
