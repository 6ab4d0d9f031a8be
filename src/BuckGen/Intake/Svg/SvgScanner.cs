using System.Globalization;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>Reads numbers and letters of an attribute from left to right, by the SVG grammar.</summary>
/// <param name="text">The attribute.</param>
internal ref struct SvgScanner(ReadOnlySpan<char> text)
{
    // Beyond this no drawing makes sense, and the libraries' single-precision numbers still hold it.
    private const double MaxNumber = 1e9;
    private readonly ReadOnlySpan<char> text = text;

    /// <summary>Where the next character is read, 0 for the first.</summary>
    public int Position { get; private set; }

    /// <summary>The next character, or NUL at the end.</summary>
    public readonly char Next => Position < text.Length ? text[Position] : '\0';

    /// <summary>True when nothing is left.</summary>
    public readonly bool AtEnd => Position >= text.Length;

    /// <summary>True when a number may start here.</summary>
    public readonly bool AtNumber => char.IsAsciiDigit(Next) || Next is '+' or '-' or '.';

    /// <summary>The next few characters, for messages.</summary>
    public readonly string Rest =>
        AtEnd ? "the end" : $"'{Excerpt.Shorten(text[Position..Math.Min(text.Length, Position + 12)].ToString())}'";

    /// <summary>Steps over blanks.</summary>
    public void SkipBlanks()
    {
        while (Next is ' ' or '\t' or '\r' or '\n' or '\f') Position++;
    }

    /// <summary>Steps over blanks with at most one comma among them; true when there was a comma.</summary>
    public bool SkipSeparator()
    {
        SkipBlanks();
        if (Next != ',') return false;
        Position++;
        SkipBlanks();
        return true;
    }

    /// <summary>Takes one character.</summary>
    public char Take() => text[Position++];

    /// <summary>Takes letters and percent signs, such as a unit or a name.</summary>
    public string TakeWord()
    {
        var start = Position;
        while (char.IsAsciiLetter(Next) || Next == '%') Position++;
        return text[start..Position].ToString();
    }

    /// <summary>Takes a number; false, without a step, when there is none or it is beyond ±1e9.</summary>
    public bool TryNumber(out double value)
    {
        var end = Position;
        if (end < text.Length && text[end] is '+' or '-') end++;
        var digits = Digits(ref end);
        if (end < text.Length && text[end] == '.')
        {
            end++;
            digits += Digits(ref end);
        }

        value = 0;
        if (digits == 0) return false;
        // An "e" without digits behind it starts a unit (em, ex).
        var exponent = end + 1;
        if (end < text.Length && text[end] is 'e' or 'E')
        {
            if (exponent < text.Length && text[exponent] is '+' or '-') exponent++;
            if (Digits(ref exponent) > 0) end = exponent;
        }

        if (!double.TryParse(text[Position..end], NumberStyles.Float, CultureInfo.InvariantCulture, out value)) return false;
        if (!(Math.Abs(value) <= MaxNumber)) return false;
        Position = end;
        return true;
    }

    /// <summary>Takes a flag of an arc: the single character 0 or 1, which may be glued to what follows.</summary>
    public bool TryFlag(out double value)
    {
        value = Next - '0';
        if (Next is not ('0' or '1')) return false;
        Position++;
        return true;
    }

    private readonly int Digits(ref int at)
    {
        var start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
        return at - start;
    }
}
