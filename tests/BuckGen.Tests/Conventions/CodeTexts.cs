using System.Text;
using System.Text.RegularExpressions;

namespace BuckGen.Tests.Conventions;

/// <summary>Finds the comments and string literals of C# code, each with its line. Code in them becomes one word.</summary>
internal sealed partial class CodeTexts
{
    private readonly string _code;
    private readonly List<(int Line, string Text)> _texts = [];
    private int _at;

    private CodeTexts(string code)
    {
        _code = code;
        while (_at < _code.Length) Step();
    }

    public static IEnumerable<(int Line, string Text)> Of(string code) => new CodeTexts(code)._texts;

    /// <summary>The quoted texts and the comments of TOML or JSON.</summary>
    public static IEnumerable<(int Line, string Text)> OfData(string data) =>
        DataText().Matches(data).Select(m => (data.AsSpan(0, m.Index).Count('\n') + 1, Hashes().Replace(m.Value, "").Trim('"')));

    private void Step()
    {
        if (Comment().Match(_code, _at) is { Success: true } comment) Add(comment, Plain(comment.Value));
        else if (CharLiteral().Match(_code, _at) is { Success: true } letter) _at += letter.Length;
        else if (Opening().IsMatch(_code, _at)) AddLiteral();
        else _at++;
    }

    private void Add(Match match, string text)
    {
        _texts.Add((Line(_at), text));
        _at += match.Length;
    }

    /// <summary>Literals that are added to each other are one text.</summary>
    private void AddLiteral()
    {
        var line = Line(_at);
        var text = new StringBuilder(Literal());
        while (Plus().Match(_code, _at) is { Success: true } plus)
        {
            _at += plus.Length;
            text.Append(Literal());
        }
        _texts.Add((line, text.ToString()));
    }

    private string Literal()
    {
        var opening = Opening().Match(_code, _at);
        var (dollars, quotes) = (opening.Groups[1].Value.Count(c => c == '$'), opening.Groups[2].Value);
        var (isVerbatim, isRaw) = (opening.Groups[1].Value.Contains('@'), quotes.Length > 2);
        _at += opening.Length;
        // An empty literal is two quotes.
        if (quotes.Length == 2) return "";
        var text = new StringBuilder();
        while (_at < _code.Length)
        {
            if (string.CompareOrdinal(_code, _at, quotes, 0, quotes.Length) == 0 && !(isVerbatim && Next() == '"'))
            {
                _at += quotes.Length;
                break;
            }
            var braces = 0;
            while (dollars > 0 && _at + braces < _code.Length && _code[_at + braces] == '{') braces++;
            if (braces > 0 && (isRaw ? braces >= dollars : braces % 2 == 1))
            {
                _at += braces;
                Hole();
                if (isRaw) _at += dollars - 1;
                text.Append("Code");
            }
            else if (braces > 0) _at += braces;
            else if (!isRaw && _code[_at] == (isVerbatim ? '"' : '\\'))
            {
                text.Append(Next() is 'n' && !isVerbatim ? '\n' : Next());
                _at += 2;
            }
            else text.Append(_code[_at++]);
        }
        return isRaw ? Outdented(text.ToString()) : text.ToString();

        char Next() => _at + 1 < _code.Length ? _code[_at + 1] : '\0';
    }

    /// <summary>Skips to behind the brace that closes a hole; literals in it are texts of their own.</summary>
    private void Hole()
    {
        for (var depth = 1; depth > 0 && _at < _code.Length;)
        {
            if (_code[_at] == '{') depth++;
            if (_code[_at] == '}') depth--;
            if (_code[_at] is '{' or '}') _at++;
            else Step();
        }
    }

    /// <summary>A raw text without the indentation of its closing quotes.</summary>
    private static string Outdented(string text) => text.Replace(text[(text.LastIndexOf('\n') + 1)..] is { Length: > 0 } end
        && string.IsNullOrWhiteSpace(end) ? $"\n{end}" : "\n", "\n", StringComparison.Ordinal);

    private int Line(int at) => _code.AsSpan(0, at).Count('\n') + 1;

    /// <summary>A comment without slashes and tags.</summary>
    private static string Plain(string comment) =>
        Tag().Replace(CodeTag().Replace(Slashes().Replace(comment, ""), "Code"), "\n\n");

    /// <summary>A comment with those that stand alone on the lines after it.</summary>
    [GeneratedRegex(@"\G//[^\n]*(\n[ \t]*//[^\n]*)*")]
    private static partial Regex Comment();

    [GeneratedRegex(@"\G'(\\[^\n]|[^'\\\n])[^'\n]*'")]
    private static partial Regex CharLiteral();

    [GeneratedRegex(@"\G([$@]*)(""{3,}|""""(?!"")|"")")]
    private static partial Regex Opening();

    [GeneratedRegex(@"\G\s*\+\s*(?=[$@]*"")")]
    private static partial Regex Plus();

    [GeneratedRegex(@"^[ \t]*///? ?|^//", RegexOptions.Multiline)]
    private static partial Regex Slashes();

    [GeneratedRegex(@"<code>.*?</code>|<c>.*?</c>|<(see|(type)?paramref)[^>]*/>|<see[^>]*>.*?</see>", RegexOptions.Singleline)]
    private static partial Regex CodeTag();

    [GeneratedRegex("^[ \t]+", RegexOptions.Multiline)]
    private static partial Regex Indentation();

    [GeneratedRegex("<[^>]+>")]
    private static partial Regex Tag();

    [GeneratedRegex(@"""([^""\\\n]|\\.)*""|^#[^\n]*(\n#[^\n]*)*|#[^\n]*", RegexOptions.Multiline)]
    private static partial Regex DataText();

    [GeneratedRegex("^#+ ?", RegexOptions.Multiline)]
    private static partial Regex Hashes();
}
