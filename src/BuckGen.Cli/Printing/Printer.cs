using BuckGen.Quantities;
using Spectre.Console;

namespace BuckGen.Cli.Printing;

/// <summary>
/// Prints lines and tables. All text is taken as it is: nothing in it is markup, and characters that would steer the terminal are
/// shown by their codes. Nothing else prints to the console.
/// </summary>
internal sealed class Printer(IAnsiConsole console)
{
    /// <summary>The most characters of a message; a longer one is cut in its middle.</summary>
    public const int MaxMessageLength = 300;

    /// <summary>A message on a line of its own, wrapped to the console's width.</summary>
    public void Line(string text = "") => console.WriteLine(VisibleText.Escape(text, MaxMessageLength));

    /// <summary>A line of words, each in its own colour.</summary>
    public void Line(params ReadOnlySpan<Word> words)
    {
        var line = new Paragraph();
        foreach (var word in words) line.Append(VisibleText.Escape(word.Text, MaxMessageLength), new Style(word.Colour));
        console.Write(line);
        console.WriteLine();
    }

    /// <summary>A table; each row has a cell for each column.</summary>
    public void Table(IReadOnlyList<Column> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new Table().Border(TableBorder.Simple);
        foreach (var column in columns) table.AddColumn(Spectre(column));
        Write(table, rows);
    }

    /// <summary>A list of two columns, the left one of numbers.</summary>
    public void List(IEnumerable<(string Number, string Text)> items)
    {
        var table = new Table().NoBorder().HideHeaders()
            .AddColumns(Spectre(new("", AlignRight: true, OneLine: true)), Spectre(new("")));
        Write(table, items.Select(i => (string[])[i.Number, i.Text]));
    }

    private void Write(Table table, IEnumerable<IReadOnlyList<string>> rows)
    {
        foreach (var row in rows) table.AddRow(row.Select(cell => new Text(VisibleText.Escape(cell))));
        console.Write(table);
    }

    private static TableColumn Spectre(Column column)
    {
        var made = new TableColumn(new Text(VisibleText.Escape(column.Title)));
        if (column.AlignRight) made.RightAligned();
        return column.OneLine ? made.NoWrap() : made;
    }
}

/// <summary>Words of a line.</summary>
/// <param name="Text">The words.</param>
/// <param name="Colour">Their colour; null for the usual one.</param>
internal sealed record Word(string Text, Color? Colour = null);

/// <summary>A column of a table.</summary>
/// <param name="Title">The text above it.</param>
/// <param name="AlignRight">True for numbers.</param>
/// <param name="OneLine">True to keep its cells from wrapping.</param>
internal sealed record Column(string Title, bool AlignRight = false, bool OneLine = false);
