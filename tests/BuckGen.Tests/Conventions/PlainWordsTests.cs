using System.Text.RegularExpressions;
using Xunit;

namespace BuckGen.Tests.Conventions;

/// <summary>Comments, messages, settings and guides use the words of an engineer who speaks to a colleague.</summary>
[Trait("Tier", "slow")]
public sealed partial class PlainWordsTests
{
    private const int MaxSentenceLength = 35;

    /// <summary>A phrase that no engineer would say, as a pattern, and what to write instead; our own choice.</summary>
    private static readonly (string Phrase, string Better)[] Phrases =
    [
        (@"\btold\b", "\"reported\", \"listed\", \"shown\" or \"distinguished\""),
        (@"\btells of\b", "\"reports\""),
        (@"\bso many\b", "\"this many\", \"a number of\" or \"too many\""),
        (@"\bnobody\b", "\"no one\", or the passive: \"is not given\""),
        (@"\bsaid\b", "\"given\", \"written\" or \"reported\""),
        (@"\bh(eld|old|olds|olding) (it |them |itself )?against\b", "\"compare with\" or \"check against\""),
        (@"\bwork(s|ed|ing)? out\b", "\"compute\", \"calculate\" or \"find\""),
        (@"\bby turns\b", "\"iterate\" or \"alternate\""),
        (@"\b(come|comes|came) to (its|an|the) end\b", "\"converge\" or \"finish\""),
        (@"\bcome to (an )?answer\b", "\"decide\""),
        (@"\breckon", "\"compute\" or \"count\""),
        (@"\bunheard\b", "\"ignored\" or \"discarded\""),
        (@"\b(aloud|unasked)\b", "leave it out"),
        (@"\bin whichever\b", "\"in either\" or \"in any\""),
        (@"\b(could|can) be had\b", "\"is available\""),
        (@"\bwent to pieces\b", "\"failed\""),
        (@"\bspeaks? (against|for)\b", "\"prevents\", or \"points to\""),
        (@"\b(do|go|goes) by the\b", "\"use the\""),
        (@"\b(is|are) the most\b", "\"the limit is\""),
        (@"\bdoes nothing (beside|without)\b", "\"has no effect with\" or \"without\""),
        (@"\bin the words of\b", "name the format or the plug-in"),
        (@"\bpassed over\b", "\"skipped\""),
        (@"\b(asked|questions?) of (the|a|every) design\b", "\"checks of the design\""),
        (@"\b(some|any)body\b", "\"a user\" or \"anyone\""),
        (@"\bmend(s|ed|ing)?\b", "\"repair\""),
        (@"\blooked at\b", "\"checked\" or \"read\""),
        (@"\bon trust\b", "\"assumed\""),
        (@"\b(hitherto|thereof|whereof|lest|behold|naught)\b", "plain words"),
    ];

    [Fact]
    public void Nothing_is_worded_as_no_engineer_would_say_it()
    {
        var files = Texts();

        Assert.InRange(files.Length, 600, int.MaxValue);
        AssertNone(files.SelectMany(file => Strange(Name(file), File.ReadAllLines(file))));
    }

    [Fact]
    public void Every_phrase_is_found_with_its_file_its_line_and_the_better_word()
    {
        var found = Strange("a.cs", ["// The limit.", "// Is told of every step, and held against the limit."]).ToArray();

        Assert.Equal(
            ["a.cs, line 2: \"told\"; write \"reported\", \"listed\", \"shown\" or \"distinguished\"",
                "a.cs, line 2: \"held against\"; write \"compare with\" or \"check against\""], found);
    }

    [Fact]
    public void No_sentence_of_the_guides_is_longer_than_35_words()
    {
        string[] guides =
            [Path.Combine(Repository.Root, "README.md"),
                .. Directory.GetFiles(Path.Combine(Repository.Root, "src/docs"), "*.md", SearchOption.AllDirectories)];
        var sentences =
            guides.SelectMany(g => Sentences(File.ReadAllText(g)).Select(s => (Guide: Name(g), Text: s, Words: Word().Count(s))))
                .ToArray();

        Assert.InRange(sentences.Count(s => s.Words > 3), 150, int.MaxValue);
        AssertNone(sentences.Where(s => s.Words > MaxSentenceLength).Select(s => $"{s.Guide}: {s.Words} words: {s.Text}"));
    }

    [Theory]
    [InlineData("One. Two\nthree: Four!", new[] { "One.", "Two three:", "Four!" })]
    [InlineData("# Head\nText `a.b. C` goes\non [here](x.md. Y).\n\n```\nCode. Code\n```\n",
        new[] { "# Head", "Text code goes on [here]." })]
    [InlineData("- one item\n- another\n  of two lines\n\n| cell. Two | other |",
        new[] { "one item", "another of two lines", "cell.", "Two", "other" })]
    public void A_guide_is_taken_apart_into_its_sentences(string guide, string[] sentences) =>
        Assert.Equal(sentences, Sentences(guide));

    /// <summary>Fails with every line in full: the usual assertion cuts long texts.</summary>
    private static void AssertNone(IEnumerable<string> faults)
    {
        var all = faults.ToArray();
        Assert.True(all.Length == 0, string.Join('\n', all));
    }

    private static string[] Texts()
    {
        var source = Directory.GetFiles(Path.Combine(Repository.Root, "src"), "*", SearchOption.AllDirectories)
            .Where(f => Path.GetExtension(f) is ".cs" or ".toml" or ".md" || Path.GetFileName(f) == "summary.schema.json")
            .Where(f => !Name(f).Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"));
        return [.. source.Order(StringComparer.Ordinal), Path.Combine(Repository.Root, "README.md"),
            Path.Combine(Repository.Root, "DEVELOPERS.md")];
    }

    private static IEnumerable<string> Strange(string name, string[] lines) =>
        from line in lines.Index()
        from phrase in Phrases
        let match = Regex.Match(line.Item, phrase.Phrase, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)
        where match.Success
        select $"{name}, line {line.Index + 1}: \"{match.Value}\"; write {phrase.Better}";

    /// <summary>
    /// Headings, items, table cells and the sentences of paragraphs; code blocks left out, code in a line taken as one word.
    /// </summary>
    private static IEnumerable<string> Sentences(string guide)
    {
        var plain = Target().Replace(Code().Replace(Block().Replace(guide, "\n"), "code"), "]");
        return Break().Split(Item().Replace(plain, "\n\n")).SelectMany(b => End().Split(Space().Replace(b, " ").Trim()))
            .Where(s => s.Length > 0);
    }

    private static string Name(string file) => Path.GetRelativePath(Repository.Root, file);

    [GeneratedRegex("^```.*?^```|^    .*?$", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Block();

    [GeneratedRegex("`[^`\n]*`")]
    private static partial Regex Code();

    [GeneratedRegex(@"\]\([^)\n]*\)")]
    private static partial Regex Target();

    [GeneratedRegex("^- ", RegexOptions.Multiline)]
    private static partial Regex Item();

    [GeneratedRegex(@"\n\s*\n|\||(?<=^#[^\n]*)\n", RegexOptions.Multiline)]
    private static partial Regex Break();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();

    [GeneratedRegex(@"(?<=[.!?:]\**)\s+(?=[A-Z0-9*`\[(])")]
    private static partial Regex End();

    [GeneratedRegex(@"[\p{L}\d][\p{L}\d'./-]*")]
    private static partial Regex Word();
}
