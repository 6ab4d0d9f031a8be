using System.Collections.Immutable;
using BuckGen.Plugins;

namespace BuckGen.Jobs;

/// <summary>The plug-ins that a job names, and how they are to be run.</summary>
/// <param name="Files">The files, as written in the job file.</param>
/// <param name="Isolated">True to run everything that uses them in a process of its own, which ends alone when a plug-in ends
/// it.</param>
/// <param name="Call">How long each call of a plug-in may take, from 1 s to an hour; null for the usual time.</param>
public sealed record JobPlugins(ImmutableArray<string> Files, bool Isolated, TimeSpan? Call)
{
    internal static JobPlugins Read(JobTable root) => new(
        [.. root.Texts(PluginSettings.Files)], root.Flag(PluginSettings.Isolate),
        root.Optional(PluginSettings.Seconds) is { } seconds ? TimeSpan.FromSeconds(seconds) : null);
}
