using BuckGen.Design.Bucks;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Catalogs;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Intake.Catalogs;

public class CatalogTests
{
    public static TheoryData<string> Stocks => [.. Catalog.BuiltIn.Stock.Select(s => s.Id)];

    public static TheoryData<string> Plastics => [.. Catalog.BuiltIn.Plastic.Select(p => p.Id)];

    [Fact]
    public void The_usual_stocks_and_plastics_are_there()
    {
        string[] stocks =
        [
            "mdf-3", "mdf-6", "mdf-9", "mdf-12", "mdf-18", "birch-ply-4", "birch-ply-6.5", "birch-ply-9", "birch-ply-12",
            "birch-ply-15", "birch-ply-18",
            "acrylic-3", "acrylic-5", "acrylic-6", "acrylic-8", "acrylic-10", "tooling-board-25", "tooling-board-50",
        ];
        Assert.Equal(stocks, Catalog.BuiltIn.Stock.Select(s => s.Id));
        Assert.Equal(["petg", "abs", "hips", "pmma", "pc", "pvc", "pp", "hdpe"], Catalog.BuiltIn.Plastic.Select(p => p.Id));
    }

    [Fact]
    public void Every_figure_has_a_source_in_words()
    {
        var figures = Catalog.BuiltIn.Stock.Concat<CatalogEntry>(Catalog.BuiltIn.Plastic).SelectMany(e => e.Figures).ToArray();

        Assert.InRange(figures.Length, 350, 2000);
        Assert.All(figures, f =>
        {
            Assert.NotEmpty(f.Sources);
            // A word of [sources] that is not there would stand here as it is: too short for a source, and with no space.
            Assert.All(f.Sources, s => Assert.True(s == "from memory" || (s.Length > 15 && s.Contains(' ')), $"{f.Key}: {s}"));
            Assert.True(f.Range is not null ^ f.Text is not null, f.Key);
        });
    }

