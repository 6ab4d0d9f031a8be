using System.Text.Json;
using Xunit;

namespace BuckGen.Cli.Tests;

[Trait("Tier", "slow")]
public sealed class CatalogTests : Workshop
{
    private const string Oak = """
        [[stock]]
        id = "oak-10"
        name = "oak 10"
        thickness = "9.8mm"
        source = "measured with a caliper"
        """;

    [Fact]
    public void The_catalog_lists_stocks_and_plastics_with_their_sources()
    {
        var run = Cli.Run("catalog");

        run.AssertDone();
        // Real thickness, limits, density, kerf, laser, router.
        Assert.Matches(@"mdf-12 +12 +11\.8-12\.2 +740-880 +0\.25 +yes +yes", run.Out);
        Assert.Matches(@"petg +121 +135-154 +166 +60 +0\.3-0\.6 +5 +2 +no", run.Out);
        // The sources are numbered below each table, and the rows name numbers that are there.
        Assert.Matches(@"\n +\d+ +EN 622-1, thickness tolerance", run.Out);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 100, line));
    }

    [Fact]
    public void The_catalog_in_JSON_has_a_source_for_every_figure()
    {
        var json = Cli.Run("catalog", "--json").Json;

        Assert.All(Entries(json), e => Assert.NotEqual("", e.GetProperty("source").GetString()));
        Assert.All(Entries(json).SelectMany(e => e.GetProperty("figures").EnumerateArray()),
            f => Assert.InRange(f.GetProperty("sources").GetArrayLength(), 1, 9));
        var pvc = Entries(json).Single(e => e.GetProperty("id").GetString() == "pvc");
        Assert.Equal(("no", 0.5, 3.0),
            (pvc.GetProperty("laser").GetString(), pvc.GetProperty("shrinkage").GetProperty("high").GetDouble(),
                pvc.GetProperty("draftMale").GetDouble()));
    }

    [Fact]
    public void One_entry_is_shown_in_full_with_its_sources()
    {
        var run = Cli.Run("catalog", "PETG");

        run.AssertDone();
        Assert.StartsWith("petg: PETG\n", run.Out);
        Assert.Matches(@"draft advised, male +5 degrees +\d", run.Out);
        Assert.Matches(@"heat capacity, room to forming +1150 to 1850 J/\(kg K\) +\d", run.Out);
        Assert.Matches(@"laser +no +\d", run.Out);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 100, line));
        Assert.Matches(@"\n +\d+ +Eastman, thermoforming FAQ", run.Out);
        Assert.DoesNotContain("mdf", run.Out);
        Assert.Equal("petg", Entries(Cli.Run("catalog", "petg", "--json").Json).Single().GetProperty("id").GetString());
    }

    [Fact]
    public void A_word_that_is_not_there_is_refused_with_those_that_are() =>
        Cli.Run("catalog", "cheese").AssertRefused("'cheese' is not in the catalog", "mdf-3", "hdpe");

    [Fact]
    public void A_file_of_ones_own_adds_to_the_catalog()
    {
        var file = Write("my.toml", Oak);

        Assert.Matches(@"oak-10 +9\.8 ", Cli.Run("catalog", "--catalog", file).Out);
        Assert.Contains("measured with a caliper", Cli.Run("catalog", "oak-10", "--catalog", file).Out);
        Cli.Run("catalog", "oak-10").AssertRefused("'oak-10' is not in the catalog");
        Cli.Run("catalog", "--catalog", At("none.toml")).AssertRefused("none.toml does not exist");
        Cli.Run("catalog", "--catalog", Folder).AssertRefused("is a folder");
        Cli.Run("catalog", "--catalog", Write("bad.toml", Oak + "\ncolour = 3"))
            .AssertRefused("bad.toml, line 6: in [[stock]] \"oak-10\" \"colour\" is not known");
    }

    [Fact]
    public void Options_may_name_stocks_of_ones_own()
    {
        var (file, plate) = (Write("my.toml", Oak), Write("plate.svg", Plate));

        var run = Cli.Run("buck", plate, "--depth", "19.6mm", "--stock", "oak-10", "--base", "oak-10", "--catalog", file,
            "--out", At("out"));

        run.AssertDone();
        Assert.Contains("oak 10", run.Out);
        Cli.Run("buck", plate, "--depth", "19.6mm", "--stock", "oak-10").AssertRefused("'oak-10'");
        Cli.Run("check", plate, "--depth", "19.6mm", "--stock", "oak-10", "--catalog", file).AssertDone();
    }

    [Fact]
    public void A_job_may_name_a_catalog_beside_it()
    {
        Directory.CreateDirectory(At("jobs"));
        Write("jobs/my.toml", Oak);
        Write("jobs/plate.svg", Plate);
        var job = Write("jobs/job.toml", "catalog = \"my.toml\"\n" + PlateJob
            .Replace("name = \"MDF 12\"\nthickness = \"12mm\"", "catalog = \"oak-10\"", StringComparison.Ordinal)
            .Replace("24mm", "19.6mm", StringComparison.Ordinal));

        var run = Cli.Run("make", job);

        run.AssertDone();
        Assert.Contains("oak 10", run.Out);
        Cli.Run("check", job).AssertDone();
        Cli.Run("check", job, "--catalog", At("jobs/my.toml")).AssertRefused("--catalog has no effect with a job file");

        Write("jobs/my.toml", Oak.Replace("9.8mm", "9.8kg", StringComparison.Ordinal));
        Cli.Run("make", job).AssertRefused("my.toml, line 4: in [[stock]] \"oak-10\" \"thickness\" is \"9.8kg\"");
        File.Delete(At("jobs/my.toml"));
        Cli.Run("make", job).AssertRefused("my.toml does not exist");
    }

    [Fact]
    public void The_file_shown_in_the_help_is_understood()
    {
        var help = Cli.Run("catalog", "--help").Out;
        var shown = help[help.IndexOf("[[stock]]", StringComparison.Ordinal)..help.IndexOf("Usage:", StringComparison.Ordinal)];

        var run = Cli.Run("catalog", "my-petg", "--catalog", Write("shown.toml", shown));

        run.AssertDone();
        Assert.Contains("data sheet of 2024", run.Out);
    }

    private static IEnumerable<JsonElement> Entries(JsonElement catalog) =>
        catalog.GetProperty("stock").EnumerateArray().Concat(catalog.GetProperty("plastic").EnumerateArray());
}
