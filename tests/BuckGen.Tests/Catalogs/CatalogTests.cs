using BuckGen.Bucks;
using BuckGen.Catalogs;
using BuckGen.Tests.Bucks;
using BuckGen.Tests.Geometry;
using Xunit;

namespace BuckGen.Tests.Catalogs;

public class CatalogTests
{
    [Fact]
    public void Every_sheet_has_a_source_and_sensible_limits()
    {
        Assert.InRange(Catalog.BuiltIn.Stock.Length, 8, 200);
        Assert.All(Catalog.BuiltIn.Stock, s =>
        {
            Assert.True(s.Source.Length > 15, s.Id);
            Assert.NotEmpty(s.Name);
            Assert.True(s.Lower <= s.Thickness && s.Thickness <= s.Upper, s.Id);
            new Stock(s.Name, s.Thickness).Validate();
        });
    }

    [Fact]
    public void Every_plastic_has_a_source_a_caution_and_sensible_figures()
    {
        Assert.InRange(Catalog.BuiltIn.Plastic.Length, 6, 100);
        Assert.All(Catalog.BuiltIn.Plastic, p =>
        {
            Assert.True(p.Source.Length > 15, p.Id);
            Assert.NotEmpty(p.Caution);
            Assert.Equal(2, p.Shrinkage.Length);
            Assert.True(0 < p.Shrinkage[0] && p.Shrinkage[0] <= p.Shrinkage[1] && p.Shrinkage[1] <= 10, p.Id);
            Assert.InRange(p.DraftMale, 0.5, 15);
        });
    }

    [Fact]
    public void PVC_is_never_for_the_laser() =>
        // Hydrogen chloride: common knowledge of every laser shop, no source.
        Assert.Contains("NEVER for the laser", Catalog.BuiltIn.Plastic.Single(p => p.Id == "pvc").Caution);

    [Fact]
    public void Every_word_is_given_once_and_can_be_typed()
    {
        var ids = Catalog.BuiltIn.Stock.Select(s => s.Id).Concat(Catalog.BuiltIn.Plastic.Select(p => p.Id)).ToArray();

        Assert.Equal(ids.Length, ids.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(ids, id => Assert.Matches(@"^[a-z][a-z0-9.]*(-[a-z0-9.]+)*$", id));
    }

    [Fact]
    public void A_sheet_is_found_by_its_word_in_any_case()
    {
        Assert.Equal(12, Catalog.FindStock("MDF-12")!.Thickness);
        Assert.Null(Catalog.FindStock("cheese-12"));
    }

    [Fact]
    public void Ten_layers_of_MDF_may_be_two_millimetres_off()
    {
        // ±0.2 mm a board (EN 622-1, from memory): ten add up to ±2.0 mm at worst, by chance to 0.2·√10 = ±0.63 mm.
        var mdf = Catalog.BuiltIn.Stock.Single(s => s.Id == "mdf-12");
        var each = (mdf.Upper - mdf.Lower) / 2;

        Assert.Equal(2.0, 10 * each, 1e-9);
        Assert.Equal(0.632, each * Math.Sqrt(10), 1e-3);
    }

    [Fact]
    public void Ten_layers_of_birch_ply_sold_as_4_mm_are_38_mm_high()
    {
        // Average 3.8, limits 3.5 to 4.1: a Finnish mill's data sheet.
        var ply = Catalog.BuiltIn.Stock.Single(s => s.Id == "birch-ply-4");
        Assert.Equal((35.0, 41.0), (Math.Round(10 * ply.Lower, 9), Math.Round(10 * ply.Upper, 9)));

        var design = PlainBuck.Of(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Depth = 38, Stock = [Catalog.FindStock("birch-ply-4")!] });

        Assert.Equal(10, design.Layers.Length);
        Assert.Equal(38, design.Height, 1e-9);
        Assert.Equal(100 + 2 * 38 * PlainBuck.Tan5, design.Widths()[0], 1e-4);
    }
}
