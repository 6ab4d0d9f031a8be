using BuckGen.Geometry.Offsetting;
using BuckGen.Settings;

namespace BuckGen.Design.Bucks;

/// <summary>The settings of the stack of wood.</summary>
internal static class StackSettings
{
    public static readonly TextSetting Stock = new("stock", "[\"mdf-12\"]",
        "boards by their id in the catalog or by their thickness, in place of [[stock]] or beside it")
    { Option = "--stock" };

    public static readonly NumberSetting
        Depth = new("depth", "depth", null, 0, 1000, "depth of the part")
        {
            AboveMin = true,
            Example = 36,
            IsSet = true,
            IsNeeded = true,
            Option = "--depth"
        },
        Draft = new("draft", "draft", 5, 0, 45, "slope of the walls; 5 is a safe start for a male buck")
        {
            Kind = QuantityKind.Angle,
            IsSet = true,
            Option = "--draft",
            Source = Setting.Practice,
            Because = "below 0 the wall leans out over its foot, an undercut, and the part locks on the buck",
        },
        // In code a wall may lean the wrong way, so that a design program can show what a finding says of it.
        AnyDraft = Draft with { Min = -45, Because = "" },
        MitreLimit =
            new("mitre-limit", "mitre limit", CornerJoin.Mitre.MitreLimit, 1, 20, "how far a mitre may reach, times the offset")
            {
                Kind = QuantityKind.Number,
                Option = "--mitre-limit",
            },
        DepthTolerance =
            new("depth-tolerance", "depth tolerance", 0.5, 0, 50,
                "how far the stack may miss the depth before more layers are used")
            {
                Source = Setting.Practice,
            },
        BlockMargin = new("block-margin", "block margin", 25, 0, 500, "female only: wood round the cavity")
        {
            AboveMin = true,
            Option = "--block-margin",
            Source = Setting.Practice,
        },
        LetterHeight = new("letter-height", "letter height", 8, 2, 50, "height of the lettering on the layers; 0: no lettering")
        {
            ZeroIsNone = true,
        };

    public static readonly ChoiceSetting<BuckKind> Kind =
        new("kind", BuckKind.Male, "male: the sheet goes over it; female: into it")
        {
            IsSet = true,
            Option = "--kind",
        };

    public static readonly ChoiceSetting<OutlineAt> OutlineAt = new("outline-at", Bucks.OutlineAt.Face,
        "where the drawing is to size: face (top, rim) or base (foot, floor)")
    { IsSet = true, Option = "--outline-at" };

    public static readonly ChoiceSetting<Corners> Corners =
        new("corners", CornerJoin.Round.Corners, "round or mitre corners of the drafted layers")
        {
            IsSet = true,
            Option = "--corners",
        };

    public static readonly ChoiceSetting<Steps> Steps = new("steps", Bucks.Steps.Outside,
        "outside: sand the steps off; inside: fill them; middle: half and half")
    { IsSet = true, Option = "--steps" };
}
