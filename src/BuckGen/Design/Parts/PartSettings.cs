using BuckGen.Design.Bucks;
using BuckGen.Settings;

namespace BuckGen.Design.Parts;

/// <summary>The settings of the finished part.</summary>
internal static class PartSettings
{
    /// <summary>The largest difference between the proportions of the drawing and those of the ordered size.</summary>
    public const double MaxStretch = 0.002;

    public static readonly NumberSetting
        Depth = StackSettings.Depth with
        {
            Name = "depth of the part",
            Meaning = "depth of the finished part, after trimming",
            Example = 36,
            IsSet = false,
            IsNeeded = true,
            Option = null,
        },
        CutHeight = new("cut-height", "height of the cut", null, 0, 500,
            "height of a cut without a ring, over the flange's underside; left out: the ring's, or none")
        {
            AboveMin = true,
            Example = 6,
            Option = "--cut-height",
        };

    public static readonly ChoiceSetting<PartSide> Side = new("drawn", PartSide.Inside,
        "what drawing and depth show: the inside or the outside of the finished part")
    { Option = "--part" };

    public static readonly ChoiceSetting<PartEnd> At = new("at", PartEnd.Mouth,
        "where the drawing is to size: at the mouth, which is cut open, or at the closed face")
    { Option = "--part-at" };

    public static readonly SizeSetting Size = new("size", "the part", 120, 80, 1, 5000,
        "the drawing is scaled to this width and height; left out: as drawn")
    { Option = "--part-size" };

    public static readonly SettingTable Table = new("part",
        "The finished part, if drawing and depth are its own; then [buck] has no depth and no outline-at (it needs [sheet])",
        [Depth, Side, At, Size, CutHeight]);
}
