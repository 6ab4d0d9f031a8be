using System.Collections.Immutable;

namespace BuckGen.Plugins;

/// <summary>An assembly that was found and loaded, or could not be.</summary>
/// <param name="Name">Its name: that of the file.</param>
/// <param name="Path">Where it is.</param>
/// <param name="Version">Its version; empty when it could not be read.</param>
/// <param name="Parts">What it brings.</param>
/// <param name="Problem">Why it, or a part of it, was left out; null when all is well.</param>
public sealed record Plugin(string Name, string Path, string Version, ImmutableArray<PluginPart> Parts, string? Problem)
{
    /// <summary>The extensions themselves, in the order of their names.</summary>
    internal ImmutableArray<GuardedPart> Extensions { get; init; } = [];
}

/// <summary>One thing that a plug-in brings.</summary>
/// <param name="Kind">What it is in plain words, such as "vent pattern".</param>
/// <param name="Name">Its name, as a job file would say it.</param>
public sealed record PluginPart(string Kind, string Name);
