using BuckGen.Settings;

namespace BuckGen.Design.Bucks;

/// <summary>The settings of the stock: the boards a shop has.</summary>
internal static class StockSettings
{
    public static readonly TextSetting
        Name = new("name", "\"MDF 12\"", "what you call it") { IsSet = true },
        Catalog = new("catalog", "\"birch-ply-4\"", "a board of the catalog; values given here override it");

    public static readonly NumberSetting
        Thickness = new("thickness", "thickness", null, 0.2, 100, "measured: \"12 mm\" boards rarely are")
        {
            Example = 12,
            IsSet = true,
            IsNeeded = true
        },
        Price = new("price", "price of a board", null, 0, 1e6,
            "price of a whole board, in your currency, for the cost of the job ([rates])")
        {
            Kind = QuantityKind.Number,
            Example = 9.8,
        },
        CutFeed = new("cut-feed", "cutting feed", null, 1, 1e6, "mm a minute through this board")
        {
            Kind = QuantityKind.Number,
            Unit = "mm a minute",
            Example = 900,
        };

    public static readonly SizeSetting Board =
        new("board", "a board", 600, 400, 10, 10000, "size of a whole board; if omitted: this size is assumed")
        {
            IsSet = true,
            Option = "--board",
            Source = "a common laser bed: " + Setting.Practice,
        };

    public static readonly SettingTable
        Table = new("stock", "The boards you have, each with its measured thickness",
            [Name, Thickness, Board, Price, CutFeed])
        { IsSet = true, IsRepeated = true },
        FromCatalog = new("stock", "A board of the catalog ('buckgen catalog' lists them)", [Catalog]) { IsRepeated = true };
}
