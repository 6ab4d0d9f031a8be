using System.Buffers;
using System.Globalization;

namespace BuckGen.Dxf.Reading.Groups;

/// <summary>Numbers as DXF has them: the whole text must be one, with a point for decimals, whatever the culture.</summary>
internal static class NumberText
{
    private const NumberStyles Real = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    // Keeps out words such as NaN that the parser would take for numbers.
    private static readonly SearchValues<char> RealCharacters = SearchValues.Create("0123456789+-.eEdD");

    public static bool TryInteger(string text, out int value) =>
        int.TryParse(text.AsSpan().Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value);

    public static bool TryNumber(string text, out double value) => TryAny(text, out value) && double.IsFinite(value);

    public static string WhyNotInteger(string text) =>
        text.AsSpan().Trim().IsEmpty ? "a whole number is missing" : "that is not a whole number in the range of 32 bits";

    public static string WhyNotNumber(string text)
    {
        if (text.AsSpan().Trim().IsEmpty)
            return "a number is missing";
        if (TryAny(text, out _))
            return "that is beyond the range of numbers";
        return text.Contains(',', StringComparison.Ordinal)
            ? "that is not a number; decimals need a point, not a comma, so export the file with a point"
            : "that is not a number";
    }

    private static bool TryAny(string text, out double value)
    {
        var trimmed = text.AsSpan().Trim();
        value = 0;
        if (trimmed.ContainsAnyExcept(RealCharacters))
            return false;
        // Old programs mark the exponent with D.
        return double.TryParse(
            trimmed.ContainsAny('d', 'D') ? trimmed.ToString().Replace('D', 'E').Replace('d', 'e') : trimmed,
            Real, CultureInfo.InvariantCulture, out value);
    }
}
