using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen completion SHELL: a script that makes a shell complete commands.</summary>
internal static class CompletionCommand
{
    private static readonly string[] Shells = ["bash", "zsh", "powershell"];

    public static HelpedCommand Create(Terminal terminal)
    {
        var shell = new Argument<string>("SHELL") { Description = $"Which shell: {string.Join(", ", Shells)}." }
            .WithCompletions(() => Shells);
        var command =
            new HelpedCommand("completion", CommandGroup.Setup, "Print a script that completes commands when you press TAB.")
            {
                Examples = ["buckgen completion bash", "buckgen completion zsh", "buckgen completion powershell"],
                Notes =
                """
                To have it in every new window, add a line to the file that your shell reads when it starts:
                  bash, in ~/.bashrc:
                    source <(buckgen completion bash)
                  zsh, in ~/.zshrc, after compinit:
                    source <(buckgen completion zsh)
                  PowerShell, in $PROFILE:
                    buckgen completion powershell | Out-String | Invoke-Expression
                """,
            };
        command.Add(shell);
        return command.WhenNamed(() => Complete(command, shell, terminal));
    }

    private static void Complete(HelpedCommand command, Argument<string> shell, Terminal terminal)
    {
        command.SetAction(parsed =>
        {
            var name = parsed.GetValue(shell)!;
            if (!Shells.Contains(name))
                throw new UsageException($"The shell '{name}' is not known; those known are {string.Join(", ", Shells)}.");
            terminal.Out.Write(Script(name));
            return ExitStatus.Done;
        });
    }

    private static string Script(string shell)
    {
        using var script = new StreamReader(typeof(CompletionCommand).Assembly.GetManifestResourceStream($"completion.{shell}")!);
        return script.ReadToEnd();
    }
}
