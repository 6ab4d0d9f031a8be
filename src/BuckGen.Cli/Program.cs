using System.Runtime.InteropServices;
using BuckGen.Cli;
using BuckGen.Cli.Isolation;
using BuckGen.Cli.Terminals;

using var cancellation = new CancellationTokenSource();
using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
Console.SetOut(GuardedWriter.ForOutput(Console.Out));
Console.SetError(GuardedWriter.ForErrors(Console.Error));
var terminal = new Terminal(Console.Out, Console.Error, Console.IsOutputRedirected, Console.IsErrorRedirected)
{
    PluginFolder = Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.DoNotVerify),
        "buckgen", "plugins"),
};
// What a plug-in prints is not a result of the program.
Console.SetOut(Console.Error);
StrayPlugins.Watch(terminal.Error);
int status;
if (WorkerStart.Parse(args) is { } start)
{
    using var worker = new Worker(start);
    status = worker.Run(terminal, (line, to) => CommandLine.Run(line, to, cancellation.Token), cancellation);
}
else
{
    var calls = new RunningCalls();
    calls.NameAtExit(terminal.Error, cancellation.Token);
    status = CommandLine.Run(args, terminal with { PluginRun = terminal.PluginRun with { Calls = calls } }, cancellation.Token);
}

// Threads that plug-ins leave behind would keep the process.
Environment.Exit(status);

// The first signal asks the work to stop. The second is left to the system, which ends the program at once.
void Stop(PosixSignalContext signal)
{
    signal.Cancel = !cancellation.IsCancellationRequested;
    cancellation.Cancel();
}
