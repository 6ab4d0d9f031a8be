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

    /// <summary>Why a scale beside a size is refused.</summary>
    public const string OneSize = "The outline gets a scale, or a width and height; leave one of them out.";

    public static readonly FlagSetting Unite = new("unite", false,
        "shapes that overlap or touch become one; shapes filled with one colour always do")
    { Option = "--unite" };

    public static readonly ChoiceSetting<Background> Background = new("background", Outlines.Background.Auto,
        "a rectangle behind everything: auto leaves it out where its colour shows that it is a background")
    { Option = "--background" };

    public static readonly NumberSetting
        Width = new("width", "width of the outline", null, 0.1, 100_000,
            "width of the outline, when not as drawn; with a height: as large as fits both")
        { Option = "--width", Example = 300 },
        Height = new("height", "height of the outline", null, 0.1, 100_000, "height of the outline, when not as drawn")
        { Option = "--height", Example = 200 },
        Scale = new("scale", "scale of the outline", null, 1e-6, 1e6, "how many times as large as drawn")
        { Option = "--scale", Kind = QuantityKind.Number, Example = 1 },
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

    public static readonly SettingTable Table = new("outline", "",
        [File, Units, Layers, Width, Height, Scale, Background, Unite, Join, MinLoopWidth])
    { IsSet = true };
}
