using System.Text.Json;
using BuckGen.Findings;
using BuckGen.Jobs;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Parts;

/// <summary>
/// The finished part, computed by a script from the order, the written layers and the thickness of the boards. It must be what
/// was ordered and what the program reports.
/// </summary>
public class FinishedPartTests(ITestOutputHelper log)
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    [Fact]
    public void A_finished_part_is_what_was_ordered_and_what_is_reported()
    {
        var verdicts = Judge<PartVerdict>(PartJob.All, "finished_part.py");

        Assert.Equal(PartJob.All.Select(j => j.Name), verdicts.Select(v => v.Job));
        Faults.None(verdicts.SelectMany(v => v.Faults.Select(f => $"{v.Job}: {f}")));
    }

    [Fact]
    public void A_lid_has_the_play_that_was_ordered_and_that_is_reported()
    {
        var verdicts = Judge<PlayVerdict>(PartJob.WithLids, "lid_play.py");

        Assert.Equal(PartJob.WithLids.Select(j => j.Name), verdicts.Select(v => v.Job));
        Faults.None(verdicts.SelectMany(v => v.Faults.Select(f => $"{v.Job}: {f}")));
    }

    private List<T> Judge<T>(IReadOnlyList<PartJob> jobs, string script)
    {
        Reference.Python.Need();
        using var scratch = new ScratchFolder();
        Faults.None(jobs.SelectMany(job => Make(job, scratch)));
        var listing = scratch.File("listing.json");
        File.WriteAllText(listing, JsonSerializer.Serialize(new
        {
            Catalog = Path.Combine(RepositoryFolder.Path, "src", "BuckGen", "Intake", "Catalogs", "catalog.toml"),
            Jobs = jobs.Select(job => new { job.Name, Folder = scratch.File(job.Name), job.Drawing.Width, job.Drawing.Height }),
        }, Json));

        var judged = Reference.Python.Run(TimeSpan.FromMinutes(2), "-W", "ignore", RepositoryFolder.Script(script), listing);
        Assert.True(judged.ExitCode == 0, judged.Error);
        var verdicts = judged.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => JsonSerializer.Deserialize<T>(line, Json)!).ToList();
        foreach (var verdict in verdicts) log.WriteLine($"{verdict}");
        return verdicts;
    }

    /// <summary>Writes all files of a job and returns the errors of its design, with which none would be cut.</summary>
    private static IEnumerable<string> Make(PartJob job, ScratchFolder scratch)
    {
        File.WriteAllText(scratch.File($"{job.Name}/job.toml"), job.File);
        File.WriteAllText(scratch.File($"{job.Name}/outline.svg"), job.Drawing.Svg);
        var made = JobRunner.Run(job.File, "job.toml", new JobFolder(scratch.File(job.Name)));
        foreach (var file in made.Files) File.WriteAllBytes(scratch.File($"{job.Name}/{file.Path}"), [.. file.Content]);
        return made.Plan.AllFindings.Where(f => f.Severity == Severity.Error).Select(f => $"{job.Name}: {f.Message}");
    }
}
