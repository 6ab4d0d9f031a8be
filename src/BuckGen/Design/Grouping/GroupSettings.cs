using BuckGen.Settings;

namespace BuckGen.Design.Grouping;

/// <summary>The settings of a sign in several bucks.</summary>
internal static class GroupSettings
{
    public static readonly TextSetting Stock =
        new("stock", "\"MDF 12\"", "the board of the register, which holds the formed pieces in place") { IsNeeded = true };

    public static readonly NumberSetting
        Fit = new("fit", "fit of the register board", null, 0, 10,
            "room round every formed piece; if omitted: from size and thermal growth")
        {
            Example = 0.5,
        },
        Margin = new("margin", "margin of the register board", 30, 1, 1000, "from the openings to the board's edge")
        {
            Source = Setting.Practice,
        };

    public static readonly SettingTable Table = new("groups",
        "A sign larger than the frame, made in several bucks (it needs [sheet] and the frame)", [Stock, Fit, Margin]);
}
