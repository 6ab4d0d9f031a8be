using System.Text.Json;
using BuckGen.Plugins;

namespace BuckGen.Cli.Isolation;

/// <summary>The messages of the process with the plug-ins to the process that watches it, a line each.</summary>
/// <param name="Event">What happens.</param>
/// <param name="File">The plug-in concerned; empty for none.</param>
/// <param name="Part">Its part; empty while it starts.</param>
/// <param name="Seconds">How long a call may take.</param>
/// <param name="Status">The exit status of a command that is done.</param>
internal sealed record WorkerLine(WorkerEvent Event, string File = "", string Part = "", double Seconds = 0, int Status = 0)
{
    public static WorkerLine FromCall(PluginCall call) => call.Allowed is { } allowed
        ? new(WorkerEvent.Begins, call.File, call.Part, allowed.TotalSeconds)
        : new(WorkerEvent.Ends, call.File, call.Part);

    public string Written() => JsonSerializer.Serialize(this);

    public static WorkerLine? Read(string line) => JsonSerializer.Deserialize<WorkerLine>(line);
}

/// <summary>What can happen in the process with the plug-ins.</summary>
internal enum WorkerEvent
{
    /// <summary>A call begins.</summary>
    Begins,

    /// <summary>A call has ended.</summary>
    Ends,

    /// <summary>The command is done.</summary>
    Done,
}
