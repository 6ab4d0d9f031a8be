using System.Globalization;
using System.Text.RegularExpressions;

namespace BuckGen.Tests.Cutting.Drilling.Rs274;

/// <summary>
/// One line of RS274/NGC, read strictly after section 3.3 of NISTIR 6556: plain numbers only, each letter but G and M once, at
/// most one word of a modal group.
/// </summary>
internal sealed partial class Rs274Line
{
    // Table 4 of the report, less the words that no drilling program needs.
    private static readonly string[][] Groups =
    [
        ["G0", "G1", "G80", "G81", "G83"], ["G17"], ["G90"], ["G94"], ["G21"], ["G98", "G99"],
        ["M2", "M30"], ["M3", "M4", "M5"],
    ];

    private readonly List<string> codes = [];
    private readonly Dictionary<char, double> numbers = [];

    /// <summary>Reads a line.</summary>
    /// <exception cref="Rs274Exception">The line breaks a rule.</exception>
    public Rs274Line(string text)
    {
        if (text.Length > 255) throw new Rs274Exception("longer than 256 characters with its end");
        if (text.Any(c => c is not (>= ' ' and <= '~'))) throw new Rs274Exception("a character outside ASCII");
        var rest = Comment().Replace(text, "");
        if (rest.Contains('(') || rest.Contains(')')) throw new Rs274Exception("a comment is not closed, or holds another");
        rest = rest.Replace(" ", "", StringComparison.Ordinal);
        var words = Word().Matches(rest);
        if (words.Sum(w => w.Length) != rest.Length) throw new Rs274Exception($"\"{rest}\" is not made of words");
        foreach (Match word in words) Add(char.ToUpperInvariant(word.Value[0]), word.Groups[1].Value);
    }

    /// <summary>The word that says how to move; null when the line has none.</summary>
    public string? Motion => codes.Find(Groups[0].Contains);

    public bool HasAxes => Has('X') || Has('Y') || Has('Z');

    public bool Has(string code) => codes.Contains(code);

    public bool Has(char letter) => numbers.ContainsKey(letter);

    public double? this[char letter] => numbers.TryGetValue(letter, out var value) ? value : null;

    private void Add(char letter, string number)
    {
        var value = double.Parse(number, CultureInfo.InvariantCulture);
        if (letter is 'G' or 'M')
        {
            var code = string.Create(CultureInfo.InvariantCulture, $"{letter}{value}");
            var group = Array.Find(Groups, g => g.Contains(code)) ?? throw new Rs274Exception($"{code} is not a word we use");
            if (codes.Exists(group.Contains)) throw new Rs274Exception($"{code} is the second word of its modal group");
            codes.Add(code);
        }
        else if (!"FSXYZRQ".Contains(letter) || !numbers.TryAdd(letter, value))
        {
            throw new Rs274Exception($"{letter} is unknown or stands twice");
        }
    }

    [GeneratedRegex(@"\([^()]*\)")]
    private static partial Regex Comment();

    [GeneratedRegex(@"[A-Za-z]([+-]?(?:\d+\.?\d*|\.\d+))")]
    private static partial Regex Word();
}
