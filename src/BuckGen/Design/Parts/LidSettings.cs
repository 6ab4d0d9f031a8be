using BuckGen.Settings;

namespace BuckGen.Design.Parts;

/// <summary>The settings of the lid.</summary>
internal static class LidSettings
{
    public static readonly ChoiceSetting<LidFit> Fit = new("fit", LidFit.Over,
        "over: its wall goes round the part; into: its wall goes into the part; flush: into, with no brim");

    public static readonly NumberSetting
        Skirt = new("skirt", "skirt of the lid", 12, 1, 500, "how far the two walls overlap"),
        Clearance = new("clearance", "clearance of the lid", 0.3, 0, 20, "smallest play between the two walls, on every side")
        {
            Source = Setting.Practice,
        },
        Draft = new("draft", "draft of the lid", null, 0, 45, "slope of its wall; left out: that of the part")
        {
            Kind = QuantityKind.Angle,
            Example = 5,
        },
        Brim = new("brim", "brim of the lid", 3, 0.5, 100, "into only: how far its flange stands out beyond the part")
        {
            Source = Setting.Practice,
        };

    public static readonly SettingTable Table = new("lid",
        "A lid that mates with the part, from the same drawing; its files go to the folder lid (it needs [sheet])",
        [Fit, Skirt, Clearance, Draft, Brim]);
}
