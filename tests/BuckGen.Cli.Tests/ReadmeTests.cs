using System.Text.RegularExpressions;
using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>Tests that move to another current folder run alone.</summary>
[CollectionDefinition(nameof(CurrentFolder), DisableParallelization = true)]
public sealed class CurrentFolder;

/// <summary>The commands in README.md and in the help texts do what they say.</summary>
[Collection(nameof(CurrentFolder))]
[Trait("Tier", "slow")]
public sealed partial class ReadmeTests : Workshop
{
    private static readonly string Readme = File.ReadAllText(Path.Combine(Repository.Root, "README.md"));

    private static readonly string[] Commands = [.. Fence().Matches(Readme).SelectMany(f => f.Groups[1].Value.Split('\n'))
        .Select(l => l.Trim()).Where(l => l.StartsWith("dotnet ", StringComparison.Ordinal))];

    [Fact]
    public void The_first_command_makes_an_example_and_the_second_tests()
    {
        Assert.StartsWith("dotnet run -c Release --project src/BuckGen.Cli -- make examples/", Commands[0]);
        Assert.StartsWith("dotnet test", Commands[1]);
        Assert.True(File.Exists(Path.Combine(Repository.Root, "src/BuckGen.Cli/BuckGen.Cli.csproj")));
        Assert.True(File.Exists(Path.Combine(Repository.Root, Arguments(Commands[0])[1])), Commands[0]);
    }

    [Fact]
    public void Every_command_of_the_program_runs()
    {
        var runs = Commands.Where(c => c.StartsWith("dotnet run", StringComparison.Ordinal)
            && c.Contains("BuckGen.Cli", StringComparison.Ordinal)).ToArray();
        Assert.InRange(runs.Length, 3, int.MaxValue);
        // What the commands name lies here; what they write stays here.
        CopyFolder(Path.Combine(Repository.Root, "examples"), At("examples"));
        Write("sign.svg", Plate);
        var before = Directory.GetCurrentDirectory();
        try
        {
            Directory.SetCurrentDirectory(Folder);
            foreach (var command in runs)
            {
                var run = Cli.Run(Arguments(command));
                Assert.True(run is { Status: 0, Error: "" }, $"{command}: {run.Status} {run.Error}");
            }
        }
        finally
        {
            Directory.SetCurrentDirectory(before);
        }
    }

    [Fact]
    public void Files_that_the_readme_points_to_are_there() =>
        Assert.All(Link().Matches(Readme).Select(m => m.Groups[1].Value).Where(l => !l.Contains("://", StringComparison.Ordinal)),
            link => Assert.True(Path.Exists(Path.Combine(Repository.Root, link)), link));

    [Fact]
    public void Every_example_of_the_help_texts_runs()
    {
        string[] names = ["sign.svg", "box.svg"];
        foreach (var name in names) Write(name, Plate);
        foreach (var name in (string[])["tray.dxf", "plate.dxf"])
            File.Copy(Path.Combine(Repository.Root, "examples", "specimen-box", "outline.dxf"), At(name));
        var before = Directory.GetCurrentDirectory();
        try
        {
            Directory.SetCurrentDirectory(Folder);
            var examples =
                ((string[])["--help", "new --help", "make --help", "buck --help", "form --help", "check --help", "inspect --help",
                    "vents --help", "jig --help", "blank --help", "catalog --help", "plugins --help", "completion --help"])
                .SelectMany(h => Cli.Run(h.Split(' ')).Out.Split("Usage:")[0].Split('\n'))
                .Select(l => l.Trim()).Where(l => l.StartsWith("buckgen ", StringComparison.Ordinal))
                .Select(l => Gap().Split(l)[0]).Distinct()
                .Where(l => !l.Contains("~/", StringComparison.Ordinal) && !l.Contains('|')).ToArray();
            Assert.InRange(examples.Length, 8, int.MaxValue);
            // A new job first: the others need it.
            foreach (var example in examples.OrderBy(e => e.Contains(" new ", StringComparison.Ordinal) ? 0 : 1))
            {
                var run = Cli.Run(Arguments(example));
                Assert.True(run is { Status: 0, Error: "" }, $"{example}: {run.Status} {run.Error}");
            }
        }
        finally
        {
            Directory.SetCurrentDirectory(before);
        }
    }

    /// <summary>
    /// What stands after " -- ", or after the program's own name, cut at spaces as a shell does; no quotes are used.
    /// </summary>
    private static string[] Arguments(string command) =>
        (command.Contains(" -- ", StringComparison.Ordinal) ? command[(command.IndexOf(" -- ", StringComparison.Ordinal) + 4)..]
            : command[(command.IndexOf(' ') + 1)..])
        .Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static void CopyFolder(string from, string to)
    {
        foreach (var file in Directory.GetFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }

    [GeneratedRegex(@"^```\w*\n(.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();

    [GeneratedRegex(@"\]\(([^)#]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(" {3,}")]
    private static partial Regex Gap();
}
