using System.Globalization;
using System.Net;
using System.Text;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports.Page;

/// <summary>Text of a page in the making. What comes from a file or a person goes through <see cref="Escaped"/>.</summary>
internal sealed class Html
{
    private readonly StringBuilder text = new();

    /// <summary>Markup as it stands.</summary>
    public Html Raw(string markup)
    {
        text.Append(markup);
        return this;
    }

    /// <summary>Markup with values in it, each of them escaped; numbers in invariant form.</summary>
    public Html Line(FormattableString markup)
    {
        object?[] escaped = [.. markup.GetArguments().Select(a => a is IFormattable ? a : (object?)Escaped(a?.ToString() ?? ""))];
        text.Append(string.Format(CultureInfo.InvariantCulture, markup.Format, escaped)).Append('\n');
        return this;
    }

    /// <summary>Text that can stand between tags and in attributes.</summary>
    public static string Escaped(string text) => WebUtility.HtmlEncode(VisibleText.Escape(text));

    /// <summary>Several lines of text, for where line breaks count.</summary>
    public static string EscapedLines(string text) => WebUtility.HtmlEncode(VisibleText.Lines(text));

    public override string ToString() => text.ToString();
}
