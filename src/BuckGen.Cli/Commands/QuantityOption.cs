using System.CommandLine;
using BuckGen.Quantities;
using BuckGen.Settings;

namespace BuckGen.Cli.Commands;

/// <summary>Options made of settings; their values are null when not given.</summary>
internal static class QuantityOption
{
    /// <summary>A number.</summary>
    /// <param name="setting">What it sets.</param>
    /// <param name="description">What to say instead of the setting's own meaning.</param>
    public static Option<double?> Create(NumberSetting setting, string? description = null) => new(NameOf(setting))
    {
        Description = Describe(setting, description),
        HelpName = setting.Kind == QuantityKind.Number && setting.Unit.Length > 0 ? setting.Unit.ToUpperInvariant()
            : setting.Kind.Placeholder,
        CustomParser = result =>
        {
            if (setting.Kind.Parse(result.Tokens[0].Value, out var parsed)) return parsed;
            result.AddError($"{setting.Option} is '{result.Tokens[0].Value}'; it must be {setting.Kind.InCommand}");
            return null;
        },
    };

    /// <summary>A word out of a few.</summary>
    /// <param name="setting">What it sets.</param>
    /// <param name="description">What to say instead of the setting's own meaning.</param>
    public static Option<T?> Create<T>(ChoiceSetting<T> setting, string? description = null) where T : struct, Enum =>
        Choice<T>(NameOf(setting), Describe(setting, description), setting.Allowed);

    /// <summary>A word out of a few that no job file has.</summary>
    public static Option<T?> Choice<T>(string name, string description, T otherwise) where T : struct, Enum =>
        Choice<T>(name, $"{description} {Words.List<T>()}. Default: {Words.Format(otherwise)}.", Words.List<T>());

    /// <summary>Yes when it is given.</summary>
    /// <param name="setting">What it sets.</param>
    /// <param name="description">What to say instead of the setting's own meaning.</param>
    public static Option<bool> Create(FlagSetting setting, string? description = null) => new(NameOf(setting))
    {
        Description = Sentence(description ?? setting.Meaning),
    };

    /// <summary>A text.</summary>
    /// <param name="setting">What it sets.</param>
    /// <param name="helpName">What stands for it in the help.</param>
    /// <param name="description">What to say instead of the setting's own meaning.</param>
    public static Option<string?> Create(TextSetting setting, string helpName, string? description = null) => new(NameOf(setting))
    {
        Description = Sentence(description ?? setting.Meaning),
        HelpName = helpName,
    };

    /// <summary>Several words.</summary>
    /// <param name="setting">What it sets.</param>
    /// <param name="description">What to say instead of the setting's own meaning.</param>
    public static Option<string[]> Names(TextSetting setting, string? description = null) => new(NameOf(setting))
    {
        Description = Sentence(description ?? setting.Meaning),
        HelpName = "NAME",
        AllowMultipleArgumentsPerToken = true,
    };

    /// <summary>A size, as its text.</summary>
    /// <param name="setting">What it sets.</param>
    /// <param name="description">What to say instead of the setting's own meaning.</param>
    public static Option<string?> Create(SizeSetting setting, string description) => new(NameOf(setting))
    {
        Description = Describe(setting, description),
        HelpName = SizeName,
    };

    /// <summary>Several sizes, as their texts.</summary>
    /// <param name="setting">What they set.</param>
    /// <param name="description">What to say instead of the setting's own meaning.</param>
    public static Option<string[]> Sizes(SizeSetting setting, string description) => new(NameOf(setting))
    {
        Description = Describe(setting, description),
        HelpName = SizeName,
        AllowMultipleArgumentsPerToken = true,
    };

    private const string SizeName = "WIDTHxHEIGHT";

    private static Option<T?> Choice<T>(string name, string description, string allowed) where T : struct, Enum =>
        new Option<T?>(name)
        {
            Description = description,
            HelpName = string.Join('|', Enum.GetValues<T>().Select(Words.Format)),
            CustomParser = result =>
            {
                if (Words.TryParse<T>(result.Tokens[0].Value, out var value)) return value;
                result.AddError($"{name} is '{result.Tokens[0].Value}'; it must be {allowed}");
                return null;
            },
        }.WithCompletions(() => Enum.GetValues<T>().Select(Words.Format));

    private static string NameOf(Setting setting) =>
        setting.Option ?? throw new InvalidOperationException($"The setting {setting.Key} has no option.");

    private static string Describe<T>(ChoiceSetting<T> setting, string? description) where T : struct, Enum =>
        $"{Sentence(description ?? setting.Meaning)} Default: {setting.Usual}.";

    private static string Describe(NumberSetting setting, string? description) =>
        $"{Sentence(description ?? setting.Meaning)} {(setting.Usual.Length > 0 ? $"Default: {setting.Usual}; {setting.Allowed}."
            : Sentence(setting.Allowed))}";

    private static string Describe(SizeSetting setting, string description) =>
        $"{Sentence(description)} {Sentence(setting.Allowed)}";

    private static string Sentence(string phrase) => $"{char.ToUpperInvariant(phrase[0])}{phrase[1..].TrimEnd('.')}.";
}
