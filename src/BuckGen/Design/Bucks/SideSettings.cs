using BuckGen.Settings;

namespace BuckGen.Design.Bucks;

/// <summary>The settings of a stretch of the side, and of the edge above it.</summary>
internal static class SideSettings
{
    private const string Overhang =
        "below 0 the wall overhangs and the part locks; list the stretches from the flange to the face";

    public static readonly NumberSetting
        Height = new("height", "height", null, 0, 1000,
            "how high the stretch is; 0: a ledge; left out of one stretch: what the others leave of the depth")
        {
            Example = 20,
        },
        Draft = new("draft", "draft", null, 0, 89, "its slope away from upright")
        {
            Kind = QuantityKind.Angle,
            Example = 12,
            Because = Overhang,
        },
        Inset = new("inset", "inset", null, 0, 500, "how far it leads in on every side, in place of its draft")
        {
            Example = 4,
            Because = Overhang,
        },
        EdgeRadius = new("edge-radius", "edge radius", 0, 0.2, 100,
            "radius of the upper edge, routed or sanded when the buck is glued; 0: a sharp edge")
        {
            ZeroIsNone = true,
            Option = "--edge-radius",
        };

    public static readonly SettingTable Table = new("side",
        "A stretch of the side, from the flange to the face, in place of one draft; for steps, curves and domes several of them",
        [Height, Draft, Inset])
    { IsRepeated = true };
}
