using BuckGen.Settings;

namespace BuckGen.Cutting.Costs;

/// <summary>The settings of a shop's rates.</summary>
internal static class RateSettings
{
    public static readonly TextSetting Currency = new("currency", "\"EUR\"", "shown after sums");

    public static readonly NumberSetting
        Labour = Rate("labour", "price of an hour's work", 40, 0, 1e6, "", "an hour of hand work"),
        Machine = Rate("machine", "price of an hour of the machine", 30, 0, 1e6, "", "an hour of the machine"),
        MarkFeed = Rate("mark-feed", "feed along marks", 3000, 1, 1e6, "mm a minute", "mm a minute along marks and lettering"),
        PathSeconds = Rate("path-seconds", "time for each path", 1, 0, 600, "s", "each path besides its length"),
        BoardMinutes =
            Rate("board-minutes", "time for each board", 2, 0, 600, "minutes", "loading a board and taking the parts off"),
        DrillSeconds = Rate("drill-seconds", "time for each hole", 10, 0, 3600, "s", "a hole drilled by hand"),
        GlueMinutes = Rate("glue-minutes", "time for each glue line", 5, 0, 600, "minutes", "a layer glued onto the next");

    public static readonly SettingTable Table = new("rates",
        "What an hour costs and how fast work goes in your shop; what you leave out is not in the sums",
        [Currency, Labour, Machine, MarkFeed, PathSeconds, BoardMinutes, DrillSeconds, GlueMinutes]);

    private static NumberSetting Rate(string key, string name, double example, double min, double max, string unit,
        string meaning) =>
        new(key, name, null, min, max, meaning) { Kind = QuantityKind.Number, Unit = unit, Example = example };
}
