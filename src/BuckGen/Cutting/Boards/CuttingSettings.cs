using BuckGen.Settings;

namespace BuckGen.Cutting.Boards;

/// <summary>The settings for cutting boards.</summary>
internal static class CuttingSettings
{
    private static readonly CuttingSpec Default = new();

    public static readonly ChoiceSetting<Machine> Machine = new("machine", Default.Machine,
        "laser: paths allow for the kerf; router: paths are the nominal outlines")
    { IsSet = true, Option = "--machine" };

    public static readonly NumberSetting
        Kerf = new("kerf", "kerf", Default.Kerf, 0, 5,
            "full width of the cut; or hole and piece of a square cut once: [\"20.2mm\", \"19.8mm\"]")
        {
            IsSet = true,
            Option = "--kerf",
            Source = Setting.Practice,
        },
        Spacing = new("spacing", "spacing of parts", Default.Spacing, 0, 200, "minimum distance between parts")
        {
            IsSet = true,
            Option = "--spacing",
            Source = Setting.Practice,
        },
        EdgeMargin = new("edge-margin", "edge margin", Default.EdgeMargin, 0, 200, "minimum distance to the edge of the board")
        {
            IsSet = true,
            Option = "--edge-margin",
            Source = Setting.Practice,
        };

    public static readonly SizeSetting Bed = new("bed", "the machine's bed", 600, 400, 50, 10000,
        "size of board that the machine holds; larger boards are cut up first");

    public static readonly SettingTable Table = new("cutting", "", [Machine, Kerf, Spacing, EdgeMargin, Bed]) { IsSet = true };
}
