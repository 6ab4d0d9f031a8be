using BuckGen.Settings;

namespace BuckGen.Design.Bucks;

/// <summary>The settings of base plate and dowels.</summary>
internal static class BaseSettings
{
    public static readonly TextSetting
        Stock = new("stock", "\"MDF 12\"", "the board it is cut from") { IsNeeded = true },
        Under = new("under", "\"MDF 12\"", "a second plate below it, with the relief bores of the vents");

    public static readonly NumberSetting
        Margin = new("margin", "base margin", new BasePlate(new("", 1)).Margin, 0, 500,
            "how far the plate reaches beyond the foot")
        {
            Option = "--base-margin",
            Source = Setting.Practice,
        };

    public static readonly SettingTable Table = new("base", "A plate under the whole stack", [Stock, Margin, Under]);
}
