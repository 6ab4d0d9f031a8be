using System.Text.Json.Serialization;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Output.Reports;

/// <summary>What is written as JSON, known to the compiler: finding it out by reflection takes a good part of a short run.</summary>
[JsonSerializable(typeof(Summary))]
[JsonSerializable(typeof(OutlineReport))]
[JsonSerializable(typeof(Catalog))]
internal sealed partial class SummaryTypes : JsonSerializerContext;
