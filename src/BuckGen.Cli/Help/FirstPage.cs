using System.Collections.Immutable;

namespace BuckGen.Cli.Help;

/// <summary>What the first page of the help says beside the list of commands.</summary>
/// <param name="Summary">What the program is for and how it is called.</param>
/// <param name="Last">Lines below the list.</param>
internal sealed record FirstPage(string Summary, ImmutableArray<string> Last);
