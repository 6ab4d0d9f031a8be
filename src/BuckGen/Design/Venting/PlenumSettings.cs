using BuckGen.Settings;

namespace BuckGen.Design.Venting;

/// <summary>The settings of the plenum.</summary>
internal static class PlenumSettings
{
    public static readonly TextSetting
        Stock = new("stock", "\"MDF 12\"", "the board it is cut from") { IsNeeded = true },
        Port = new("port", "[\"100mm\", \"60mm\"]", "place of the port, in the drawing; if omitted: the middle of the base");

    public static readonly ChoiceSetting<PlenumKind> Kind = new("kind", PlenumKind.Channels, "channels to the port, or feet")
    {
        Option = "--plenum",
    };

    public static readonly NumberSetting
        Width = new("width", "width of plenum channels and feet", 10, 3, 100,
            "width of a channel or a foot")
        { Source = Setting.Practice },
        PortDiameter =
            new("port-diameter", "diameter of the port", 25, 3, 200,
                "diameter of the opening over the port")
            { Source = Setting.Practice },
        MaxBow = new("max-bow", "maximum bow of the base", 0.3, 0.01, 5,
            "how far the base may bow under the vacuum")
        { Source = Setting.Practice },
        BaseThickness = new("", "thickness of the base over a plenum", null, 2.5, 45, "thickness of the plate over the plenum");

    public static readonly SettingTable Table =
        new("plenum", "The layer under the base that leads the air away (it needs [base])",
        [Stock, Kind, Width, Port, PortDiameter, MaxBow]);
}
