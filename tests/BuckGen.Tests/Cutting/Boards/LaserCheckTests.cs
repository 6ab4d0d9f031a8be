using BuckGen.Cutting.Boards;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Intake.Catalogs;
using Xunit;

namespace BuckGen.Tests.Cutting.Boards;

/// <summary>What a laser may cut follows from the words of a board's name, and from its catalog entry if it has one.</summary>
public class LaserCheckTests
{
    /// <summary>
    /// Lists of prohibited materials of university workshops; the rest of the words common practice, no source.
    /// </summary>
    [Theory]
    [InlineData("PVC vinyl", "it gives off hydrogen chloride, which harms lungs and machine")]
    [InlineData("leatherette", "it gives off chlorinated fumes")]
    [InlineData("ABS", "it burns and gives off hydrogen cyanide")]
    [InlineData("PC polycarbonate", "it chars and flames")]
    [InlineData("PETG PP polypropylene", "it melts and burns")]
    [InlineData("HIPS polystyrene styrene HDPE polyethylene", "it melts, drips and burns")]
    [InlineData("foam", "foams catch fire")]
    [InlineData("fibreglass fiberglass carbon", "its resin and dust are harmful")]
    public void Words_of_harmful_materials_are_refused_with_the_reason(string words, string reason)
    {
        foreach (var name in words.Split(' ')
            .SelectMany(w => (string[])[$"{w} 3", $"white {w.ToLowerInvariant()}", $"birch-{w}"]))
        {
            var finding = Check(new(name, 3))!;
            Assert.Equal(("laser-never", Severity.Error), (finding.Id, finding.Severity));
            Assert.Equal($"\"{name}\" must never be cut with a laser: {reason}.", finding.Message);
            Assert.Equal("Cut it with a router or a saw, or use another stock.", finding.Remedy);
            Assert.Equal("lists of prohibited materials of university workshops", finding.Source);
            Assert.Null(LaserCheck.Run(new(name, 3), new(Machine.Router)));
        }
    }

    [Theory]
    [InlineData("mdf hdf ply plywood wood board hardboard chipboard birch poplar oak beech pine spruce maple walnut cherry")]
    [InlineData("lime basswood balsa bamboo cork card cardboard paper acrylic pmma")]
    public void Wood_paper_and_acrylic_may_be_cut(string words) =>
        Assert.All(words.Split(' '), w => Assert.Null(Check(new($"Best {w.ToUpperInvariant()} 6", 6))));

    [Theory]
    [InlineData("6 mm")]
    [InlineData("6in")]
    [InlineData("12")]
    public void A_bare_thickness_says_nothing_of_the_material(string name) =>
        Assert.Equal(name == "6in", Check(new(name, 6)) is not null);

    [Fact]
    public void What_is_unknown_is_an_error_with_the_way_out()
    {
        var finding = Check(new("mystery panel", 6))!;
        Assert.Equal(("laser-unknown", Severity.Error, "common practice, no source"),
            (finding.Id, finding.Severity, finding.Source));
        Assert.Equal("It is not known what \"mystery panel\" gives off in a laser.", finding.Message);
        Assert.Contains("such as \"MDF 6\"", finding.Remedy, StringComparison.Ordinal);
        Assert.Contains("ask its supplier", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void The_catalog_gives_its_reason_and_its_sources()
    {
        var never = Check(Stock.FromCatalog(Catalog.BuiltIn.FindStock("tooling-board-25")!))!;
        Assert.Equal(("laser-never", Severity.Error), (never.Id, never.Severity));
        Assert.EndsWith(
            "must never be cut with a laser: polyurethane chars and gives isocyanates, which the laser must not make.",
            never.Message, StringComparison.Ordinal);
        Assert.Equal("Cut it with a router or a saw, or use another stock.", never.Remedy);
        Assert.False(string.IsNullOrEmpty(never.Source));

        var ask = Check(Stock.FromCatalog(Catalog.BuiltIn.FindStock("birch-ply-6.5")!))!;
        Assert.Equal(("laser-ask", Severity.Warning), (ask.Id, ask.Severity));
        Assert.StartsWith("Whether a laser may cut \"", ask.Message, StringComparison.Ordinal);
        Assert.EndsWith("depends on its make: some forbid it: vapour of the glue fogs the lens, and formaldehyde forms.",
            ask.Message, StringComparison.Ordinal);
        Assert.Equal("Ask the supplier of the board and the maker of the laser first.", ask.Remedy);
        Assert.Contains("; most other laboratories allow it (common practice, no source)", ask.Source, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no", "\"grey panel\" must never be cut with a laser.")]
    [InlineData("ask", "Whether a laser may cut \"grey panel\" depends on its make.")]
    public void A_board_of_ones_own_needs_no_reason(string laser, string message)
    {
        var catalog = CatalogFile.Read($"""
            [[stock]]
            id = "panel"
            name = "grey panel"
            thickness = 3
            laser = "{laser}"
            source = "measured"
            """, "my.toml");

        Assert.Equal((message, "measured"),
            (Check(Stock.FromCatalog(catalog.FindStock("panel")!))!.Message,
                Check(Stock.FromCatalog(catalog.FindStock("panel")!))!.Source));
    }

    private static Finding? Check(Stock stock) => LaserCheck.Run(stock, new());
}
