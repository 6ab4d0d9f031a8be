using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Reading;

public class StructureTests
{
    [Fact]
    public void The_header_gives_version_and_units()
    {
        var drawing =
            Sample.Read(Sample.Header("9 $ACADVER|1 AC1015|9 $INSUNITS|70 5|9 $MEASUREMENT|70 1|9 $DIMSTYLE|2 Standard"));
        Assert.Equal(("AC1015", 5, 1), (drawing.Version, drawing.InsertionUnits, drawing.Measurement));
    }

    [Fact]
    public void Without_a_header_nothing_is_made_up()
    {
        var drawing = Sample.Read(Sample.Entities(Sample.Line));
        Assert.Equal((null, null, null), (drawing.Version, drawing.InsertionUnits, drawing.Measurement));
    }

    [Fact]
    public void A_file_without_an_entities_section_is_refused() =>
        Assert.Contains(
            "no ENTITIES section",
            Sample.Refused(Sample.Text("0 SECTION|2 HEADER|0 ENDSEC|0 EOF")).Message,
            StringComparison.Ordinal);

    [Fact]
    public void An_empty_entities_section_gives_an_empty_drawing() =>
        Assert.Empty(Sample.Read(Sample.Text("0 SECTION|2 ENTITIES|0 ENDSEC|0 EOF")).Entities);

    [Fact]
    public void Layers_come_with_their_state()
    {
        var drawing = Sample.Read(Sample.Text(
            "0 SECTION|2 TABLES|0 TABLE|2 LAYER|70 3|0 LAYER|2 A|70 0|62 -5|0 LAYER|2 B|70 65|62 2|0 LAYER|2 C|290 0|0 "
            + "ENDTAB|0 ENDSEC|"
            + "0 SECTION|2 ENTITIES|0 ENDSEC|0 EOF"));
        Assert.Equal(
            [new DxfLayer("A", 5, Off: true), new DxfLayer("B", 2, Frozen: true), new DxfLayer("C", Plotted: false)],
            drawing.Layers);
        Assert.Equal("B", drawing.FindLayer("b")?.Name);
    }

    [Fact]
    public void Blocks_come_with_base_point_and_content()
    {
        var drawing = Sample.Read(Sample.Text(
            $"0 SECTION|2 BLOCKS|0 BLOCK|2 Part|10 5|20 6|{Sample.Line}|0 ENDBLK|0 BLOCK|2 Bare|0 ENDBLK|0 ENDSEC|"
            + "0 SECTION|2 ENTITIES|0 ENDSEC|0 EOF"));
        var block = drawing.FindBlock("PART");
        Assert.Equal(new DxfPoint(5, 6), block?.BasePoint);
        Assert.Single(block!.Entities);
        Assert.Empty(drawing.FindBlock("Bare")!.Entities);
        Assert.Null(drawing.FindBlock("none"));
    }

    [Fact]
    public void Unknown_sections_are_skipped() =>
        Assert.Single(Sample.Read(Sample.Text(
            $"0 SECTION|2 OBJECTS|0 DICTIONARY|5 A|0 ENDSEC|0 SECTION|2 ENTITIES|{Sample.Line}|0 ENDSEC|0 EOF")).Entities);

    [Fact]
    public void A_value_line_too_few_is_found_at_the_next_code()
    {
        var text = Sample.Entities(Sample.Line + "|0 CIRCLE|10 1|20 1|40 1")
            .Replace("\n21\n4\n", "\n21\n", StringComparison.Ordinal);
        var exception = Sample.Refused(text);
        Assert.Equal(17, exception.Line);
        Assert.Contains("\"CIRCLE\"", exception.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Something_between_sections_is_refused() =>
        Assert.Equal("LINE", Sample.Refused(Sample.Text("0 LINE|10 1|0 EOF")).EntityType);

    [Fact]
    public void An_entity_newer_than_the_header_is_read_and_noted()
    {
        var drawing = Sample.Read(Sample.Header("9 $ACADVER|1 AC1009", "0 LWPOLYLINE|10 1|20 2|10 3|20 4"));
        Assert.IsType<DxfPolyline>(Assert.Single(drawing.Entities));
        Assert.Equal(DxfNoteKind.NewerThanVersion, Assert.Single(drawing.Notes).Kind);
    }
}
