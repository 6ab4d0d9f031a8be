namespace BuckGen.Settings;

/// <summary>A number with its range.</summary>
/// <param name="Key">Its key in the job file.</param>
/// <param name="Name">What it is called in messages, without article.</param>
/// <param name="Default">Its value when left out; null when that depends on others, or when it is needed.</param>
/// <param name="Min">The least value.</param>
/// <param name="Max">The greatest value.</param>
/// <param name="Meaning">What it sets, as a short phrase.</param>
internal sealed record NumberSetting(string Key, string Name, double? Default, double Min, double Max, string Meaning)
    : Setting(Key, Meaning)
{
    /// <summary>What it measures.</summary>
    public QuantityKind Kind { get; init; } = QuantityKind.Length;

    /// <summary>The unit shown; empty for a plain number.</summary>
    public string Unit { get => field ?? Kind.Unit; init; }

    /// <summary>True when the least value itself is refused.</summary>
    public bool AboveMin { get; init; }

    /// <summary>True when 0 is accepted below the range: it switches off what the setting is about.</summary>
    public bool ZeroIsNone { get; init; }

    /// <summary>Why the range is what it is, for the message that refuses a value; empty when that is plain.</summary>
    public string Because { get; init; } = "";

    /// <summary>The value that the job template shows when there is no default.</summary>
    public double Example { get; init; } = double.NaN;

    /// <summary>The default of a setting that has one.</summary>
    public double Value => Default ?? throw new InvalidOperationException($"The setting {Key} has no default.");

    /// <inheritdoc/>
    public override string Shown => Kind.Toml(Default ?? Example);

    /// <inheritdoc/>
    public override string Usual => Default is { } value ? Text(value) : "";

    /// <inheritdoc/>
    public override string Allowed => AboveMin
        ? FormattableString.Invariant($"above {Min / Kind.Scale} and at most {Text(Max)}")
        : FormattableString.Invariant($"{(ZeroIsNone ? "0 or " : "")}{Min / Kind.Scale} to {Text(Max)}");

    /// <summary>Why a value is refused, as one sentence; null when it is taken.</summary>
    /// <param name="value">The value.</param>
    /// <param name="owner">Words after the name that say whose it is, with a space before them.</param>
    public string? Refusal(double value, string owner = "") => IsInRange(value)
        ? null
        : $"The {Name}{owner} is {Text(value)}; it must be {(AboveMin || ZeroIsNone ? "" : "from ")}{Allowed}"
            + (Because.Length > 0 ? $": {Because}." : ".");

    /// <summary>Refuses a value out of range.</summary>
    /// <exception cref="SpecException">The message names the setting, the value and the range.</exception>
    public void Require(double value, string owner = "")
    {
        if (Refusal(value, owner) is { } refusal) throw new SpecException(refusal);
    }

    /// <summary>Refuses a value out of range, if there is a value.</summary>
    /// <exception cref="SpecException">The message names the setting, the value and the range.</exception>
    public void Require(double? value, string owner = "")
    {
        if (value is { } given) Require(given, owner);
    }

    private bool IsInRange(double value) =>
        (ZeroIsNone && value == 0) || ((AboveMin ? value > Min : value >= Min) && value <= Max);

    // A conversion leaves a tail of digits that no one wrote.
    private string Text(double value) =>
        FormattableString.Invariant($"{(Kind.Scale == 1 ? value : Math.Round(value / Kind.Scale, 9))} {Unit}").TrimEnd();
}
