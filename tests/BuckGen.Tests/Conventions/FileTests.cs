using System.Text.RegularExpressions;
using Xunit;

namespace BuckGen.Tests.Conventions;

/// <summary>What every source file keeps to.</summary>
public class FileTests
{
    private static readonly string[] Sources = [.. Code("src")];

    [Fact]
    public void No_source_file_holds_more_than_one_idea_can_fill()
    {
        Assert.InRange(Sources.Length, 100, int.MaxValue);
        // Past about 300 lines a second idea has moved in; our own rule.
        Assert.Empty(Sources.Where(f => File.ReadAllLines(f).Length > 330).Select(Name));
    }

    /// <summary>Help is written in raw texts, a paragraph a line; all else is broken at 130 columns.</summary>
    [Fact]
    public void No_line_is_longer_than_130_columns() =>
        Assert.Empty(Sources.Concat(Code("tests")).Concat(Code("examples")).SelectMany(LongLines));

    [Fact]
    public void A_file_lies_where_its_namespace_says() =>
        Assert.Empty(Sources.Where(f => Namespace(f) is { } n && n != Expected(f))
            .Select(f => $"{Name(f)} is in {Namespace(f)}"));

    [Fact]
    public void No_code_reads_the_clock_or_rolls_dice() =>
        Assert.Empty(
            Sources.Where(f =>
                Regex.IsMatch(File.ReadAllText(f), @"DateTime(Offset)?\.(Utc)?Now|Guid\.NewGuid|new Random\b|Random\.Shared"))
                    .Select(Name));

    private static IEnumerable<string> Code(string folder) =>
        Directory.GetFiles(Path.Combine(Repository.Root, folder), "*.cs", SearchOption.AllDirectories)
            .Where(f => !Name(f).Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"));

    private static IEnumerable<string> LongLines(string file)
    {
        var isQuoted = false;
        foreach (var (line, number) in File.ReadAllLines(file).Select((l, i) => (l, i + 1)))
        {
            if (line.Split("\"\"\"").Length % 2 == 0) isQuoted = !isQuoted;
            if (line.Length > 130 && !isQuoted) yield return $"{Name(file)}, line {number}";
        }
    }

    private static string Name(string file) => Path.GetRelativePath(Repository.Root, file);

    private static string? Namespace(string file) =>
        Regex.Match(File.ReadAllText(file), @"^namespace ([\w.]+);", RegexOptions.Multiline) is { Success: true } m
            ? m.Groups[1].Value : null;

    /// <summary>The project's name and the folders.</summary>
    private static string Expected(string file) => string.Join('.', Name(file).Split(Path.DirectorySeparatorChar)[1..^1]);
}
