using BuckGen.Intake.Catalogs;
using Xunit;

namespace BuckGen.Tests.Intake.Catalogs;

public class CatalogFileTests
{
    [Fact]
    public void A_stock_of_ones_own_is_added_at_the_end()
    {
        var catalog = Read("""
            [[stock]]
            id = "oak-10"
            name = "oak 10"
            thickness = "3/8in"
            source = "measured"
            """);

        Assert.Equal([.. Catalog.BuiltIn.Stock.Select(s => s.Id), "oak-10"], catalog.Stock.Select(s => s.Id));
        var oak = catalog.Stock[^1];
        Assert.Equal("oak 10", catalog.FindStock("Oak-10")!.Name);
        Assert.Equal(9.525, catalog.FindStock("oak-10")!.Thickness, 1e-9);
        Assert.Equal((null, null, null), (oak.Lower, oak.Kerf, oak.Laser));
        Assert.Equal("measured", oak.Source);
        Assert.Equal(Catalog.BuiltIn.Plastic, catalog.Plastic);
    }

    [Fact]
    public void An_entry_replaces_the_one_with_its_id_at_its_place()
    {
        var catalog = Read("""
            [[stock]]
            id = "MDF-12"
            name = "my MDF"
            thickness = { value = 11.8, source = "measured" }
            """);

        Assert.Equal(Catalog.BuiltIn.Stock.Length, catalog.Stock.Length);
        var mdf = catalog.Stock[3];
        Assert.Equal(("MDF-12", "my MDF", 11.8), (mdf.Id, mdf.Name, mdf.Thickness));
        Assert.Single(mdf.Figures);
        // Nothing else has changed, least of all the catalog built in.
        Assert.Equal(12, Catalog.BuiltIn.FindStock("mdf-12")!.Thickness);
    }

    [Fact]
    public void Like_takes_what_is_not_given_with_its_sources()
    {
        var catalog = Read("""
            [sources]
            sheet = "data sheet of the supplier"

            [[plastic]]
            id = "petg-x"
            like = "petg"
            shrinkage = { value = 0.4, source = ["sheet", "and a trial"] }

            [[plastic]]
            id = "petg-y"
            name = "another"
            like = "petg-x"
            source = "sheet"
            draft-male = "6deg"
            """);

        var (petg, x, y) = (catalog.FindPlastic("petg")!, catalog.FindPlastic("petg-x")!, catalog.FindPlastic("petg-y")!);
        Assert.Equal(("PETG", new FigureRange(0.4, 0.4)), (x.Name, x.Shrinkage));
        Assert.Equal(["data sheet of the supplier", "and a trial"], x.Find("shrinkage")!.Sources);
        Assert.Equal(petg.Find("density"), x.Find("density"));
        Assert.Equal(("another", 0.4, 6.0), (y.Name, y.Shrinkage.High, y.DraftMale));
        Assert.Equal(["data sheet of the supplier"], y.Find("draft-male")!.Sources);
        Assert.Equal(petg.Figures.Length, y.Figures.Length);
    }

    [Fact]
    public void An_empty_file_changes_nothing() =>
        Assert.Equal((Catalog.BuiltIn.Stock, Catalog.BuiltIn.Plastic), (Read("# nothing yet").Stock, Read("").Plastic));

    [Fact]
    public void A_catalog_can_be_read_onto_another()
    {
        var first = Read("[[stock]]\nid = \"a\"\nname = \"A\"\nthickness = 3\nsource = \"measured\"");
        var second = CatalogFile.Read("[[stock]]\nid = \"b\"\nlike = \"a\"", "second.toml", first);

        Assert.Equal(3, second.FindStock("b")!.Thickness);
        Assert.Equal(first.Stock.Length + 1, second.Stock.Length);
    }

