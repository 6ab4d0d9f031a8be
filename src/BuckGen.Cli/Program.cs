using BuckGen.Cli;

using var cancellation = new CancellationTokenSource();
Console.CancelKeyPress += (_, e) =>
{
    e.Cancel = true;
    cancellation.Cancel();
};
var terminal = new Terminal(Console.Out, Console.Error, Console.IsOutputRedirected, Console.IsErrorRedirected)
{
    PluginFolder = Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.DoNotVerify), "buckgen", "plugins"),
};
return CommandLine.Run(args, terminal, cancellation.Token);
