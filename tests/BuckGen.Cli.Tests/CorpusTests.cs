using System.Text.Json;
using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>
/// Every outline file of the corpus through the whole program: it answers or refuses in one line, and never stumbles.
/// </summary>
public sealed class CorpusTests : Workshop
{
    private static readonly string Corpus = Path.Combine(Repository.Root, "tests", "corpus");

    public static TheoryData<string> Names =>
        [.. JsonDocument.Parse(File.ReadAllText(Path.Combine(Corpus, "manifest.json"))).RootElement
        .GetProperty("files").EnumerateArray().Select(f => f.GetProperty("file").GetString()!)];

    [Fact]
    public void The_corpus_is_there() => Assert.InRange(Names.Count, 150, int.MaxValue);

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_file_is_answered_or_refused_in_one_line(string name)
    {
        var run = Cli.Run("inspect", Path.Combine(Corpus, name), "--json");

        if (run.Status == 2) run.AssertRefused(Path.GetFileName(name));
        else
        {
            run.AssertDone();
            Assert.True(run.Json.GetProperty("loops").GetInt32() > 0);
            Assert.True(run.Json.GetProperty("area").GetDouble() > 0);
        }
    }
}