    [Theory]
    [InlineData("thickness = 3", "line 4", "\"thickness\" has no source; write thickness = { value = 3, source = \"...\" }")]
    [InlineData("thickness = { source = \"s s\" }", "line 4", "\"thickness\" has no value")]
    [InlineData("thickness = { value = 3, sauce = \"s\" }", "line 4", "\"thickness\" has \"sauce\", which is not known")]
    [InlineData("thickness = { value = 3, source = 4 }", "line 4", "the source of \"thickness\" must be text")]
    [InlineData("thickness = { value = 3, source = [] }", "line 4", "the source of \"thickness\" must be text")]
    [InlineData("source = \"m\"", "line 1", "\"thickness\" is missing: the real thickness")]
    [InlineData("source = \"m\"\nthickness = 300", "line 5", "\"thickness\" is 300; it must be from 0.2 to 100 mm")]
    [InlineData("source = \"m\"\nthickness = \"3deg\"", "line 5", "\"thickness\" is \"3deg\"; it must be a number of mm")]
    [InlineData("source = \"m\"\nthickness = [3, 4]", "line 5", "\"thickness\" is [3, 4]; it must be a number of mm")]
    [InlineData("source = \"m\"\nthickness = true", "line 5", "\"thickness\" is True; it must be a number of mm")]
    [InlineData("source = \"m\"\nthickness = nan", "line 5", "it must be")]
    [InlineData("source = \"m\"\nthickness = 3\ndensity = [700, 600]", "line 6", "the smaller number must come first")]
    [InlineData("source = \"m\"\nthickness = 3\ndensity = [700, 750, 800]", "line 6", "or two in brackets")]
    [InlineData("source = \"m\"\nthickness = 3\nlower = 3.1", "line 5", "\"thickness\" is 3, below \"lower\", which is 3.1")]
    [InlineData("source = \"m\"\nthickness = 3\nlaser = \"maybe\"", "line 6",
        "\"laser\" is \"maybe\"; it must be \"yes\" or \"no\" or \"ask\"")]
    [InlineData("source = \"m\"\nthickness = 3\ncaution = 7", "line 6", "\"caution\" is 7; it must be text")]
    [InlineData("source = \"m\"\nthickness = 3\ncolour = \"red\"", "line 6",
        "in [[stock]] \"oak\" \"colour\" is not known; known here: caution, conductivity, cut-feed")]
    [InlineData("source = \"m\"\nthickness = 3\nthickness = 4", "line 6", "thickness")]
    [InlineData("source = \"m\"\nlike = \"elm\"", "line 5",
        "\"like\" is \"elm\", but no [[stock]] above and no built-in one has that id")]
    [InlineData("source = \"m\"\nlike = \"petg\"", "line 5", "\"like\" is \"petg\"")]
    public void A_wrong_figure_is_refused_with_file_line_and_key(string wrong, string line, string says) =>
        AssertRefused($"[[stock]]\nid = \"oak\"\nname = \"oak\"\n{wrong}", line, says);

    [Theory]
    [InlineData("[stock]\nid = \"a\"", "line 1",
        "the table [stock] is not known; known are [[stock]], [[plastic]] and [sources]")]
    [InlineData("\n[[metal]]\nid = \"a\"", "line 2", "the table [[metal]] is not known")]
    [InlineData("colour = 3", "line 1", "\"colour\" is not known; known here: tables")]
    [InlineData("[[stock]]\nname = \"a\"", "line 1", "\"id\" is missing")]
    [InlineData("[[stock]]\nid = \"3mm\"\nname = \"a\"", "line 2", "\"id\" must begin with a letter")]
    [InlineData("[[stock]]\nid = \"a b\"\nname = \"a\"", "line 2", "hold only letters")]
    [InlineData("[[stock]]\nid = \"a\"", "line 1", "\"name\" is missing")]
    [InlineData("[[stock]]\nid = \"a\"\nlike = \"mdf-3\"\n[[stock]]\nid = \"A\"\nlike = \"mdf-3\"", "line 5",
        "\"A\" is given twice")]
    [InlineData("[[plastic]]\nid = \"a\"\nlike = \"abs\"\nsource = \"m\"\nforming-normal = [120, 150]", "line 5",
        "below \"forming-lower\", which is 127")]
    [InlineData("[[plastic]]\nid = \"a\"\nlike = \"abs\"\nsource = \"m\"\nmin-draft-male = 8", "line 1",
        "\"draft-male\" is 4, below \"min-draft-male\"")]
    [InlineData("[sources]\na = 3", "line 2", "\"a\" must be text")]
    [InlineData("[[stock]\nid = 3", "line 1", "")]
    [InlineData("[[stock]]\nid = \"a", "line 2", "")]
    public void What_is_not_understood_is_refused_with_its_line(string text, string line, string says) =>
        AssertRefused(text, line, says);

    private static void AssertRefused(string text, string line, string says)
    {
        var message = Assert.Throws<CatalogException>(() => Read(text)).Message;

        Assert.StartsWith($"my.toml, {line}: ", message);
        Assert.Contains(says, message);
        Assert.EndsWith(".", message);
        Assert.DoesNotContain('\n', message);
    }

    private static Catalog Read(string text) => CatalogFile.Read(text, "my.toml");
}
