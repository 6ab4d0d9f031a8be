using System.Globalization;
using System.Text;

namespace BuckGen.Dxf.Tags;

/// <summary>The one place where values turn into text, whatever the culture of the machine.</summary>
internal static class TagText
{
    /// <summary>More characters than any number takes: the largest double has 309 digits before its point.</summary>
    public const int MaxNumber = 400;

    public static string Format(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>Fixed notation, one to six decimals, never an exponent and never a negative zero.</summary>
    public static string Format(int code, double value)
    {
        Span<byte> text = stackalloc byte[MaxNumber];
        return Encoding.ASCII.GetString(text[..Format(code, value, text)]);
    }

    /// <summary>The same as ASCII; returns how much of the room it takes.</summary>
    public static int Format(int code, double value, Span<byte> room)
    {
        if (!double.IsFinite(value))
            throw new DxfException($"the value of group {code} is {Shown(value)}; only finite numbers can be written");
        value.TryFormat(room, out var length, "F6", CultureInfo.InvariantCulture);
        // One digit stays behind the point.
        while (room[length - 1] == '0' && room[length - 2] != '.') length--;
        if (!room[..length].SequenceEqual("-0.0"u8)) return length;
        "0.0"u8.CopyTo(room);
        return 3;
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
