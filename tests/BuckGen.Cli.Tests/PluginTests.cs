using System.Globalization;
using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>Plug-ins as a workshop uses them: named in a job or in a folder, listed, and never the end of a job.</summary>
[Trait("Tier", "slow")]
public sealed class PluginTests : Workshop
{
    private const string VentedJob = PlateJob + "\n[base]\nstock = \"MDF 12\"\n[sheet]\n[vents]\n";

    [Fact]
    public void A_job_names_a_plug_in_and_its_pattern_drills_the_holes()
    {
        Write("plate.svg", Plate);
        File.Copy(Sample("Pegboard"), At("Pegboard.dll"));
        var plain = Cli.Run("make", Write("plain.toml", VentedJob), "--out", At("plain"));
        var pegged =
            Cli.Run("make",
                Write("job.toml", "plugins = [\"Pegboard.dll\"]\n" + VentedJob
                    + "pattern = \"pegboard\"\n[settings.pegboard]\npitch = 20\n"), "--out", At("out"));

        plain.AssertDone();
        pegged.AssertDone();
        var places = File.ReadAllLines(At("out/drill/vents.csv")).Where(l => l.EndsWith("pattern", StringComparison.Ordinal))
            .Select(l => l.Split(',')).ToArray();
        Assert.True(places.Length > 10);
        Assert.All(places,
            p => Assert.All(
                p.Where(f => f.Contains('.', StringComparison.Ordinal)).Take(2),
                n => Assert.Equal(0, double.Parse(n, CultureInfo.InvariantCulture) % 20, 1e-3)));
        Assert.NotEqual(File.ReadAllText(At("plain/drill/vents.csv")), File.ReadAllText(At("out/drill/vents.csv")));
    }

    [Fact]
    public void A_folder_of_plug_ins_brings_a_writer()
    {
        Write("plate.svg", Plate);
        Directory.CreateDirectory(At("plug-ins"));
        File.Copy(Sample("LineProgram"), At("plug-ins/LineProgram.dll"));

        Cli.Run("buck", At("plate.svg"), "--depth", "24mm", "--stock", "mdf-12", "--plugins", At("plug-ins"), "--formats", "ngc",
            "--out", At("out")).AssertDone();
        Cli.Run("make", Write("job.toml", PlateJob + "\n[output]\nformats = [\"ngc\"]\n"), "--plugins", At("plug-ins"), "--out",
            At("made")).AssertDone();

        Assert.Equal(["board-01-mdf-12.dxf", "board-01-mdf-12.ngc"], Present("out/cut"));
        Assert.Contains("G21 G90", File.ReadAllText(At("made/cut/board-01-mdf-12.ngc")));
        Assert.Contains("G3 X", File.ReadAllText(At("made/cut/board-01-mdf-12.ngc")));
    }

    [Fact]
    public void Plug_ins_are_listed_with_what_they_bring_and_where_they_are()
    {
        Write("plate.svg", Plate);
        File.Copy(Sample("Pegboard"), At("Pegboard.dll"));

        var run = Cli.Run("plugins", Write("job.toml", "plugins = [\"Pegboard.dll\", \"gone.dll\"]\n" + PlateJob));

        run.AssertDone();
        Assert.Contains("Pegboard 0.1.0", run.Out);
        Assert.Contains($"from {At("Pegboard.dll")}", run.Out);
        Assert.Contains("vent pattern \"pegboard\"", run.Out);
        Assert.Contains("left out: the file does not exist", run.Out);
        Assert.Contains("No plug-ins.", Cli.Run("plugins").Out);
    }

    [Fact]
    public void Nothing_is_loaded_from_the_current_folder_without_request()
    {
        Write("plate.svg", Plate);
        File.Copy(Sample("Pegboard"), At("Pegboard.dll"));
        var here = Directory.GetCurrentDirectory();
        try
        {
            Directory.SetCurrentDirectory(Folder);

            Assert.Contains("No plug-ins.", Cli.Run("plugins").Out);
            Cli.Run("make", Write("job.toml", VentedJob + "pattern = \"pegboard\"\n"))
                .AssertRefused("it must be walls or grid or given");
        }
        finally
        {
            Directory.SetCurrentDirectory(here);
        }
    }

    [Fact]
    public void A_broken_plug_in_is_reported_and_the_job_is_done()
    {
        Write("plate.svg", Plate);
        Write("text.dll", "not an assembly");
        File.Copy(Sample("Faulty", "tests/plugins"), At("Faulty.dll"));

        var run = Cli
            .Run("make",
                Write("job.toml", "plugins = [\"text.dll\", \"Faulty.dll\"]\n" + VentedJob
                    + "[output]\nformats = [\"faulty-writer\"]\n"));

        Assert.Equal(0, run.Status);
        Assert.Contains("Plug-in text", run.Error);
        Assert.Contains("is left out: it is not a .NET assembly", run.Error);
        Assert.Contains("is left out in part: FaultyCatalog: the catalog fell apart", run.Error);
        Assert.Contains("The plug-in part \"faulty-check\" failed: the check fell apart.", run.Out.ReplaceLineEndings(" "));
        Assert.Contains("layers/layer-01.dxf", Present("out"));
        Assert.DoesNotContain(Present("out"), f => f.EndsWith(".bad", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("--plugins", "nowhere", "which is not a folder")]
    [InlineData("--formats", "hpgl", "which no plug-in provides")]
    [InlineData("--vents", "stars", "it must be walls or grid or given")]
    public void What_is_not_there_is_refused(string option, string value, string says) =>
        Cli.Run("buck", Write("plate.svg", Plate), "--depth", "24mm", "--stock", "12mm", "--base", "12mm", option, value)
            .AssertRefused(says);

    internal static string Sample(string name, string below = "examples/plugins")
    {
        var built = new DirectoryInfo(AppContext.BaseDirectory);
        return Path.Combine(Repository.Root, below, name, "bin", built.Parent!.Name, built.Name, name + ".dll");
    }
}
