using BuckGen.Design.Bucks;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;

namespace BuckGen.Design.Specs;

/// <summary>The settings of the buck.</summary>
internal static class BuckSettings
{
    public static readonly NumberSetting Shrinkage = new("shrinkage", "shrinkage", null, 0, 10,
        "shrinkage to allow for; if omitted: the plastic's own when the drawing shows the part, else none")
    {
        Kind = QuantityKind.Share,
        Example = 0.5,
        Option = "--shrinkage",
    };

    public static readonly SettingTable Table = new("buck", "",
        [
            StackSettings.Depth, StackSettings.Draft, SideSettings.EdgeRadius, StackSettings.Kind, StackSettings.OutlineAt,
            StackSettings.Corners, StackSettings.MitreLimit, StackSettings.Steps, Shrinkage, StackSettings.DepthTolerance,
            StackSettings.BlockMargin, StackSettings.LetterHeight, OutlineSettings.Chord, StackSettings.Stock,
        ])
    { IsSet = true };
}
