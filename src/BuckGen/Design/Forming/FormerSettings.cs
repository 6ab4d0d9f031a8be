using BuckGen.Settings;

namespace BuckGen.Design.Forming;

/// <summary>The settings of the former.</summary>
internal static class FormerSettings
{
    public static readonly SizeSetting
        Frame = new("frame", "the clamp frame", 300, 200, 50, 5000,
            "clear opening of the clamp frame; if omitted: as large as the blank needs")
        { Option = "--frame" },
        Platen = new("platen", "the platen", 290, 190, 50, 5000,
            "what the buck stands on; the base must lie on it; if omitted: not checked")
        { Option = "--platen" };

    public static readonly NumberSetting
        Travel = new("travel", "travel of the former", null, 1, 2000, "how far the former lifts the buck")
        {
            Example = 120,
            Option = "--travel"
        },
        Gap = new("gap", "gap between buck and frame", null, 0, 1000,
            "from buck to frame; if omitted: the height of buck and plates, at least 25 mm")
        {
            Example = 40,
            Source = "Takahashi and Bando, Dental Traumatology 2018",
        },
        BaseGap = new("base-gap", "gap between base and frame", 3, 0, 100,
            "room round the base, which goes through the frame with the sheet over its edge")
        {
            Source = Setting.Practice
        },
        PlugGap = new("plug-gap", "gap round the plug", null, 0, 200,
            "a plug pushes the sheet into a cavity and is this much smaller than its floor; if omitted: no plug")
        { Example = 5 },
        PlugDepth = new("plug-depth", "depth of the plug", null, 1, 2000,
            "how deep the plug goes below the rim of the cavity; if omitted: as far above the floor as plug-gap")
        { Example = 30 },
        Heater = new("heater", "temperature of the heater", 400, 100, 1000,
            "temperature of the heater, degrees C, for the process card")
        {
            Kind = QuantityKind.Number,
            Unit = "degrees C",
            Source = Setting.Practice,
        },
        Grip = new("grip", "grip of the clamp frame", 15, 0, 100, "width that the frame holds on each edge")
        {
            Source = Setting.Practice,
        },
        Lip = new("lip", "seal lip", 12, 0, 100, "width that the seal needs beside the grip") { Source = Setting.Practice };

    public static readonly FlagSetting HeaterBelow = new("heater-below", false, "true for a second heater under the sheet");

    public static readonly SettingTable Table =
        new("former", "The former", [Frame, Platen, Travel, Gap, BaseGap, PlugGap, PlugDepth, Heater, HeaterBelow, Grip, Lip]);
}
