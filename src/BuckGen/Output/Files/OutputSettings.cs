using BuckGen.Dxf;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Settings;

namespace BuckGen.Output.Files;

/// <summary>The settings of the files that are made.</summary>
internal static class OutputSettings
{
    private static readonly OutputOptions Default = new();

    public static readonly ChoiceSetting<DxfVersion> Dxf =
        new("dxf", Default.DxfVersion, "version of DXF: r12 or r2000") { IsSet = true, Option = "--dxf" };

    public static readonly ChoiceSetting<Paper> Paper =
        new("paper", Default.Paper, "a4 or letter: what templates at full size are printed on") { IsSet = true };

    public static readonly FlagSetting
        Svg = new("svg", Default.Svg, "an SVG beside every DXF") { IsSet = true, Option = "--svg" },
        Model = new("model", Default.Model, "solid models of the buck: STL to print, glTF to look at")
        {
            IsSet = true,
            Option = "--model"
        };

    public static readonly TextSetting Formats =
        new("formats", "[]", "more kinds of cut files; plug-ins give their names") { Option = "--formats" };

    public static readonly SettingTable Table = new("output", "", [Dxf, Svg, Paper, Formats, Model]) { IsSet = true };
}
