namespace BuckGen.Settings;

/// <summary>Two lengths, width and height, with one range; or a list of such pairs.</summary>
/// <param name="Key">Its key in the job file.</param>
/// <param name="Name">What has this size, in messages, with its article.</param>
/// <param name="Width">The width that the job template shows, mm.</param>
/// <param name="Height">The height that the job template shows, mm.</param>
/// <param name="Min">The least length of a side, mm.</param>
/// <param name="Max">The greatest length of a side, mm.</param>
/// <param name="Meaning">What it sets, as a short phrase.</param>
internal sealed record SizeSetting(string Key, string Name, double Width, double Height, double Min, double Max, string Meaning)
    : Setting(Key, Meaning)
{
    /// <summary>True when several sizes are given.</summary>
    public bool IsList { get; init; }

    /// <inheritdoc/>
    public override string Shown => IsList ? $"[{Pair}]" : Pair;

    /// <inheritdoc/>
    public override string Allowed => FormattableString.Invariant($"{Min} to {Max} mm each");

    private string Pair => FormattableString.Invariant($"[\"{Width}mm\", \"{Height}mm\"]");

    /// <summary>Why a size is refused, as one sentence; null when it is taken.</summary>
    /// <param name="width">The width, mm.</param>
    /// <param name="height">The height, mm.</param>
    /// <param name="owner">Words after the name that say whose it is, with a space before them.</param>
    public string? Refusal(double width, double height, string owner = "") =>
        Side("width").Refusal(width, owner) ?? Side("height").Refusal(height, owner);

    /// <summary>Refuses a size out of range.</summary>
    /// <exception cref="SpecException">The message names the setting, the value and the range.</exception>
    public void Require(double width, double height, string owner = "")
    {
        if (Refusal(width, height, owner) is { } refusal) throw new SpecException(refusal);
    }

    private NumberSetting Side(string side) => new(Key, $"{side} of {Name}", null, Min, Max, Meaning);
}
