using BuckGen.Cutting.Costs;

namespace BuckGen.Jobs;

/// <summary>Reads the table [rates] of a job file.</summary>
internal static class CostTables
{
    public static RateSpec Rates(JobTable table) => new()
    {
        Currency = table.Text("currency", RateSpec.None.Currency),
        Labour = table.OptionalNumber("labour"),
        Machine = table.OptionalNumber("machine"),
        MarkFeed = table.OptionalNumber("mark-feed"),
        PathSeconds = table.OptionalNumber("path-seconds"),
        BoardMinutes = table.OptionalNumber("board-minutes"),
        DrillSeconds = table.OptionalNumber("drill-seconds"),
        GlueMinutes = table.OptionalNumber("glue-minutes"),
    };
}
