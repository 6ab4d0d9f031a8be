using System.Globalization;
using System.Text.Json;

namespace BuckGen.Cli.Tests;

/// <summary>
/// A workshop with the plug-in Evil in it. Its tests lie in several classes, since most of them wait, and classes run beside
/// each other.
/// </summary>
public abstract class EvilWorkshop : Workshop
{
    protected const string Job = PlateJob
        + "\n[base]\nstock = \"MDF 12\"\n[sheet]\n[vents]\npattern = \"evil-pattern\"\n[forming]\npredict = "
        + "false\n[output]\nformats = [\"evil-writer\"]\n";

    protected static Dictionary<string, string> SmallMemory { get; } =
        new() { ["DOTNET_GCHeapHardLimit"] = (400L << 20).ToString("X", CultureInfo.InvariantCulture) };

    private protected Cli Make(string deed, string job, params string[] args) =>
        RealProgram.Run(Folder, SmallMemory, ["make", Prepared(deed, job), .. args]);

    protected string Prepared(string deed, string job)
    {
        Write("plate.svg", Plate);
        Write("Evil.txt", deed);
        if (!File.Exists(At("Evil.dll"))) File.Copy(PluginTests.Sample("Evil", "tests/plugins"), At("Evil.dll"));
        var seconds =
            deed.Contains(": hang", StringComparison.Ordinal) || deed.EndsWith("spin", StringComparison.Ordinal) ? 4 : 60;
        return Write("job.toml", $"plugins = [\"Evil.dll\"]\nplugin-seconds = {seconds}\n" + job);
    }

    protected string[] Failures(string folder) =>
        [.. JsonDocument.Parse(File.ReadAllBytes(At(folder + "/summary.json"))).RootElement.GetProperty("findings")
            .EnumerateArray()
            .Where(f => f.GetProperty("id").GetString() == "plugin-failed").Select(f => f.GetProperty("message").GetString()!)];
}
