using System.Runtime.InteropServices;
using BuckGen.Cli;

using var cancellation = new CancellationTokenSource();
using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
Console.SetOut(GuardedWriter.ForAnswers(Console.Out));
Console.SetError(GuardedWriter.ForRemarks(Console.Error));
var terminal = new Terminal(Console.Out, Console.Error, Console.IsOutputRedirected, Console.IsErrorRedirected)
{
    PluginFolder = Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.DoNotVerify), "buckgen", "plugins"),
};
return CommandLine.Run(args, terminal, cancellation.Token);

// The first signal asks the work to stop. The second is left to the system, which ends the program at once.
void Stop(PosixSignalContext signal)
{
    signal.Cancel = !cancellation.IsCancellationRequested;
    cancellation.Cancel();
}
