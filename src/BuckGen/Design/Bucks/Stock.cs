using BuckGen.Intake.Catalogs;
using BuckGen.Quantities;

namespace BuckGen.Design.Bucks;

/// <summary>What the shop cuts from: boards of one material, thickness and size.</summary>
/// <param name="Name">What the shop calls it: "MDF 12".</param>
/// <param name="Thickness">Measured thickness, mm, 0.2 to 100; not the nominal one.</param>
/// <param name="BoardWidth">Width of a whole board, mm.</param>
/// <param name="BoardHeight">Height of a whole board, mm.</param>
public sealed record Stock(string Name, double Thickness, double BoardWidth = Stock.UsualWidth,
    double BoardHeight = Stock.UsualHeight)
{
    /// <summary>
    /// Width assumed when the size of the boards is not given, mm: a common laser bed (common practice, no source).
    /// </summary>
    public const double UsualWidth = 600;

    /// <summary>Height assumed when the size of the boards is not given, mm.</summary>
    public const double UsualHeight = 400;

    /// <summary>True when the size of its boards was not stated; a part that does not fit is then no error.</summary>
    public bool SizeIsAssumed { get; init; }

    /// <summary>What is known about its material; null when the material is not given.</summary>
    public CatalogStock? Material { get; init; }

    /// <summary>True when its thickness is the catalog's average and was not measured.</summary>
    public bool ThicknessIsAssumed { get; init; }

    /// <summary>Price of a whole board, in the shop's money; null when not given.</summary>
    public double? Price { get; init; }

    /// <summary>How fast the machine cuts it, mm a minute; null when not given.</summary>
    public double? CutFeed { get; init; }

    /// <summary>A stock of the catalog, its thickness and size not measured.</summary>
    /// <param name="material">The material.</param>
    public static Stock FromCatalog(CatalogStock material)
    {
        ArgumentNullException.ThrowIfNull(material);
        return new(material.Name, material.Thickness)
        {
            SizeIsAssumed = true,
            Material = material,
            ThicknessIsAssumed = true,
            Price = material.Price,
            CutFeed = material.CutFeed,
        };
    }

    /// <summary>
    /// A stock as a command line or a job names it: by its thickness, "12mm", or by its id in the catalog, "mdf-12"; null for
    /// anything else.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="catalog">The catalog.</param>
    public static Stock? FromText(string text, Catalog catalog)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(catalog);
        return QuantityText.TryLength(text, out var thickness)
            ? new Stock(FormattableString.Invariant($"{thickness:0.###} mm"), thickness) { SizeIsAssumed = true }
            : catalog.FindStock(text) is { } known ? FromCatalog(known) : null;
    }

    /// <summary>The words of its name that say what it is made of; none for a bare thickness.</summary>
    internal IEnumerable<string> MaterialWords =>
        Name.Split([' ', '-', '_', '/', ',', '.', '(', ')', '+'], StringSplitOptions.RemoveEmptyEntries)
        .Where(w => !w.All(char.IsAsciiDigit) && w is not ("mm" or "in"));

    internal void Validate()
    {
        var owner = $" of \"{Name}\"";
        StockSettings.Thickness.Require(Thickness, owner);
        StockSettings.Board.Require(BoardWidth, BoardHeight, owner);
        StockSettings.Price.Require(Price, owner);
        StockSettings.CutFeed.Require(CutFeed, owner);
    }
}
