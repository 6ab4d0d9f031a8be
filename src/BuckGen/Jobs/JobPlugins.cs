using System.Collections.Immutable;

namespace BuckGen.Jobs;

/// <summary>The plug-ins that a job names, and how they are to be run.</summary>
/// <param name="Files">The files, as written in the job file.</param>
/// <param name="Isolated">True to run everything that uses them in a process of its own, which ends alone when a plug-in ends
/// it.</param>
/// <param name="Call">How long each call of a plug-in may take, from 1 s to an hour; null for the usual time.</param>
public sealed record JobPlugins(ImmutableArray<string> Files, bool Isolated, TimeSpan? Call)
{
    internal static JobPlugins Read(JobTable root)
    {
        var seconds = root.OptionalNumber("plugin-seconds");
        if (seconds is not (null or (>= 1 and <= 3600)))
            throw root.Fault(root.LineOf("plugin-seconds"), FormattableString.Invariant($"\"plugin-seconds\" is {seconds}; it must be from 1 to 3600"));
        return new([.. root.Texts("plugins")], root.Flag("isolate-plugins", false), seconds is { } s ? TimeSpan.FromSeconds(s) : null);
    }
}
