using System.Globalization;

namespace BuckGen.Dxf.Tags;

/// <summary>The one place where values turn into text, whatever the culture of the machine.</summary>
internal static class TagText
{
    public static string Format(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>Fixed notation, one to six decimals, never an exponent and never a negative zero.</summary>
    public static string Format(int code, double value)
    {
        if (!double.IsFinite(value))
            throw new DxfException($"the value of group {code} is {Shown(value)}; only finite numbers can be written");
        var text = value.ToString("F6", CultureInfo.InvariantCulture).TrimEnd('0');
        if (text.EndsWith('.'))
            text += '0';
        return text == "-0.0" ? "0.0" : text;
    }

    public static string Format(int code, string value)
    {
        foreach (var c in value)
        {
            if (c is < ' ' or > '~')
                throw new DxfException($"the text of group {code} holds U+{(int)c:X4}; only printable ASCII can be written");
        }

        return value;
    }

    private static string Shown(double value) => value.ToString(CultureInfo.InvariantCulture);
}
