namespace BuckGen.Intake.Catalogs;

/// <summary>A figure that an entry may have.</summary>
/// <param name="Key">Its key in catalog files.</param>
/// <param name="Name">What it is, in plain words.</param>
internal sealed record FigureKind(string Key, string Name)
{
    /// <summary>Its unit; empty for words.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Minimum and maximum sensible value; null for words.</summary>
    public FigureRange? Limits { get; init; }

    /// <summary>True when it may be a range [min, max].</summary>
    public bool MayBeRange { get; init; }

    /// <summary>The words it may be; empty for any.</summary>
    public string[] Words { get; init; } = [];

    /// <summary>True when every entry needs it.</summary>
    public bool Required { get; init; }

    public static FigureKind Number(string key, string name, string unit, double min, double max) =>
        new(key, name) { Unit = unit, Limits = new(min, max) };

    public static FigureKind Range(string key, string name, string unit, double min, double max) =>
        Number(key, name, unit, min, max) with { MayBeRange = true };

    public static FigureKind Choice(string key, string name, params string[] words) => new(key, name) { Words = words };

    public static FigureKind Remark(string key, string name) => new(key, name);
}
