using System.Text.Json.Serialization;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Output.Reports;

/// <summary>The types that are written as JSON. Reflection would take a good part of a short run to learn them.</summary>
[JsonSerializable(typeof(Summary))]
[JsonSerializable(typeof(OutlineReport))]
[JsonSerializable(typeof(Catalog))]
internal sealed partial class SummaryTypes : JsonSerializerContext;
