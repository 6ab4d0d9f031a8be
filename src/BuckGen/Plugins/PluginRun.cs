using System.Collections.Immutable;

namespace BuckGen.Plugins;

/// <summary>How the plug-ins of a run are called.</summary>
public sealed record PluginRun
{
    /// <summary>Ten seconds to start, thirty for each call, and nothing left out.</summary>
    public static PluginRun Default { get; } = new();

    /// <summary>How long a plug-in may take to start: to be loaded and to make its parts.</summary>
    public TimeSpan Start { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>
    /// How long each call of a part may take, from 1 s to an hour. A part that takes longer is not called again.
    /// </summary>
    public TimeSpan Call { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>
    /// True when the receiver of <see cref="Calls"/> ends the process of a call that takes too long; then none is given up here.
    /// </summary>
    public bool IsWatched { get; init; }

    /// <summary>Receives the begin and the end of every call, on the thread that waits for it.</summary>
    public IProgress<PluginCall>? Calls { get; init; }

    /// <summary>What is not called at all, for what it did before.</summary>
    public ImmutableArray<LeftOutPart> LeftOut { get; init; } = [];

    /// <summary>Stops waiting for a call.</summary>
    public CancellationToken Cancellation { get; init; }
}

/// <summary>A plug-in's code begins to run, or has ended.</summary>
/// <param name="File">The file of the plug-in.</param>
/// <param name="Part">The name of the part; empty while the plug-in starts.</param>
/// <param name="Allowed">How long the call may take; null when it has ended.</param>
public sealed record PluginCall(string File, string Part, TimeSpan? Allowed)
{
    /// <summary>The reason given for the part when the call takes longer.</summary>
    public string Overdue =>
        FormattableString.Invariant(
            $"it did not {(Part.Length == 0 ? "start" : "come back")} within {Allowed?.TotalSeconds:0.#} s");
}

/// <summary>A part of a plug-in that is not called, or a whole plug-in that is not loaded.</summary>
/// <param name="File">The full path of the plug-in.</param>
/// <param name="Part">The name of the part; empty for the whole.</param>
/// <param name="Reason">Why, to stand after its name.</param>
public sealed record LeftOutPart(string File, string Part, string Reason);
