using System.Reflection;
using BuckGen.Design;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Packages;

/// <summary>All packages, packed once for the tests that use them, in a feed of their own.</summary>
public sealed class PackedFeed : IDisposable
{
    private readonly ScratchFolder scratch = new();
    private readonly ToolOutput packing;

    public PackedFeed()
    {
        // What is packed is what the tests run, so nothing is compiled once more.
        packing = Dotnet.Run(
            RepositoryFolder.Path, null, "pack", "BuckGen.sln", "--no-build", "-c", Configuration, "-o",
            Path.Combine(scratch.Path, "feed"));
        if (packing.ExitCode == 0) File.WriteAllText(Settings, SettingsText());
    }

    /// <summary>As these tests were built.</summary>
    private static string Configuration { get; } = new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;

    /// <summary>The version that is packed.</summary>
    public static string Version { get; } =
        typeof(BuckDesign).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion
            .Split('+')[0];

    /// <summary>A settings file that has our packages come from the feed and from nowhere else.</summary>
    public string Settings => scratch.File("nuget.config");

    /// <summary>A package, or its symbols.</summary>
    public string Package(string id, string extension = "nupkg") => scratch.File($"feed/{id}.{Version}.{extension}");

    /// <summary>
    /// Fails the running test where packing failed, or skips it where only a package of others could not be had.
    /// </summary>
    public void Need()
    {
        Assert.True(Configuration == "Release", "Only a Release build may be packed: run the tests with -c Release.");
        AssertDone(packing);
    }

    /// <summary>Runs the SDK with the feed, in a folder outside the repository.</summary>
    internal ToolOutput Run(string folder, params string[] arguments)
    {
        // Unpacked where nothing lies yet, for the same reason as in the settings.
        var run = Dotnet.Run(folder, Path.Combine(scratch.Path, "cache"), arguments);
        AssertDone(run);
        return run;
    }

    public void Dispose() => scratch.Dispose();

    private static void AssertDone(ToolOutput run)
    {
        // NU1101: a package is nowhere; NU1301: a source of packages does not answer.
        if (run.All.Contains("NU1101", StringComparison.Ordinal) || run.All.Contains("NU1301", StringComparison.Ordinal))
            Reference.Miss(
                $"a package that BuckGen needs is not in the machine's cache; connect to its source and run 'dotnet "
                + $"restore'\n{run.All}");
        Assert.True(run.ExitCode == 0, run.All);
    }

    /// <summary>
    /// Packages of others come from the machine's cache, which has them since these tests were built with them; ours never do,
    /// since an older one of the same version may lie there.
    /// </summary>
    private string SettingsText()
    {
        var cache = Dotnet.Run(RepositoryFolder.Path, null, "nuget", "locals", "global-packages", "--list").Output
            .Split(": ")[^1].Trim();
        return $"""
            <configuration>
              <packageSources>
                <clear />
                <add key="packed" value="{Path.Combine(scratch.Path, "feed")}" />
                <add key="cache" value="{cache}" />
              </packageSources>
              <packageSourceMapping>
                <clear />
                <packageSource key="packed"><package pattern="BuckGen" /><package pattern="BuckGen.*" /></packageSource>
                <packageSource key="cache"><package pattern="*" /></packageSource>
              </packageSourceMapping>
            </configuration>
            """;
    }
}
