using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Reading;

public class EntityTests
{
    [Fact]
    public void A_line_is_read_with_its_common_values()
    {
        var line = Sample.ReadOne<DxfLine>("0 LINE|21 4|11 3|20 2|10 1|30 5|8 CUT|62 3|60 1|67 1|210 0|220 0|230 -1");
        Assert.Equal(
            new DxfLine(new(1, 2, 5), new(3, 4))
            {
                Layer = "CUT",
                Line = 5,
                Colour = 3,
                Invisible = true,
                PaperSpace = true,
                Extrusion = new(0, 0, -1),
            },
            line);
    }

    [Fact]
    public void Defaults_are_layer_0_and_the_colour_of_the_layer()
    {
        var line = Sample.ReadOne<DxfLine>("0 LINE|10 1|20 2|11 3|21 4|62 256");
        Assert.Equal(("0", null, DxfPoint.UnitZ), (line.Layer, line.Colour, line.Extrusion));
    }

    [Fact]
    public void Circle_arc_and_point_are_read()
    {
        var entities = Sample.Read(Sample.Entities(
            "0 CIRCLE|10 1|20 2|40 0|0 ARC|10 1|20 2|40 3|50 350|51 370|0 POINT|10 7|20 8")).Entities;
        Assert.Equal(new DxfCircle(new(1, 2), 0) { Line = 5 }, entities[0]);
        Assert.Equal(new DxfArc(new(1, 2), 3, 350, 370) { Line = 13 }, entities[1]);
        Assert.Equal(new DxfPointEntity(new(7, 8)) { Line = 25 }, entities[2]);
    }

    [Theory]
    [InlineData("0 LINE|10 1|20 2|11 3", "21")]
    [InlineData("0 CIRCLE|10 1|20 2", "40 (radius)")]
    [InlineData("0 ARC|10 1|20 2|40 3|50 0", "51 (end angle)")]
    [InlineData("0 POINT|10 1", "20")]
    [InlineData("0 ELLIPSE|10 1|20 2|40 1", "11")]
    [InlineData("0 INSERT|10 1|20 2", "2 (name of the block)")]
    [InlineData("0 LWPOLYLINE|10 1|20 2|10 3", "20")]
    public void A_missing_value_is_refused_by_its_code(string tags, string code)
    {
        var exception = Sample.RefusedEntity(tags);
        Assert.Equal(5, exception.Line);
        Assert.Contains(code, exception.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("-0.5")]
    [InlineData("1e9")]
    public void An_ellipse_of_an_impossible_ratio_is_named(string ratio)
    {
        var exception = Sample.RefusedEntity($"0 ELLIPSE|10 1|20 2|11 3|21 0|40 {ratio}");

        Assert.Equal("ELLIPSE", exception.EntityType);
        Assert.Contains("the ratio of its axes (group code 40) is ", exception.Message, StringComparison.Ordinal);
        Assert.Contains("above 0 and at most 1", exception.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_ellipse_without_a_y_for_its_axis_is_read_and_noted()
    {
        var drawing = Sample.Read(Sample.Entities("0 ELLIPSE|10 1|20 2|11 3|40 0.5"));
        Assert.Equal(new DxfEllipse(new(1, 2), new(3, 0), 0.5, 0, Math.Tau) { Line = 5 }, Assert.Single(drawing.Entities));
        Assert.Equal(DxfNoteKind.DefaultTaken, Assert.Single(drawing.Notes).Kind);
    }

    [Fact]
    public void An_insert_is_read_with_its_grid()
    {
        var insert = Sample.ReadOne<DxfInsert>("0 INSERT|2 Part|10 1|20 2|41 -1|42 2|43 0|50 30|70 3|71 0|44 10|45 20");
        Assert.Equal(
            new DxfInsert("Part", new(1, 2))
            {
                Line = 5,
                Scale = new(-1, 2, 0),
                Rotation = 30,
                Columns = 3,
                Rows = 1,
                ColumnSpacing = 10,
                RowSpacing = 20,
            },
            insert);
    }

    [Fact]
    public void Attributes_of_an_insert_are_text_and_their_end_mark_is_nothing()
    {
        var drawing = Sample.Read(Sample.Entities(
            $"0 INSERT|2 P|10 1|20 2|66 1|0 ATTRIB|10 1|20 2|1 No. 5|0 SEQEND|8 0|{Sample.Line}"));
        Assert.Equal(["INSERT", "ATTRIB", "LINE"], drawing.Entities.Select(entity => entity.Type));
    }

    [Fact]
    public void Long_text_is_put_together()
    {
        var text = Sample.ReadOne<DxfText>(@"0 MTEXT|10 1|20 2|3 Hello |1 w\U+00f6rld");
        Assert.Equal(("MTEXT", "Hello wörld"), (text.Type, text.Text));
    }

    [Fact]
    public void An_unknown_entity_is_counted_and_leaks_nothing_into_the_next()
    {
        var entities = Sample.Read(Sample.Entities($"0 ACME_WIDGET|8 X|10 nonsense|40 99|62 red|{Sample.Line}")).Entities;
        Assert.Equal(new DxfOther("ACME_WIDGET") { Layer = "X", Line = 5 }, entities[0]);
        Assert.Equal(new DxfPoint(1, 2), Assert.IsType<DxfLine>(entities[1]).Start);
    }

    [Fact]
    public void Other_programs_data_at_the_end_of_an_entity_are_not_its_values()
    {
        var circle = Sample.ReadOne<DxfCircle>("0 CIRCLE|10 1|20 2|40 3|101 Embedded Object|10 9|40 9");
        Assert.Equal(new DxfCircle(new(1, 2), 3) { Line = 5 }, circle);
    }
}
