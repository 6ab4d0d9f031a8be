using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Output.Files;
using BuckGen.Output.Reports;

namespace BuckGen.Jobs;

/// <summary>What a job gives.</summary>
/// <param name="Plan">The design, laid out on boards.</param>
/// <param name="Files">The files, in memory; those of the lid lie in the folder <see cref="LidFolder"/>.</param>
public sealed record JobResult(CutPlan Plan, ImmutableArray<OutputFile> Files)
{
    /// <summary>The folder of the lid's files, below the output folder.</summary>
    public const string LidFolder = BuckFolders.Lid;

    /// <summary>The lid, laid out on boards of its own; null for none.</summary>
    public CutPlan? Lid { get; init; }

    /// <summary>True when part or lid have a finding of severity error.</summary>
    public bool HasErrors => Plan.HasErrors || Lid is { HasErrors: true };
}
