using System.CommandLine;
using BuckGen.Quantities;

namespace BuckGen.Cli.Commands;

/// <summary>Options whose values are lengths, angles, shares or words; null when not given.</summary>
internal static class QuantityOption
{
    public delegate bool Parser(string? text, out double value);

    public static Option<double?> Length(string name, string description, double? otherwise = null) =>
        Make(name, description, otherwise, "mm", QuantityText.TryLength, "a length such as 12mm or 1/2in", "LENGTH");

    public static Option<double?> Angle(string name, string description, double? otherwise = null) =>
        Make(name, description, otherwise, "degrees", QuantityText.TryAngle, "an angle such as 5deg", "ANGLE");

    public static Option<double?> PerCent(string name, string description, double? otherwise = null) =>
        Make(name, description, otherwise, "%", QuantityText.TryPerCent, "a share such as 0.5%", "SHARE");

    /// <param name="name">The option.</param>
    /// <param name="description">What it is for.</param>
    /// <param name="otherwise">Its default.</param>
    /// <param name="counted">What the number counts.</param>
    public static Option<double?> Number(string name, string description, double otherwise, string counted) =>
        Make(name, description, otherwise, counted, QuantityText.TryNumber, "a number such as 2.5", counted.ToUpperInvariant());

    /// <summary>A word out of a few.</summary>
    public static Option<T?> Choice<T>(string name, string description, T otherwise) where T : struct, Enum => new Option<T?>(name)
    {
        Description = $"{description} {Words.List<T>()}. Default: {Words.Format(otherwise)}.",
        HelpName = string.Join('|', Enum.GetValues<T>().Select(Words.Format)),
        CustomParser = result =>
        {
            if (Words.TryParse<T>(result.Tokens[0].Value, out var value)) return value;
            result.AddError($"{name} is '{result.Tokens[0].Value}'; it must be {Words.List<T>()}");
            return null;
        },
    }.WithCompletions(() => Enum.GetValues<T>().Select(Words.Format));

    private static Option<double?> Make(
        string name, string description, double? otherwise, string unit, Parser parse, string kind, string helpName) => new(name)
    {
        Description = otherwise is { } value ? FormattableString.Invariant($"{description} Default: {value} {unit}.") : description,
        HelpName = helpName,
        CustomParser = result =>
        {
            if (parse(result.Tokens[0].Value, out var parsed)) return parsed;
            result.AddError($"{name} is '{result.Tokens[0].Value}'; it must be {kind}");
            return null;
        },
    };
}