    [Theory]
    [MemberData(nameof(Stocks))]
    public void A_stock_has_sensible_figures(string id)
    {
        var stock = Assert.IsType<CatalogStock>(Catalog.BuiltIn.FindEntry(id));

        Assert.NotEmpty(stock.Name);
        // The name tells the nominal thickness.
        var nominal = double.Parse(id[(id.LastIndexOf('-') + 1)..], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(stock.Thickness, nominal * 0.95, nominal * 1.05);
        Assert.InRange(stock.Thickness, stock.Lower!.Value, stock.Upper!.Value);
        Assert.InRange(stock.Upper.Value - stock.Lower.Value, 0.1, 3);
        Assert.InRange(stock.Density!.Value.Middle, 400, 1300);
        Assert.Equal(id.StartsWith("birch", StringComparison.Ordinal), stock.GrainShows);
        Assert.Equal(Suitability.Yes, stock.Router);
        Assert.NotNull(stock.Laser);
        Assert.Equal(stock.Laser == Suitability.No, stock.Kerf is null);
        if (stock.Kerf is { } kerf) Assert.InRange(kerf, 0.1, 0.4);
        Assert.NotNull(stock.Caution);
        Assert.NotNull(stock.Find("dust"));
        new Stock(stock.Name, stock.Thickness).Validate();
    }

    [Theory]
    [MemberData(nameof(Plastics))]
    public void A_plastic_has_sensible_figures(string id)
    {
        var plastic = Catalog.BuiltIn.FindPlastic(id)!;

        Assert.True(plastic.SetTemperature < plastic.FormingLower && plastic.FormingLower <= plastic.FormingNormal!.Value.Low
            && plastic.FormingNormal.Value.High < plastic.FormingUpper);
        Assert.True(plastic.Shrinkage.Low > 0 && plastic.Shrinkage.High <= 5);
        Assert.True(plastic.MinDraftMale <= plastic.DraftMale && plastic.MinDraftFemale <= plastic.DraftFemale);
        Assert.InRange(plastic.DraftMale, plastic.DraftMalePublished!.Value.Low, plastic.DraftMalePublished.Value.High);
        Assert.InRange(plastic.DraftFemale!.Value, plastic.DraftFemalePublished!.Value.Low,
            plastic.DraftFemalePublished.Value.High);
        Assert.InRange(plastic.MaxVentDiameter(1)!.Value, 0.4, plastic.MaxVentDiameter(4)!.Value);
        Assert.InRange(plastic.Density!.Value.Middle, 880, 1500);
        Assert.InRange(plastic.Expansion!.Value.Middle, 40, 120);
        Assert.All((string[])["drying", "laser-reason", "fume", "food", "caution"],
            key => Assert.NotNull(plastic.Find(key)?.Text));
        Assert.Contains("law", plastic.Find("food")!.Text);
        // All plastics even out at about a tenth of a square millimetre a second (Throne, from memory).
        Assert.InRange(plastic.Heat(20, 150)!.Diffusivity, 0.05, 0.25);
    }

    /// <summary>
    /// A part that is taken off warmer than its heat deflection temperature bends under its own weight and under the air that
    /// lifts it. Crystals hold plastics that melt, so their limit is that under the lighter load.
    /// </summary>
    [Theory]
    [MemberData(nameof(Plastics))]
    public void A_part_is_taken_off_no_warmer_than_the_softest_grade_keeps_its_shape(string id)
    {
        var plastic = Catalog.BuiltIn.FindPlastic(id)!;
        var (loaded, light) = (plastic.HeatDeflection!.Value, plastic.HeatDeflectionLight!.Value);

        var limit = plastic.MeltingHeat is null ? loaded : light;
        Assert.InRange(plastic.SetTemperature!.Value, 40, limit.Low);
        // Four times the load never bends a bar later.
        Assert.True(loaded.Low <= light.Low && loaded.High <= light.High);
        Assert.Equal(id is "pp" or "hdpe", plastic.MeltingHeat is not null);
    }

    [Fact]
    public void Boards_conduct_as_wood_and_plastics_do()
    {
        Assert.All(Catalog.BuiltIn.Stock, s =>
        {
            // Root of conductivity, density and heat capacity, J/(m²·K·√s): softwood about 300, solid plastics about 600.
            Assert.InRange(Math.Sqrt(s.Conductivity!.Value.Low * s.Density!.Value.Low * s.HeatCapacity!.Value.Low), 150, 600);
            Assert.InRange(Math.Sqrt(s.Conductivity.Value.High * s.Density.Value.High * s.HeatCapacity.Value.High), 350, 650);
        });
    }

    [Fact]
    public void Melting_counts_in_the_heat_that_a_crystalline_plastic_takes()
    {
        var hdpe = Catalog.BuiltIn.FindPlastic("hdpe")!;

        // 2250 J/(kg·K) and 205 kJ/kg over 120 degrees: the middles of the catalog's ranges.
        Assert.Equal(2250 + 205_000 / 120.0, hdpe.Heat(20, 140)!.HeatCapacity, 1e-9);
        Assert.Equal((hdpe.Conductivity!.Value.Middle, hdpe.Density!.Value.Middle),
            (hdpe.Heat(20, 140)!.Conductivity, hdpe.Heat(20, 140)!.Density));
        Assert.Throws<ArgumentOutOfRangeException>(() => hdpe.Heat(20, 20));
    }

    [Fact]
    public void Only_acrylic_of_the_plastics_goes_into_the_laser_and_PVC_never()
    {
        // Hydrogen chloride: University of Illinois Chicago and University of Texas at Austin, lists for their lasers.
        Assert.Equal(["pmma"], Catalog.BuiltIn.Plastic.Where(p => p.Laser != Suitability.No).Select(p => p.Id));
        Assert.Contains("NEVER for the laser", Catalog.BuiltIn.FindPlastic("pvc")!.Caution);
    }

    [Fact]
    public void Every_word_is_given_once_and_can_be_typed()
    {
        var ids = Catalog.BuiltIn.Stock.Select(s => s.Id).Concat(Catalog.BuiltIn.Plastic.Select(p => p.Id)).ToArray();

        Assert.Equal(ids.Length, ids.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(ids, id => Assert.Matches(@"^[a-z][a-z0-9.]*(-[a-z0-9.]+)*$", id));
    }

    [Fact]
    public void A_stock_is_found_by_its_word_in_any_case()
    {
        Assert.Equal(12, Catalog.BuiltIn.FindStock("MDF-12")!.Thickness);
        Assert.Null(Catalog.BuiltIn.FindStock("cheese-12"));
    }

    [Fact]
    public void Ten_layers_of_MDF_may_be_two_millimetres_off()
    {
        // ±0.2 mm a board (EN 622-1, from memory): ten add up to ±2.0 mm at worst, by chance to 0.2·√10 = ±0.63 mm.
        var mdf = Catalog.BuiltIn.Stock.Single(s => s.Id == "mdf-12");
        var each = (mdf.Upper!.Value - mdf.Lower!.Value) / 2;

        Assert.Equal(2.0, 10 * each, 1e-9);
        Assert.Equal(0.632, each * Math.Sqrt(10), 1e-3);
    }

    [Fact]
    public void Ten_layers_of_birch_ply_sold_as_4_mm_are_38_mm_high()
    {
        // Average 3.8, limits 3.5 to 4.1: a Finnish mill's data sheet.
        var ply = Catalog.BuiltIn.Stock.Single(s => s.Id == "birch-ply-4");
        Assert.Equal((35.0, 41.0), (Math.Round(10 * ply.Lower!.Value, 9), Math.Round(10 * ply.Upper!.Value, 9)));

        var design =
            PlainBuck.Create(Shapes.Rectangle(100, 60),
                PlainBuck.Spec with { Depth = 38, Stock = [Stock.FromCatalog(Catalog.BuiltIn.FindStock("birch-ply-4")!)] });

        Assert.Equal(10, design.Layers.Length);
        Assert.Equal(38, design.Height, 1e-9);
        Assert.Equal(100 + 2 * 38 * PlainBuck.Tan5, design.Widths()[0], 1e-4);
    }
}
