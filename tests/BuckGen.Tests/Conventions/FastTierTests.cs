using System.Text.RegularExpressions;
using Xunit;

namespace BuckGen.Tests.Conventions;

/// <summary>
/// The fast tier: all tests but those whose class or assembly is marked as slow. DEVELOPERS.md gives the command.
/// </summary>
public sealed partial class FastTierTests
{
    private static readonly string[] Tests =
        [.. Directory.GetFiles(Path.Combine(Repository.Root, "tests"), "*.cs", SearchOption.AllDirectories)
        .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
        .Select(File.ReadAllText)];

    [Fact]
    public void A_contributor_is_given_the_command() => Assert.Contains(
        "`dotnet test --filter-not-trait Tier=slow --ignore-exit-code 8`", Repository.Text("DEVELOPERS.md")
            .ReplaceLineEndings(" "), StringComparison.Ordinal);

    /// <summary>A mark with another word would put a slow test into the fast tier.</summary>
    [Fact]
    public void The_mark_is_the_one_that_the_command_filters()
    {
        var marks = Tests.SelectMany(t => Mark().Matches(t)).Select(m => m.Groups[1].Value).ToArray();

        Assert.InRange(marks.Length, 40, 200);
        Assert.All(marks, mark => Assert.Equal("\"Tier\", \"slow\"", mark));
    }

    [Fact]
    public void Most_test_classes_are_in_the_fast_tier() =>
        Assert.InRange(Tests.Count(t => Mark().IsMatch(t)), 1,
            Tests.Count(t => t.Contains("[Fact]", StringComparison.Ordinal)
                || t.Contains("[Theory]", StringComparison.Ordinal)) / 3);

    [GeneratedRegex(@"^\[(?:assembly: )?Trait\((.*)\)\]", RegexOptions.Multiline)]
    private static partial Regex Mark();
}
