using System.CommandLine;
using BuckGen.Cli.Help;

namespace BuckGen.Cli.Commands;

/// <summary>Options of commands that write a folder.</summary>
internal sealed class RunOptions
{
    public Option<string?> Out { get; } = new("--out", "-o") { Description = "Folder to write.", HelpName = "DIR" };

    public Option<bool> Force { get; } =
        new("--force")
        {
            Description = "Write the cut files in spite of errors, and replace files in the folder that "
            + "BuckGen did not write."
        };

    public Option<bool> Json { get; } = JsonOption();

    public static Option<bool> JsonOption() => new("--json") { Description = "Print the result as JSON." };

    public void AddTo(HelpedCommand command)
    {
        command.Add(OptionGroup.Output, Out, Force, Json);
    }
}
