using BuckGen.Cli;

using var cancellation = new CancellationTokenSource();
Console.CancelKeyPress += (_, e) =>
{
    e.Cancel = true;
    cancellation.Cancel();
};
return CommandLine.Run(args, new Terminal(Console.Out, Console.Error, Console.IsOutputRedirected, Console.IsErrorRedirected), cancellation.Token);
