using BuckGen.Settings;

namespace BuckGen.Cutting.Seams;

/// <summary>The settings of seams in plates.</summary>
internal static class SeamSettings
{
    public static readonly ChoiceSetting<SeamKind> Kind = new("kind", SeamKind.Keyed,
        "keyed: the edges lock into each other; dowelled: straight, with marks for the drill")
    { Option = "--seams" };

    public static readonly NumberSetting
        Key = new("key", "width of a key", 20, 6, 200, "width of a key at its head; halved where it has no room")
        {
            Source = Setting.Practice,
        },
        Clearance = new("clearance", "clearance of the keys", 0.1, 0, 2, "play round every key")
        {
            Source = Setting.Practice,
        },
        Distance = new("distance", "distance of a seam", 5, 1, 200,
            "minimum distance from a seam to islands, openings, vents and dowels")
        {
            Source = Setting.Practice,
        },
        Bit = new("bit", "bit for the keys", 0, 0, 50, "diameter of the bit that cuts the keys; 0 for a laser");

    public static readonly SettingTable Table = new("seams",
        "Plates and panels larger than bed or board, cut in pieces; without this table they are an error",
        [Kind, Key, Clearance, Distance, Bit]);
}
