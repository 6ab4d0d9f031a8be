using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Output.Files;

namespace BuckGen.Jobs;

/// <summary>What a job gives.</summary>
/// <param name="Plan">The design, laid out on boards.</param>
/// <param name="Files">The files, in memory.</param>
public sealed record JobResult(CutPlan Plan, ImmutableArray<OutputFile> Files);
