using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Reading;

public class LineTests
{
    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    [InlineData("\r\r\n")]
    public void Any_line_end_is_read_and_counted(string end)
    {
        var text = Sample.Entities(Sample.Line).Replace("\n", end, StringComparison.Ordinal);
        Assert.Equal(5, Assert.Single(Sample.Read(text).Entities).Line);
    }

    [Fact]
    public void Doubled_carriage_returns_are_noted()
    {
        var text = Sample.Entities(Sample.Line).Replace("\n", "\r\r\n", StringComparison.Ordinal);
        Assert.Equal(DxfNoteKind.DoubledCarriageReturns, Assert.Single(Sample.Read(text).Notes).Kind);
    }

    [Fact]
    public void An_empty_value_between_bare_carriage_returns_stays_a_line()
    {
        var text = Sample.Entities("0 TEXT|10 1|20 2|1 " + "|8 B").Replace('\n', '\r');
        Assert.Equal("B", Assert.IsType<DxfText>(Assert.Single(Sample.Read(text).Entities)).Layer);
    }

    [Fact]
    public void Padding_and_comments_are_skipped()
    {
        var text = Sample
            .Text("999 made by hand|0 SECTION|2 ENTITIES|  0 LINE|999 here|\t8 A|10 1|20 2|11 3|21 4|0 ENDSEC|0 EOF");
        Assert.Equal("A", Assert.Single(Sample.Read(text.Replace("\nA\n", "\n A \n", StringComparison.Ordinal)).Entities).Layer);
    }

    [Fact]
    public void A_clean_file_has_no_notes() => Assert.Empty(Sample.Read(Sample.Entities(Sample.Line)).Notes);

    [Fact]
    public void A_missing_last_line_end_is_noted() =>
        AssertNote(DxfNoteKind.MissingLastLineEnd, Sample.Entities(Sample.Line).TrimEnd('\n'));

    [Fact]
    public void Text_after_the_end_is_noted() => AssertNote(DxfNoteKind.TextAfterEnd, Sample.Entities(Sample.Line) + "\nbye\n");

    [Fact]
    public void A_missing_EOF_is_noted() =>
        AssertNote(DxfNoteKind.MissingEndOfFile, Sample.Text($"0 SECTION|2 ENTITIES|{Sample.Line}|0 ENDSEC"));

    [Fact]
    public void A_missing_ENDSEC_before_EOF_is_noted() =>
        AssertNote(DxfNoteKind.MissingSectionEnd, Sample.Text($"0 SECTION|2 ENTITIES|{Sample.Line}|0 EOF"));

    [Theory]
    [InlineData("0 LINE|8 A|10 1|20 2|11 3|21 4", "after this LINE")]
    [InlineData("0 LINE|8 A|10 1|20 2|11 3|21 4|0 CIRCLE|8 A|10 5|20 5|40 2", "after this CIRCLE")]
    [InlineData("0 LWPOLYLINE|90 2|10 1|20 2|10 3|20 4", "after this LWPOLYLINE")]
    public void A_file_that_stops_after_a_whole_entity_is_read_with_a_note(string tags, string words)
    {
        var text = Sample.Text($"0 SECTION|2 ENTITIES|{tags}");

        var drawing = Sample.Read(text);

        Assert.Equal(tags.Count(c => c == '|') > 6 ? 2 : 1, drawing.Entities.Length);
        var note = Assert.Single(drawing.Notes);
        Assert.Equal(DxfNoteKind.MissingEndOfFile, note.Kind);
        Assert.Contains(words, note.Message, StringComparison.Ordinal);
        // Without its line end the last number may lack digits.
        Assert.Contains("cut off", Sample.Refused(text.TrimEnd('\n')).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0 SECTION|2 ENTITIES|0 LINE|8 A|10 1|20 2", "LINE")]
    [InlineData("0 SECTION|2 ENTITIES|0 LWPOLYLINE|90 3|10 1|20 2|10 3|20 4", "LWPOLYLINE")]
    [InlineData("0 SECTION|2 BLOCKS|0 BLOCK|2 A|0 LINE|8 A|10 1|20 2|11 3|21 4", "LINE")]
    [InlineData("0 SECTION|2 ENTITIES|0 POLYLINE|66 1|0 VERTEX|10 1|20 2", "VERTEX")]
    public void A_file_that_stops_inside_an_entity_is_refused(string tags, string type)
    {
        var exception = Sample.Refused(Sample.Text(tags));
        Assert.Equal(type, exception.EntityType);
        Assert.Contains("cut off", exception.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_stops_after_a_group_code_is_refused() =>
        Assert.Contains(
            "group code 21",
            Sample.Refused(Sample.Text("0 SECTION|2 ENTITIES|0 LINE|10 1") + "21\n").Message,
            StringComparison.Ordinal);

    private static void AssertNote(DxfNoteKind kind, string text)
    {
        var drawing = Sample.Read(text);
        Assert.Equal(kind, Assert.Single(drawing.Notes).Kind);
        Assert.Single(drawing.Entities);
    }
}
