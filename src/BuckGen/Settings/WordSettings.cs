using BuckGen.Quantities;

namespace BuckGen.Settings;

/// <summary>One of a few words.</summary>
/// <typeparam name="T">The choices.</typeparam>
/// <param name="Key">Its key in the job file.</param>
/// <param name="Default">Its value when left out.</param>
/// <param name="Meaning">What it sets, as a short phrase.</param>
internal sealed record ChoiceSetting<T>(string Key, T Default, string Meaning) : Setting(Key, Meaning) where T : struct, Enum
{
    /// <inheritdoc/>
    public override string Shown => $"\"{Words.Format(Default)}\"";

    /// <inheritdoc/>
    public override string Usual => Words.Format(Default);

    /// <inheritdoc/>
    public override string Allowed => Words.List<T>();
}

/// <summary>Yes or no.</summary>
/// <param name="Key">Its key in the job file.</param>
/// <param name="Default">Its value when left out.</param>
/// <param name="Meaning">What it sets, as a short phrase.</param>
internal sealed record FlagSetting(string Key, bool Default, string Meaning) : Setting(Key, Meaning)
{
    /// <summary>The value that the job template shows; null for the default.</summary>
    public bool? Example { get; init; }

    /// <inheritdoc/>
    public override string Shown => (Example ?? Default) ? "true" : "false";

    /// <inheritdoc/>
    public override string Usual => Default ? "true" : "false";

    /// <inheritdoc/>
    public override string Allowed => "true or false";
}

/// <summary>A text, a name or a list: what is neither a number, a size, a choice nor a flag.</summary>
/// <param name="Key">Its key in the job file.</param>
/// <param name="Shown">The value that the job template shows, as TOML.</param>
/// <param name="Meaning">What it sets, as a short phrase.</param>
internal sealed record TextSetting(string Key, string Shown, string Meaning) : Setting(Key, Meaning)
{
    /// <inheritdoc/>
    public override string Shown { get; } = Shown;
}
