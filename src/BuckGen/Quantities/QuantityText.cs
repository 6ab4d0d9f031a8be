using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace BuckGen.Quantities;

/// <summary>Reads lengths, angles and shares as people write them: "36mm", "1 1/2 in", "3/4\"", "5deg", "0.5%".</summary>
public static class QuantityText
{
    /// <summary>Reads a length.</summary>
    /// <param name="text">A number or fraction with mm, cm, m, in, " or ft; a bare number is mm.</param>
    /// <param name="millimetres">The length, mm.</param>
    /// <returns>False when the text is no length.</returns>
    public static bool TryLength(string? text, out double millimetres)
    {
        millimetres = 0;
        if (!TrySplit(text, out var number, out var unit)) return false;
        unit = unit.Length == 0 ? "mm" : unit.ToLowerInvariant();
        if (unit is "inch" or "inches") unit = "in";
        if (!KnownUnits.TryParse<LengthUnit>(unit, out var found)) return false;
        // A unit's size is rounded to twelve digits, so that an inch is 25.4 mm and not a hair off.
        millimetres = number * Math.Round(Length.From(1, found).Millimeters, 12);
        return double.IsFinite(millimetres);
    }

    /// <summary>Reads an angle.</summary>
    /// <param name="text">A number with deg, ° or rad; a bare number is degrees.</param>
    /// <param name="degrees">The angle, degrees.</param>
    /// <returns>False when the text is no angle.</returns>
    public static bool TryAngle(string? text, out double degrees)
    {
        degrees = 0;
        if (!TrySplit(text, out var number, out var unit)) return false;
        unit = unit.ToLowerInvariant() is "" or "degree" or "degrees" ? "deg" : unit.ToLowerInvariant();
        if (!KnownUnits.TryParse<AngleUnit>(unit, out var found)) return false;
        degrees = number * Math.Round(Angle.From(1, found).Degrees, 12);
        return double.IsFinite(degrees);
    }

    /// <summary>Reads a pressure.</summary>
    /// <param name="text">A number with kPa, mbar, bar, inHg, mmHg or psi; a bare number is kPa.</param>
    /// <param name="pascals">The pressure, Pa.</param>
    /// <returns>False when the text is no pressure.</returns>
    public static bool TryPressure(string? text, out double pascals)
    {
        pascals = 0;
        if (!TrySplit(text, out var number, out var unit)) return false;
        if (unit.Length == 0) unit = "kPa";
        if (!KnownUnits.TryParse<PressureUnit>(unit, out var found)) return false;
        pascals = number * Math.Round(Pressure.From(1, found).Pascals, 6);
        return double.IsFinite(pascals);
    }

    /// <summary>Reads a share in per cent.</summary>
    /// <param name="text">A number, with or without "%".</param>
    /// <param name="perCent">The share, per cent.</param>
    /// <returns>False when the text is no share.</returns>
    public static bool TryPerCent(string? text, out double perCent) =>
        TrySplit(text, out perCent, out var unit) && unit is "" or "%";

    /// <summary>Reads a plain number or fraction.</summary>
    /// <param name="text">The number, with a point for decimals.</param>
    /// <param name="number">The number.</param>
    /// <returns>False when the text is no number.</returns>
    public static bool TryNumber(string? text, out double number) => TrySplit(text, out number, out var unit) && unit.Length == 0;

    private static bool TrySplit(string? text, out double number, [NotNullWhen(true)] out string? unit)
    {
        (number, unit) = (0, null);
        var trimmed = text?.Trim() ?? "";
        var end = 0;
        while (end < trimmed.Length && (char.IsAsciiDigit(trimmed[end]) || trimmed[end] is '.' or '/' or ' ' or '-' or '+'))
            end++;
        // A number of hundreds of digits and a division by zero are no numbers.
        if (!TryPlain(trimmed[..end].Trim(), out number) || !double.IsFinite(number)) return false;
        unit = trimmed[end..].Trim();
        return true;
    }

    /// <summary>A decimal number, a fraction "3/8", or a whole number and a fraction "1 1/2" or "1-1/2".</summary>
    private static bool TryPlain(string text, out double number)
    {
        const NumberStyles Decimal = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;
        if (double.TryParse(text, Decimal, CultureInfo.InvariantCulture, out number)) return true;
        var parts = text.Split([' ', '-'], 2, StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length is 0 or > 2) return false;
        var whole = 0;
        if (parts.Length == 2 && !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out whole))
            return false;
        var fraction = parts[^1].Split('/');
        if (fraction.Length != 2
            || !int.TryParse(fraction[0], NumberStyles.None, CultureInfo.InvariantCulture, out var above)
            || !int.TryParse(fraction[1], NumberStyles.None, CultureInfo.InvariantCulture, out var below)
            || below == 0) return false;
        number = whole + (double)above / below;
        return !text.StartsWith('-');
    }
}
