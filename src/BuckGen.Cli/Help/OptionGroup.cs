namespace BuckGen.Cli.Help;

/// <summary>What an option is about; the help of a command lists options by it, in this order.</summary>
internal enum OptionGroup
{
    Drawing,
    Buck,
    Boards,
    Sheet,
    Former,
    Vents,
    FinishedPart,
    Prediction,
    PlugIns,
    Output,
}
