using System.Text;

namespace BuckGen.Cli.Help;

/// <summary>Plain text in lines of at most 80 letters, as wide as every terminal is.</summary>
internal sealed class HelpText
{
    /// <summary>Letters in a line.</summary>
    public const int Width = 80;

    private readonly StringBuilder text = new();

    public void Blank() => text.Append('\n');

    /// <summary>A paragraph, wrapped.</summary>
    public void Paragraph(string words, int indent = 0)
    {
        foreach (var line in Wrapped(words, Width - indent))
        {
            Blanks(indent);
            Line(line);
        }
    }

    /// <summary>A line as it is.</summary>
    public void Line(string line) => text.Append(line).Append('\n');

    /// <summary>A term and what it means, in a column of its own; a longer term gets a line of its own.</summary>
    public void Term(string term, string meaning, int column)
    {
        var lines = Wrapped(meaning, Width - column).ToList();
        var fits = term.Length + 4 <= column;
        text.Append("  ").Append(term);
        for (var i = 0; i < lines.Count; i++)
        {
            if (i > 0 || !fits) text.Append('\n');
            Blanks(i > 0 || !fits ? column : column - 2 - term.Length);
            text.Append(lines[i]);
        }

        text.Append('\n');
    }

    /// <summary>One by one: what fills a text with a letter is vector code, which every run would compile anew.</summary>
    private void Blanks(int count)
    {
        for (var i = 0; i < count; i++) text.Append(' ');
    }

    public override string ToString() => text.ToString();

    private static IEnumerable<string> Wrapped(string words, int width)
    {
        var line = new StringBuilder();
        foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line.ToString();
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        if (line.Length > 0) yield return line.ToString();
    }
}
