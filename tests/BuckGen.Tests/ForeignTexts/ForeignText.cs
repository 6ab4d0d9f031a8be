using Xunit;

namespace BuckGen.Tests.ForeignTexts;

/// <summary>Text that a drawing, a job, a catalog or a file name may hold, and how it must be seen.</summary>
/// <param name="Name">What is special about it.</param>
/// <param name="Text">The text.</param>
/// <param name="Shown">What is to be seen of it, written by hand.</param>
public sealed record ForeignText(string Name, string Text, string Shown)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<ForeignText> All { get; } =
    [
        new("plain", "Boathouse", "Boathouse"),
        new("accents and umlauts", "Bootshäuschen é e\u0301", "Bootshäuschen é e\u0301"),
        new("Chinese", "船屋", "船屋"),
        new("Arabic", "مرفأ", "مرفأ"),
        new("emoji", "🚤", "🚤"),
        new("escape, clear screen", "\e[2J\e[31mred", @"\u001B[2J\u001B[31mred"),
        new("escape, window title", "\e]0;owned\a", @"\u001B]0;owned\u0007"),
        new("escape, link", "\e]8;;http://x\e\\y", @"\u001B]8;;http://x\u001B\y"),
        new("C1 control sequence", "\u009B31mred", @"\u009B31mred"),
        new("next line", "one\u0085two", @"one\u0085two"),
        new("backspace", "abc\b\b\bxyz", @"abc\u0008\u0008\u0008xyz"),
        new("delete", "a\u007Fb", @"a\u007Fb"),
        new("nothing", "a\0b", @"a\u0000b"),
        new("carriage return", "good\rbad", @"good\rbad"),
        new("line break", "one\ntwo", @"one\ntwo"),
        new("Windows line break", "one\r\ntwo", @"one\r\ntwo"),
        new("tab", "\ta\tb", @"\ta\tb"),
        new("line separator", "one\u2028two", @"one\u2028two"),
        new("paragraph separator", "one\u2029two", @"one\u2029two"),
        new("right to left", "part\u202Elgvs", @"part\u202Elgvs"),
        new("embeddings", "\u202Aa\u202Bb\u202Cc\u202Dd", @"\u202Aa\u202Bb\u202Cc\u202Dd"),
        new("isolates", "\u2066a\u2067b\u2068c\u2069d", @"\u2066a\u2067b\u2068c\u2069d"),
        new("direction marks", "a\u200Eb\u200Fc\u061Cd", @"a\u200Eb\u200Fc\u061Cd"),
        new("zero width", "a\u200Bb\u200Cc\u200Dd\u2060e\uFEFFf", @"a\u200Bb\u200Cc\u200Dd\u2060e\uFEFFf"),
        new("soft hyphen", "a\u00ADb", @"a\u00ADb"),
        new("fillers", "a\u115Fb\u1160c\u3164d\uFFA0e\u034Ff", @"a\u115Fb\u1160c\u3164d\uFFA0e\u034Ff"),
        new("tags", "a\U000E0041b", @"a\U000E0041b"),
        new("first half of a pair", "a\uD83Db", @"a\uD83Db"),
        new("second half of a pair", "a\uDEA4b", @"a\uDEA4b"),
        new("halves in the wrong order", "\uDEA4\uD83D", @"\uDEA4\uD83D"),
        new("no characters", "a\uFFFEb\uFFFFc\uFDD0d", @"a\uFFFEb\uFFFFc\uFDD0d"),
        new("console markup", "[red]x[/]", "[red]x[/]"),
        new("console markup, broken", "mdf]", "mdf]"),
        new("console markup, closing", "[/]", "[/]"),
        new("console markup, link", "[link=http://x]y[/]", "[link=http://x]y[/]"),
        new("script", "<script>alert(1)</script>", "<script>alert(1)</script>"),
        new("end of a script", "</script><b>x", "</script><b>x"),
        new("end of an attribute", "\" onload=\"x", "\" onload=\"x"),
        new("end of a comment", "--><b>x", "--><b>x"),
        new("entity", "&lt;b&gt; &#27; &amp", "&lt;b&gt; &#27; &amp"),
        new("CDATA", "]]><x/>", "]]><x/>"),
        new("quotes", "\"a\" 'b' `c`", "\"a\" 'b' `c`"),
        new("comma and quotes", "a,b\"c", "a,b\"c"),
        new("formula", "=1+1", "=1+1"),
        new("formula, plus", "+1", "+1"),
        new("formula, minus", "-1+1", "-1+1"),
        new("formula, at", "@SUM(A1)", "@SUM(A1)"),
        new("formula, full width", "＝1＋1", "＝1＋1"),
        new("formula, command", "=cmd|' /C calc'!A0", "=cmd|' /C calc'!A0"),
        new("end of a comment of RS-274", "a)G0 X0 (b", "a)G0 X0 (b"),
        new("program start", "%", "%"),
        new("end of line comment", "a; M3", "a; M3"),
        new("end of a PDF string", "a) Tj ET endstream endobj (b", "a) Tj ET endstream endobj (b"),
        new("backslashes", "C:\\new\\u202E", "C:\\new\\u202E"),
        new("TOML", "\"\"\"\n[x]\ny = 1", "\"\"\"\\n[x]\\ny = 1"),
        new("path", "../../etc/passwd", "../../etc/passwd"),
        new("device", "CON", "CON"),
        new("format", "%s%n {0} {{", "%s%n {0} {{"),
        new("nothing but a space", " ", " "),
    ];

    /// <summary>Their names, for theories.</summary>
    public static TheoryData<string> Names => [.. All.Select(t => t.Name)];

    public static ForeignText Find(string name) => All.Single(t => t.Name == name);

    /// <summary>
    /// The first character of a text that may never be printed or shown; null for none. Own list, from the Unicode code
    /// charts.
    /// </summary>
    /// <param name="text">What was printed.</param>
    /// <param name="allowed">What the channel itself uses, such as line breaks.</param>
    public static string? Hidden(string text, string allowed = "")
    {
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (allowed.Contains(c, StringComparison.Ordinal)) continue;
            var pair = char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]);
            if (pair && char.ConvertToUtf32(c, text[i + 1]) is >= 0xE0000 and <= 0xE007F) return $"a tag at {i}";
            if (pair) i++;
            else if (c is < ' ' or (>= '\x7F' and <= '\x9F') or '\u00AD' or '\u034F' or '\u061C' or (>= '\u200B' and <= '\u200F')
                or (>= '\u2028' and <= '\u202E')
                     or (>= '\u2060' and <= '\u206F') or '\uFEFF' or '\uFFFE' or '\uFFFF' or (>= '\uD800' and <= '\uDFFF'))
                return $"U+{(int)c:X4} at {i}";
        }

        return null;
    }
}
