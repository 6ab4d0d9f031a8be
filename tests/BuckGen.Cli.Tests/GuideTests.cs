using System.Text.RegularExpressions;
using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>The commands in the guides do what they say, in the order in which they stand there.</summary>
[Collection(nameof(CurrentFolder))]
[Trait("Tier", "slow")]
public sealed partial class GuideTests : Workshop
{
    [Theory]
    [InlineData("make-a-sign.md", 5)]
    [InlineData("predict-the-wall.md", 3)]
    [InlineData("write-a-plug-in.md", 2)]
    public void Every_command_of_a_guide_runs(string guide, int least)
    {
        var commands = Command().Matches(File.ReadAllText(Path.Combine(Repository.Root, "src/docs/guides", guide)))
            .Select(m => m.Groups[1].Value).ToArray();
        Assert.InRange(commands.Length, least, 20);
        File.Copy(Path.Combine(Repository.Root, "examples/boathouse-sign/outline.svg"), At("outline.svg"));
        if (guide != "make-a-sign.md") Cli.Run("new", At("job.toml"), "--outline", "outline.svg").AssertDone();
        var before = Directory.GetCurrentDirectory();
        try
        {
            Directory.SetCurrentDirectory(Folder);
            foreach (var command in commands)
            {
                var run = Cli.Run(command.Split(' '));
                Assert.True(run is { Status: 0, Error: "" }, $"{command}: {run.Status} {run.Error}");
            }
        }
        finally
        {
            Directory.SetCurrentDirectory(before);
        }

        if (guide == "make-a-sign.md") Assert.Contains("summary.json", Present("out"));
    }

    [GeneratedRegex(@"^buckgen (.*)$", RegexOptions.Multiline)]
    private static partial Regex Command();
}
