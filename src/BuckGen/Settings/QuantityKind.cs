using System.Collections.Immutable;
using BuckGen.Quantities;

namespace BuckGen.Settings;

/// <summary>Reads a quantity as people write it.</summary>
/// <param name="text">What is written.</param>
/// <param name="value">The quantity in the units of the library.</param>
internal delegate bool QuantityParser(string? text, out double value);

/// <summary>What a number measures, and how people write it.</summary>
/// <param name="Unit">The unit shown; empty for a plain number.</param>
/// <param name="Noun">What it is, with its article.</param>
/// <param name="Examples">How it may be written.</param>
/// <param name="Placeholder">What stands for it in the help.</param>
/// <param name="Parse">Reads it.</param>
internal sealed record QuantityKind(string Unit, string Noun, ImmutableArray<string> Examples, string Placeholder,
    QuantityParser Parse)
{
    public static readonly QuantityKind
        Length = new("mm", "a length", ["12mm", "1/2in"], "LENGTH", QuantityText.TryLength) { Suffix = "mm" },
        Angle = new("degrees", "an angle", ["5deg"], "ANGLE", QuantityText.TryAngle) { Suffix = "deg" },
        Share = new("%", "a share", ["0.5%"], "SHARE", QuantityText.TryPerCent) { Suffix = "%" },
        Pressure = new("kPa", "a pressure", ["70kPa", "20inHg"], "PRESSURE", QuantityText.TryPressure)
        {
            Suffix = "kPa",
            Scale = 1000
        },
        Number = new("", "a number", [], "NUMBER", QuantityText.TryNumber);

    /// <summary>The library's units in a unit shown: a pressure is kept in Pa and shown in kPa.</summary>
    public double Scale { get; init; } = 1;

    /// <summary>The unit as it is written behind a number in a job file; empty for a plain number.</summary>
    private string Suffix { get; init; } = "";

    /// <summary>The kind of value in a job file, for messages.</summary>
    public string InJob => Wanted("\"");

    /// <summary>The kind of value on a command line, for messages.</summary>
    public string InCommand => Wanted("");

    /// <summary>A value as a job file holds it.</summary>
    public string Toml(double value) => Suffix.Length == 0
        ? FormattableString.Invariant($"{value / Scale}")
        : FormattableString.Invariant($"\"{value / Scale}{Suffix}\"");

    private string Wanted(string quote) =>
        Examples.IsEmpty ? Noun : $"{Noun} such as {string.Join(" or ", Examples.Select(e => quote + e + quote))}";
}
