using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Intake.Outlines;

/// <summary>The settings for reading an outline.</summary>
internal static class OutlineSettings
{
    public static readonly TextSetting
        File = new("file", "\"outline.svg\"", "the drawing, SVG or DXF, beside this file") { IsSet = true, IsNeeded = true },
        Units = new("units", "\"mm\"",
            "only when the drawing is wrong or silent about its unit: mm, cm, m, in, ft")
        { Option = "--units" },
        Layers = new("layers", "[\"OUTLINE\"]", "only these layers of a DXF") { Option = "--layers" };

    public static readonly NumberSetting
        Join = new("join", "joining distance", Tolerance.Default.Join, 0, 10,
            "ends of drawn lines nearer than this are joined")
        { Option = "--join" },
        MinLoopWidth = new("min-loop-width", "minimum width of a loop", OutlineOptions.Default.MinLoopWidth, 0, 10,
            "closed loops narrower than this are left out, such as specks below the kerf")
        { Option = "--min-loop-width" },
        Chord = new("tolerance", "tolerance", Tolerance.Default.Chord, 0.0005, 1,
            "how near lines and arcs follow drawn curves")
        { Option = "--tolerance" },
        Coincident =
            new("", "distance of coincident points", Tolerance.Default.Coincident, 0, 0.01,
                "points nearer than this are one")
            { AboveMin = true };

    public static readonly SettingTable Table = new("outline", "", [File, Units, Layers, Join, MinLoopWidth]) { IsSet = true };
}
