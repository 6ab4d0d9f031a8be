using BuckGen.Settings;

namespace BuckGen.Design.Trimming;

/// <summary>The settings of the flange template and its nest.</summary>
internal static class FlangeSettings
{
    public static readonly TextSetting
        Stock = new("stock", "\"MDF 12\"", "the board both are cut from") { IsNeeded = true },
        Outline = new("outline", "\"rim.svg\"",
            "for drawn: a file beside this one, in the coordinates of the part's drawing; its holes are cut too"),
        OutlineLayers = new("outline-layers", "[\"RIM\"]", "only these layers of a DXF");

    public static readonly ChoiceSetting<FlangeRim> Rim = new("rim", FlangeRim.Offset,
        "offset: follows the part; rectangle: one round all of it; drawn: an outline of its own");

    public static readonly NumberSetting
        Width = new("width", "width of the flange", 15, 0.5, 200,
            "width of the finished flange; of a rectangle or drawing the minimum")
        {
            Option = "--flange",
        },
        Margin = new("margin", "margin of the flange", null, 1, 500, "from the part to a rectangle's sides; left out: the width")
        {
            Example = 20,
        },
        CornerRadius = new("corner-radius", "corner radius of the flange", 0, 0, 500, "of a rectangle"),
        Bushing = new("bushing", "diameter of the bushing", 16, 1, 100,
            "outer diameter of the router's guide bushing, or of the bearing")
        {
            Option = "--bushing",
        },
        Bit = new("bit", "diameter of the bit", 6, 1, 50,
            "diameter of the router's bit; the bushing is no smaller")
        { Option = "--bit" },
        Land = new("land", "land of the nest", 40, 10, 300, "width of the nest's wood round the part")
        {
            Source = Setting.Practice,
        },
        Screw = new("screw", "diameter of the screw holes", 4.5, 1, 20,
            "diameter of the screw holes in the nest")
        { Source = Setting.Practice };

    public static readonly SettingTable Table = new("flange",
        "A template to rout a flange to width, and the nest the part hangs in meanwhile (it needs [sheet])",
        [Stock, Width, Rim, Margin, CornerRadius, Outline, OutlineLayers, Bushing, Bit, Land, Screw]);
}
