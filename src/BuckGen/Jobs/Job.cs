using BuckGen.Bucks;
using BuckGen.Catalogs;
using BuckGen.Outlines;
using BuckGen.Output;
using BuckGen.Sheets;

namespace BuckGen.Jobs;

/// <summary>A whole job: the outline's file and everything a maker decides.</summary>
/// <param name="Title">What the job is called.</param>
/// <param name="OutlineFile">Path of the outline, as written in the job file.</param>
/// <param name="Reading">How the outline is read.</param>
/// <param name="Buck">The buck.</param>
/// <param name="Cutting">How the sheets are cut.</param>
/// <param name="Output">Which files are made.</param>
public sealed record Job(
    string Title, string OutlineFile, OutlineOptions Reading, BuckSpec Buck, CuttingSpec Cutting, OutputOptions Output)
{
    /// <summary>The sheets and plastics that the job may name.</summary>
    public Catalog Catalog { get; init; } = Catalog.BuiltIn;
}
