using BuckGen.Tests.Conventions;
using Xunit;

namespace BuckGen.Cli.Tests;

public class HelpTests
{
    private static readonly string[] Commands =
        ["make", "buck", "new", "form", "check", "inspect", "vents", "jig", "blank", "catalog", "plugins", "completion"];

    public static TheoryData<string> Names => [.. Commands];

    [Fact]
    public void The_first_page_shows_how_to_start_and_what_the_exit_status_means()
    {
        var run = Cli.Run("--help");

        run.AssertDone();
        Assert.Contains("buckgen new job.toml", run.Out);
        Assert.Contains("buckgen make job.toml", run.Out);
        Assert.Contains("0 done, 1 the design has errors, 2 bad input", run.Out);
        Assert.All(Commands, c => Assert.Contains($"  {c} ", run.Out));
    }

    /// <summary>A terminal opens with 24 lines of 80 letters.</summary>
    [Fact]
    public void The_first_page_fits_a_terminal() =>
        Assert.InRange(Cli.Run("--help").Out.TrimEnd('\n').Split('\n').Length, 15, 24);

    [Theory]
    [MemberData(nameof(Names))]
    [InlineData("--version")]
    public void No_line_is_wider_than_a_terminal(string command) =>
        Assert.All(Cli.Run(command, "--help").Out.Split('\n'), line => Assert.InRange(line.Length, 0, 80));

    [Theory]
    [MemberData(nameof(Names))]
    [InlineData("--help")]
    public void No_sentence_is_longer_than_30_words(string command)
    {
        // A command, an option and an example start a paragraph; a description goes on over lines indented far more.
        var help = string.Join('\n', Cli.Run(command, "--help").Out.Split('\n')
            .Select(line => (line.Length - line.TrimStart().Length is 2 or 4 ? "\n" : "") + line.Trim()));

        Assert.DoesNotContain(Sentences.Of(help), sentence => Sentences.Words(sentence) > 30);
    }

    [Fact]
    public void Every_option_stands_under_a_heading()
    {
        var listed =
            Commands.Sum(c => Cli.Run(c, "--help").Out.Split('\n').Count(l => l.StartsWith("  --", StringComparison.Ordinal)));
        var suggested = Commands.Sum(c => Cli.Run($"[suggest:{c.Length + 11}]", $"buckgen {c} --").Out.Split('\n')
            .Count(l => l.StartsWith("--", StringComparison.Ordinal) && l != "--help"));

        Assert.InRange(listed, 150, int.MaxValue);
        Assert.Equal(suggested, listed);
    }

    /// <summary>The page of settings is made from their declarations.</summary>
    [Fact]
    public void Every_option_of_a_setting_is_offered_with_its_range()
    {
        var rows = File.ReadAllLines(Path.Combine(Repository.Root, "src/docs/guides/settings.md"))
            .Select(l => l.Split('|', StringSplitOptions.TrimEntries))
            .Where(c => c.Length == 8 && c[5].StartsWith("`--", StringComparison.Ordinal)).ToArray();
        // Each page as one line, since descriptions are wrapped.
        var pages = Commands
            .Select(c =>
                string.Join(' ', Cli.Run(c, "--help").Out.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)))
                    .ToArray();

        Assert.InRange(rows.Length, 40, 100);
        Assert.All(rows, r => Assert.Contains(pages, p => p.Contains($" {r[5].Trim('`')} ", StringComparison.Ordinal)
            && (r[4].Any(char.IsDigit) ? p.Contains(r[4], StringComparison.OrdinalIgnoreCase) : true)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_command_explains_itself_by_an_example(string command)
    {
        var run = Cli.Run(command, "--help");

        run.AssertDone();
        Assert.Contains($"buckgen {command}", run.Out.Split("Usage:")[0]);
    }

    [Fact]
    public void Every_option_is_described() =>
        Assert.All(Commands.SelectMany(c => Cli.Run(c, "--help").Out.Split('\n'))
            .Where(l => l.StartsWith("  --", StringComparison.Ordinal)),
            line => Assert.Matches(@"^  --\S+.*\s{2,}\S|^  --.{25,}$", line));

    [Fact]
    public void A_call_without_a_command_gets_a_hint()
    {
        var run = Cli.Run();

        Assert.Equal(2, run.Status);
        Assert.StartsWith("buckgen: ", run.Error);
        Assert.Contains("--help", run.Error);
    }

    [Theory]
    [InlineData("bukc")]
    [InlineData("buck", "--dpeth", "3")]
    [InlineData("make")]
    [InlineData("inspect", "a.svg", "b.svg")]
    public void A_slip_of_the_pen_is_one_line(params string[] args) => Cli.Run(args).AssertRefused("--help");
}
