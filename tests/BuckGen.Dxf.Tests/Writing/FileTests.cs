using System.Globalization;
using BuckGen.Dxf.Reading;
using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Writing;

public class FileTests
{
    [Theory]
    [InlineData(DxfVersion.R12, "AC1009")]
    [InlineData(DxfVersion.R2000, "AC1015")]
    public void The_header_names_version_and_millimetres(DxfVersion version, string name)
    {
        var drawing = DxfReader.Read(Drawings.Bytes(Drawings.Panel, version));
        Assert.Equal((name, 4, 1), (drawing.Version, drawing.InsertionUnits, drawing.Measurement));
    }

    [Fact]
    public void Units_of_the_drawing_are_kept_and_named_in_a_comment()
    {
        var tags = Drawings.Tags(Drawings.Panel with { InsertionUnits = 1 }, DxfVersion.R12).ToList();
        Assert.Equal(new DxfTag(999, "UNITS: inches"), tags[0]);
        Assert.Equal(new DxfTag(70, "1"), tags[tags.FindIndex(tag => tag.Value == "$INSUNITS") + 1]);
        Assert.Equal(new DxfTag(70, "0"), tags[tags.FindIndex(tag => tag.Value == "$MEASUREMENT") + 1]);
    }

    [Theory]
    [InlineData(DxfVersion.R12)]
    [InlineData(DxfVersion.R2000)]
    public void Layer_0_and_every_used_layer_are_defined(DxfVersion version)
    {
        var drawing = DxfReader.Read(Drawings.Bytes(Drawings.Panel, version));
        Assert.Equal([new("0"), new("CUT_OUTER", 1), new("CUT_INNER", 5), new DxfLayer("VENT")], drawing.Layers);
    }

    [Fact]
    public void Layer_states_survive()
    {
        DxfLayer[] layers = [new("0", 3), new("A", 5, Off: true), new("B", 2, Frozen: true), new("C", 1, Plotted: false)];
        Assert.Equal(layers,
            DxfReader.Read(Drawings.Bytes(Drawings.Panel with { Layers = [.. layers] }, DxfVersion.R2000)).Layers.Take(4));
    }

    [Fact]
    public void R12_says_which_layers_are_off_or_frozen()
    {
        DxfLayer[] layers = [new("0", 255), new("A", 5, Off: true), new("B", 2, Frozen: true)];
        Assert.Equal(layers,
            DxfReader.Read(Drawings.Bytes(Drawings.Panel with { Layers = [.. layers] }, DxfVersion.R12)).Layers.Take(3));
    }

    [Theory]
    [InlineData(DxfVersion.R12)]
    [InlineData(DxfVersion.R2000)]
    public void A_stated_kind_of_measurement_wins_over_that_of_the_units(DxfVersion version)
    {
        var drawing = Drawings.Panel with { InsertionUnits = 4, Measurement = 0 };
        Assert.Equal(0, DxfReader.Read(Drawings.Bytes(drawing, version)).Measurement);
    }

    [Fact]
    public void R12_has_no_handles_and_no_subclasses() =>
        Assert.DoesNotContain(Drawings.Tags(Drawings.Panel, DxfVersion.R12), tag => tag.Code is 5 or 100 or 330);

    [Fact]
    public void R2000_has_all_sections_and_tables_in_order()
    {
        var tags = Drawings.Tags(Drawings.Panel, DxfVersion.R2000);
        Assert.Equal(["HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS"], NamesAfter(tags, "SECTION"));
        Assert.Equal(
            ["VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS", "APPID", "DIMSTYLE", "BLOCK_RECORD"], NamesAfter(tags, "TABLE"));
    }

    [Fact]
    public void Handles_are_unique_and_below_the_next_free_one()
    {
        var tags = Drawings.Tags(Drawings.Panel, DxfVersion.R2000).ToList();
        var seed = tags.FindIndex(tag => tag.Value == "$HANDSEED") + 1;
        var handles = tags.Where((tag, i) => tag.Code is 5 or 105 && i != seed).Select(tag => Number(tag.Value)).ToList();
        Assert.True(handles.Count > 40);
        Assert.Equal(handles.Count, handles.Distinct().Count());
        Assert.True(handles.Max() < Number(tags[seed].Value));
    }

    [Fact]
    public void Every_pointer_points_to_something()
    {
        var tags = Drawings.Tags(Drawings.Panel, DxfVersion.R2000);
        var handles = tags.Where(tag => tag.Code is 5 or 105).Select(tag => tag.Value).Append("0").ToHashSet();
        Assert.All(tags.Where(tag => tag.Code is 330 or 340 or 350 or 390), tag => Assert.Contains(tag.Value, handles));
    }

    private static IEnumerable<string> NamesAfter(IReadOnlyList<DxfTag> tags, string type) =>
        tags.Zip(tags.Skip(1)).Where(pair => pair.First is { Code: 0 } head && head.Value == type)
            .Select(pair => pair.Second.Value);

    private static int Number(string handle) => int.Parse(handle, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
}
