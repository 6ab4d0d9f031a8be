using System.IO.Pipes;
using BuckGen.Cli.Terminals;
using BuckGen.Plugins;

namespace BuckGen.Cli.Isolation;

/// <summary>
/// The process with the plug-ins: runs the command as usual, says which call of a plug-in runs, and stops when the process that
/// started it is gone.
/// </summary>
internal sealed class Worker : IProgress<PluginCall>, IDisposable
{
    private readonly StreamWriter pipe;
    private readonly WorkerStart start;

    public Worker(WorkerStart start)
    {
        this.start = start;
        pipe = new(new AnonymousPipeClientStream(PipeDirection.Out, start.Pipe)) { AutoFlush = true };
    }

    /// <summary>Runs the command.</summary>
    /// <param name="terminal">Where it talks.</param>
    /// <param name="command">The command line.</param>
    /// <param name="cancellation">Ends it when the process that started it is gone.</param>
    public int Run(Terminal terminal, Func<string[], Terminal, int> command, CancellationTokenSource cancellation)
    {
        new Thread(() => StopWithInput(cancellation)) { IsBackground = true, Name = "input" }.Start();
        var status =
            command(start.Args,
                terminal with
                {
                    PluginRun = terminal.PluginRun with
                    {
                        IsWatched = true,
                        Calls = this,
                        LeftOut = start.LeftOut
                    }
                });
        Say(new(WorkerEvent.Done, Status: status));
        return status;
    }

    /// <inheritdoc/>
    public void Report(PluginCall value) => Say(WorkerLine.FromCall(value));

    /// <inheritdoc/>
    public void Dispose() => pipe.Dispose();

    private void Say(WorkerLine line)
    {
        lock (pipe) pipe.WriteLine(line.Written());
    }

    private static void StopWithInput(CancellationTokenSource cancellation)
    {
        using var input = Console.OpenStandardInput();
        while (input.ReadByte() >= 0)
        {
        }

        cancellation.Cancel();
    }
}
