using BuckGen.Settings;

namespace BuckGen.Design.Trimming;

/// <summary>The settings of the face panel.</summary>
internal static class PanelSettings
{
    public static readonly TextSetting
        Stock = new("stock", "\"MDF 12\"", "the board it is cut from") { IsNeeded = true },
        Outline = new("outline", "\"panel.svg\"",
            "for drawn: a file beside this one, in the coordinates of the part's drawing; its holes are cut too"),
        OutlineLayers = new("outline-layers", "[\"PANEL\"]", "only these layers of a DXF");

    public static readonly ChoiceSetting<PanelEdge> Edge = new("edge", PanelEdge.Rectangle,
        "rectangle; offset: the part's outline set off; drawn: an outline of its own");

    public static readonly NumberSetting
        Fit = new("fit", "fit of the panel", null, -2, 10,
            "room on every side; if omitted: from size and thermal growth; below 0: a press fit")
        {
            Example = 0.5,
            Option = "--fit",
        },
        Plane = new("plane", "plane of the panel", 0, 0, 500, "height above the flange at which the part must fit"),
        Margin = new("margin", "margin of the panel", 30, 1, 1000, "from the opening to the panel's edge")
        {
            Option = "--panel-margin",
            Source = Setting.Practice,
        },
        CornerRadius = new("corner-radius", "corner radius of the panel", 0, 0, 500, "of a rectangle"),
        Bit = new("bit", "bit for the panel", 0, 0, 50, "diameter of the bit that cuts the opening; 0 for a laser"),
        Flange = new("flange", "flange behind the panel", 15, 0, 200,
            "flange left on the part, to hold it behind the panel")
        { Source = Setting.Practice };

    public static readonly SettingTable Table = new("panel", "The panel that the part shows through (it needs [sheet])",
        [Stock, Fit, Plane, Edge, Outline, OutlineLayers, Margin, CornerRadius, Bit, Flange]);
}
