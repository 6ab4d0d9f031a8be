using System.Text.Json;
using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>What a run of the program printed and how it ended.</summary>
/// <param name="Status">Exit status.</param>
/// <param name="Out">Standard output.</param>
/// <param name="Error">Standard error.</param>
internal sealed record Cli(int Status, string Out, string Error)
{
    public static Cli Run(params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var status = CommandLine.Run(args, new(output, error));
        return new(status, output.ToString(), error.ToString());
    }

    /// <summary>The JSON on standard output.</summary>
    public JsonElement Json => JsonDocument.Parse(Out).RootElement;

    /// <summary>Refused: status 2, nothing but one line that names the thing, no trace of the program's insides.</summary>
    public void AssertRefused(params string[] says)
    {
        AssertMistakes(says);
        Assert.Equal(1, Error.Count(c => c == '\n'));
    }

    /// <summary>Refused: status 2, nothing but a line for every mistake, no trace of the program's insides.</summary>
    public void AssertMistakes(params string[] says)
    {
        Assert.Equal(2, Status);
        Assert.Equal("", Out);
        Assert.EndsWith("\n", Error);
        Assert.All(Error.TrimEnd('\n').Split('\n'), line => Assert.StartsWith("buckgen: ", line));
        Assert.DoesNotContain("Exception", Error);
        Assert.DoesNotContain("   at ", Error);
        Assert.All(says, s => Assert.Contains(s, Error));
    }

    public void AssertDone()
    {
        Assert.Equal("", Error);
        Assert.Equal(0, Status);
    }
}
