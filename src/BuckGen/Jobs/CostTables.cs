using BuckGen.Cutting.Costs;

namespace BuckGen.Jobs;

/// <summary>Reads the table [rates] of a job file.</summary>
internal static class CostTables
{
    public static RateSpec Rates(JobTable table) => new()
    {
        Currency = table.Text(RateSettings.Currency) ?? RateSpec.None.Currency,
        Labour = table.Optional(RateSettings.Labour),
        Machine = table.Optional(RateSettings.Machine),
        MarkFeed = table.Optional(RateSettings.MarkFeed),
        PathSeconds = table.Optional(RateSettings.PathSeconds),
        BoardMinutes = table.Optional(RateSettings.BoardMinutes),
        DrillSeconds = table.Optional(RateSettings.DrillSeconds),
        GlueMinutes = table.Optional(RateSettings.GlueMinutes),
    };
}
