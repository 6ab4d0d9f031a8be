namespace BuckGen.Settings;

/// <summary>
/// What one line of a job file sets, declared once: reading, validation, the job template, help and guide take everything from
/// here.
/// </summary>
/// <param name="Key">Its key in the job file.</param>
/// <param name="Meaning">What it sets, as a short phrase.</param>
internal abstract record Setting(string Key, string Meaning)
{
    /// <summary>The source of a number that rests on experience only.</summary>
    public const string Practice = "common practice, no source";

    /// <summary>The option of the command line for it; null for none.</summary>
    public string? Option { get; init; }

    /// <summary>True when the job template sets it; false when the template shows it as a comment.</summary>
    public bool IsSet { get; init; }

    /// <summary>True when it must be given.</summary>
    public bool IsNeeded { get; init; }

    /// <summary>Where the default comes from; empty when it needs no source.</summary>
    public string Source { get; init; } = "";

    /// <summary>The value that the job template shows, as TOML.</summary>
    public abstract string Shown { get; }

    /// <summary>What holds when it is left out, for people; empty for nothing.</summary>
    public virtual string Usual => "";

    /// <summary>What it may be, for people; empty for anything.</summary>
    public virtual string Allowed => "";
}
