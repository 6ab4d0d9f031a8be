namespace BuckGen.Intake.Svg;

/// <summary>A length as written in an attribute: a number and its unit.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">The unit in lower case; empty for user units.</param>
internal readonly record struct SvgLength(double Value, string Unit)
{
    /// <summary>Reads a length; null when the text is anything else.</summary>
    public static SvgLength? Parse(string text)
    {
        var scanner = new SvgScanner(text);
        scanner.SkipBlanks();
        if (!scanner.TryNumber(out var value)) return null;
        var unit = scanner.TakeWord();
        scanner.SkipBlanks();
        return scanner.AtEnd ? new(value, unit.ToLowerInvariant()) : null;
    }

    /// <summary>Millimetres to the unit, where the unit is an absolute one; otherwise null.</summary>
    public double? MillimetresPerUnit => Unit switch
    {
        "mm" => 1,
        "cm" => 10,
        "q" => 0.25,
        "in" => 25.4,
        "pt" => 25.4 / 72,
        "pc" => 25.4 / 6,
        _ => null,
    };

    /// <summary>True for user units and px, which are the same thing.</summary>
    public bool IsPixels => Unit is "" or "px";

    /// <summary>True for every unit that has a fixed size, px among them.</summary>
    public bool IsAbsolute => IsPixels || MillimetresPerUnit is not null;

    /// <summary>True for units that depend on the window or a font and so say nothing about the size.</summary>
    public bool IsRelative => Unit is "%" or "em" or "ex" or "rem" or "ch" or "vw" or "vh" or "vmin" or "vmax";
}
