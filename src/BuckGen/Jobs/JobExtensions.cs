using System.Collections.Immutable;
using BuckGen.Plugins;

namespace BuckGen.Jobs;

/// <summary>What a job may use besides what it names itself.</summary>
public sealed record JobExtensions
{
    /// <summary>What comes with the library, and no plug-ins.</summary>
    public static JobExtensions BuiltIn { get; } = new();

    /// <summary>What plug-ins are added to.</summary>
    public Extensions Onto { get; init; } = Extensions.BuiltIn;

    /// <summary>Plug-ins to load before those of the job, full paths.</summary>
    public ImmutableArray<string> PluginFiles { get; init; } = [];

    /// <summary>How long each call of a plug-in may take; null for what the job says, or the usual time.</summary>
    public TimeSpan? PluginCall { get; init; }

    /// <summary>How plug-ins are called otherwise.</summary>
    public PluginRun PluginRun { get; init; } = PluginRun.Default;

    /// <summary>Loads the plug-ins, those of a job last.</summary>
    /// <param name="named">What the job says of plug-ins, with full paths; null for no job.</param>
    /// <exception cref="OperationCanceledException">The run is stopped.</exception>
    public PluginSet Load(JobPlugins? named = null)
    {
        var call = PluginCall ?? named?.Call ?? PluginRun.Call;
        // A plug-in that is allowed longer calls is allowed as long a start.
        var start = call > PluginRun.Start && call != PluginRun.Call ? call : PluginRun.Start;
        return PluginSet.Load([.. PluginFiles, .. named?.Files ?? []], PluginRun with { Call = call, Start = start });
    }
}
