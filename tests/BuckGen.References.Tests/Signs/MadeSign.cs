using BuckGen.Findings;
using BuckGen.Jobs;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Signs;

/// <summary>The example of a long sign, made once for all tests of it.</summary>
public sealed class MadeSign
{
    private static readonly string Folder = Path.Combine(RepositoryFolder.Path, "examples", "hithe-sign");

    private readonly JobResult made;

    public MadeSign()
    {
        made = JobRunner.Run(File.ReadAllText(Job), "job.toml", new JobFolder(Folder));
        Faults.None(made.Plan.AllFindings.Where(f => f.Severity == Severity.Error).Select(f => f.Message));
    }

    internal string Drawing { get; } = Path.Combine(Folder, "outline.svg");

    internal string Job { get; } = Path.Combine(Folder, "job.toml");

    internal void WriteTo(ScratchFolder scratch)
    {
        foreach (var file in made.Files) File.WriteAllBytes(scratch.File(file.Path), [.. file.Content]);
    }
}
