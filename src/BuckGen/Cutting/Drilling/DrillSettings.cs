using BuckGen.Settings;

namespace BuckGen.Cutting.Drilling;

/// <summary>The settings of drill programs.</summary>
internal static class DrillSettings
{
    private static readonly DrillProgramSpec Default = new();

    public static readonly NumberSetting
        SafeHeight =
            new("safe-height", "safe height", Default.SafeHeight, DrillText.Step, 500,
                "above the top of the board, clear of clamps")
            {
                Source = Setting.Practice,
            },
        RetractHeight = new("retract-height", "retract height", Default.RetractHeight, DrillText.Step, 500,
            "where feeding begins; not above the safe height")
        { Source = Setting.Practice },
        Feed = new("feed", "feed", Default.Feed, DrillText.Step, 20_000, "mm a minute")
        {
            Kind = QuantityKind.Number,
            Unit = "mm a minute",
            Source = Setting.Practice,
        },
        Spindle = new("spindle", "spindle speed", Default.SpindleSpeed, 1, 100_000, "turns a minute")
        {
            Kind = QuantityKind.Number,
            Unit = "turns a minute",
            Source = Setting.Practice,
        },
        Peck = new("peck", "peck", null, 0.1, 1000, "depth drilled before the chips are cleared; if omitted: in one go")
        {
            Example = 3,
        };

    public static readonly FlagSetting Cycles = new("cycles", Default.Cycles, "false for controllers without drilling cycles");

    public static readonly SettingTable Table =
        new("drilling", "Drill programs for a router (NIST RS274/NGC), one for each layer and bit",
        [SafeHeight, RetractHeight, Feed, Spindle, Peck, Cycles]);
}
