using System.Collections.Immutable;

namespace BuckGen.Settings;

/// <summary>A table of a job file.</summary>
/// <param name="Name">Its name; empty for the keys above the first table.</param>
/// <param name="Intro">What it is for, as a sentence; empty when its name says it.</param>
/// <param name="Settings">Its settings, in the order of the job template.</param>
internal sealed record SettingTable(string Name, string Intro, ImmutableArray<Setting> Settings)
{
    /// <summary>True when the job template has it; false when the template shows it as a comment.</summary>
    public bool IsSet { get; init; }

    /// <summary>True when a job may have several of it.</summary>
    public bool IsRepeated { get; init; }

    /// <summary>Its heading as a job file writes it; empty for the keys above the first table.</summary>
    public string Heading => Name.Length == 0 ? "" : IsRepeated ? $"[[{Name}]]" : $"[{Name}]";
}
