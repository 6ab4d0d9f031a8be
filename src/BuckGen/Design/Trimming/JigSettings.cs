using BuckGen.Settings;

namespace BuckGen.Design.Trimming;

/// <summary>The settings of the trim ring and its core.</summary>
internal static class JigSettings
{
    public static readonly NumberSetting
        TrimHeight =
            new("trim-height", "trim height", null, 2, 500,
                "height of the cut over the flange's underside; if omitted: 12 mm or less, or the fewest boards")
            {
                Example = RingHeight.Usual,
                Option = "--trim-height",
            },
        Clearance = new("clearance", "clearance of the jig", 0.5, 0, 10, "between part and ring")
        {
            Option = "--clearance",
            Source = Setting.Practice
        },
        Land = new("land", "land of the jig", 40, 10, 300, "width of the ring") { Option = "--land", Source = Setting.Practice },
        FlangeRoom =
            new("flange-room", "flange room of the jig", 12, 0, 200,
                "how much flange may be left under the ring")
            { Source = Setting.Practice },
        BladeRoom = new("blade-room", "blade room over the core", 2, 0, 50,
            "how far the core stays below the cut")
        { Source = Setting.Practice };

    public static readonly FlagSetting
        Core = new("core", true, "a core to hold the part from inside"),
        Bed = new("bed", true, "a board to glue the core on, so that the part can't slide or tip");

    public static readonly SettingTable Table =
        new("jig", "A ring to trim the part by: lay a knife or saw flat on it (it needs [sheet])",
        [TrimHeight, Clearance, Land, FlangeRoom, Core, Bed, BladeRoom]);
}
