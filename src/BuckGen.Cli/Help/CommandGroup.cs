namespace BuckGen.Cli.Help;

/// <summary>The purpose of a command; the first page of the help lists commands by it, in this order.</summary>
internal enum CommandGroup
{
    Make,
    Look,
    Part,
    Setup,
}
