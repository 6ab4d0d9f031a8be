using BuckGen.Settings;

namespace BuckGen.Design.Bucks;

/// <summary>The settings of the dowels.</summary>
internal static class DowelSettings
{
    private static readonly DowelSpec Default = new();

    public static readonly NumberSetting
        Diameter = new("diameter", "dowel diameter", Default.Diameter, 1, 50, "diameter of the dowels")
        {
            IsSet = true,
            Option = "--dowel",
            Source = Setting.Practice,
        },
        Fit = new("fit", "dowel fit", Default.Fit, 0, 2, "how much wider than the dowel its hole is")
        {
            IsSet = true,
            Source = Setting.Practice
        },
        Wall = new("wall", "dowel wall", Default.Wall, 0.5, 100, "minimum wood round a hole")
        {
            IsSet = true,
            Source = Setting.Practice
        };

    public static readonly FlagSetting ThroughFace = new("through-face", Default.ThroughFace,
        "true: holes in the top layer too, where the sheet shows them");

    public static readonly SettingTable Table = new("dowels", "", [Diameter, Fit, Wall, ThroughFace]) { IsSet = true };
}
