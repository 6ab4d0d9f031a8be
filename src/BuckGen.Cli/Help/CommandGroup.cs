namespace BuckGen.Cli.Help;

/// <summary>What a maker wants of a command; the first page of the help lists commands by it, in this order.</summary>
internal enum CommandGroup
{
    Make,
    Look,
    Part,
    Setup,
}
