using BuckGen.Settings;

namespace BuckGen.Design.Forming;

/// <summary>The settings of the plastic sheet.</summary>
internal static class SheetSettings
{
    public static readonly TextSetting Plastic =
        new("plastic", "\"petg\"", "the plastic, by its name in the catalog ('buckgen catalog')")
        {
            Option = "--plastic",
        };

    public static readonly NumberSetting
        Gauge = new("gauge", "gauge of the sheet", 1, 0.1, 25,
            "thickness of the plastic sheet before forming")
        { Option = "--gauge" },
        Price = new("price", "price of a square metre of plastic", null, 0, 1e6,
            "price of a square metre; if omitted: the catalog's")
        {
            Kind = QuantityKind.Number,
            Example = 12.5,
        },
        MinWall = new("min-wall", "minimum wall of the part", null, 0.02, 25,
            "thinnest wall you want; the results state the gauge for it, as a mean and as predicted")
        {
            Example = 0.5,
            Option = "--min-wall"
        };

    public static readonly SizeSetting Sizes =
        new("sizes", "a plastic sheet", 1220, 610, 50, 5000, "sizes in which you can buy the sheet")
        {
            IsList = true,
            Option = "--sheet-size",
        };

    public static readonly SettingTable Table = new("sheet",
        "The plastic sheet. It decides the size of the blank, how far the sheet is drawn and how thick the walls become",
        [Plastic, Gauge, Price, MinWall, Sizes]);
}
