using System.Text.RegularExpressions;
using BuckGen.Jobs;
using Xunit;

namespace BuckGen.Tests.Conventions;

/// <summary>Comments, messages, settings and guides use the words of an engineer who speaks to a colleague.</summary>
[Trait("Tier", "slow")]
public sealed partial class PlainWordsTests
{
    private const int MaxSentenceLength = 30;

    private static readonly string[] Folders = ["src", "examples"];

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

    private static readonly Regex AnyPhrase = new(string.Join('|', Phrases.Select(p => p.Phrase)),
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.Compiled);

    [Fact]
    public void Nothing_is_worded_as_no_engineer_would_say_it()
    {
        var files = Texts();

        Assert.InRange(files.Length, 600, int.MaxValue);
        AssertNone(files.SelectMany(file => Strange(Name(file), File.ReadAllLines(file))));
    }

    /// <summary>Comments of tests and names of their methods, which read as sentences.</summary>
    [Fact]
    public void Tests_are_worded_as_plainly()
    {
        var tests = Files("tests")
            .Where(f => Path.GetExtension(f) == ".cs" && Path.GetFileName(f) != "PlainWordsTests.cs").ToArray();

        Assert.InRange(tests.Length, 300, int.MaxValue);
        AssertNone(tests.SelectMany(f => Strange(Name(f), [.. File.ReadLines(f).Select(line =>
            MethodName().Match(line) is { Success: true } name ? name.Value.Replace('_', ' ') : Comment().Match(line).Value)])));
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
    public void No_sentence_is_longer_than_30_words()
    {
        var texts = Texts().SelectMany(file => Read(file).Select(t => (Place: $"{Name(file)}, line {t.Line}", t.Text)))
            .Concat(JobTemplate.Text("outline.svg").Split('\n').Index()
                .Select(line => (Place: $"job template, line {line.Index + 1}", Text: line.Item.Split("# ")[^1])))
            .ToArray();

        Assert.InRange(texts.Length, 8000, int.MaxValue);
        AssertNone(texts.SelectMany(t => Long(t.Place, t.Text)));
    }

    [Theory]
    [InlineData("/// <summary>The limit of <see cref=\"A\"/>\n/// and <c>b</c>.</summary>\nint a; // Another.",
        new[] { "1: The limit of Code and Code.", "3: Another." })]
    [InlineData("var a = '\"';\nvar b = $\"{(c ? \"one\" : d)} of {{}} \" + \"three\" + e;",
        new[] { "2: one", "2: Code of }} three" })]
    [InlineData("var a = @\"two \"\"2\"\"\";\nvar b = \"\"\"\n    Raw \"text\".\n    \"\"\";",
        new[] { "1: two \"2\"", "2: Raw \"text\"." })]
    public void Comments_and_texts_are_found_in_code(string code, string[] texts) =>
        Assert.Equal(texts, CodeTexts.Of(code).Select(t => $"{t.Line}: {string.Join(' ', Sentences.Of(t.Text))}"));

    [Fact]
    public void A_long_sentence_is_named_with_its_place_and_length()
    {
        var words = string.Join(' ', Enumerable.Repeat("word", 30));

        Assert.Equal([$"a.cs, line 2: 31 words: Word {words}."], Long("a.cs, line 2", $"Short. Word {words}. Too {words[5..]}."));
    }

    [Theory]
    [InlineData("One. Two\nthree: Four!", new[] { "One.", "Two three:", "Four!" })]
    [InlineData("# Head\nText `a.b. C` goes\non [here](x.md. Y).\n\n```\nCode. Code\n```\n",
        new[] { "# Head", "Text Code goes on [here]." })]
    [InlineData("- one item\n- another\n  of two lines\n\n| cell. Two | other |",
        new[] { "one item", "another of two lines", "cell.", "Two", "other" })]
    public void A_guide_is_taken_apart_into_its_sentences(string guide, string[] sentences) =>
        Assert.Equal(sentences, Sentences.Of(guide));

    /// <summary>Fails with every line in full: the usual assertion cuts long texts.</summary>
    private static void AssertNone(IEnumerable<string> faults)
    {
        var all = faults.ToArray();
        Assert.True(all.Length == 0, string.Join('\n', all));
    }

    private static IEnumerable<string> Long(string place, string text) =>
        from sentence in Sentences.Of(text)
        let words = Sentences.Words(sentence)
        where words > MaxSentenceLength
        select $"{place}: {words} words: {sentence}";

    private static string[] Texts() =>
        [.. Folders.SelectMany(Files)
            .Where(f => Path.GetExtension(f) is ".cs" or ".toml" or ".md" || Path.GetFileName(f) == "summary.schema.json")
            .Order(StringComparer.Ordinal),
            Path.Combine(Repository.Root, "README.md"), Path.Combine(Repository.Root, "DEVELOPERS.md")];

    private static IEnumerable<string> Files(string folder) =>
        Directory.GetFiles(Path.Combine(Repository.Root, folder), "*", SearchOption.AllDirectories)
            .Where(f => !Name(f).Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"));

    private static IEnumerable<string> Strange(string name, string[] lines) =>
        from line in lines.Index()
        where AnyPhrase.IsMatch(line.Item)
        from phrase in Phrases
        let match = Regex.Match(line.Item, phrase.Phrase, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)
        where match.Success
        select $"{name}, line {line.Index + 1}: \"{match.Value}\"; write {phrase.Better}";

    /// <summary>A guide is one text; of a program, what people read of it.</summary>
    private static IEnumerable<(int Line, string Text)> Read(string file)
    {
        var text = File.ReadAllText(file);
        return Path.GetExtension(file) switch
        {
            ".md" => [(1, text)],
            ".cs" => CodeTexts.Of(text),
            _ => CodeTexts.OfData(text),
        };
    }

    private static string Name(string file) => Path.GetRelativePath(Repository.Root, file);

    [GeneratedRegex(@"(?<=^ +public .*)\b[A-Z][A-Za-z0-9]*_\w*(?=\()")]
    private static partial Regex MethodName();

    [GeneratedRegex("//.*")]
    private static partial Regex Comment();
}
