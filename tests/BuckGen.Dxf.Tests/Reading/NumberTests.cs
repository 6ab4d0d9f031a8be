using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Reading;

public class NumberTests
{
    [Theory]
    [InlineData("80", 80)]
    [InlineData("+80", 80)]
    [InlineData("-0.0", 0)]
    [InlineData(".5", 0.5)]
    [InlineData("50.", 50)]
    [InlineData("8.0E+01", 80)]
    [InlineData("1.2D+01", 12)]
    [InlineData("  7.25\t", 7.25)]
    public void Every_C_form_of_a_number_is_read(string text, double expected) =>
        Assert.Equal(expected, Sample.ReadOne<DxfLine>($"0 LINE|10 {text}|20 2|11 300|21 4").Start.X);

    [Theory]
    [InlineData("0,5", "comma")]
    [InlineData("1.250,00", "comma")]
    [InlineData("nan", "not a number")]
    [InlineData("Infinity", "not a number")]
    [InlineData("1e400", "beyond the range")]
    [InlineData("12abc", "not a number")]
    [InlineData("0x10", "not a number")]
    [InlineData("1 000", "not a number")]
    [InlineData(" ", "missing")]
    public void A_bad_number_is_refused_with_line_entity_and_text(string text, string why)
    {
        var exception = Sample.RefusedEntity($"0 LINE|8 A|10 {text}|20 2|11 3|21 4");
        Assert.Equal((10, "LINE"), (exception.Line, exception.EntityType));
        Assert.Contains($"\"{text.Trim()}\"", exception.Message, StringComparison.Ordinal);
        Assert.Contains(why, exception.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1O")]
    [InlineData("1.0")]
    [InlineData("")]
    public void A_bad_group_code_is_refused_with_its_line(string code)
    {
        var text = Sample.Entities(Sample.Line).Replace("\n10\n1\n", $"\n{code}\n1\n", StringComparison.Ordinal);
        Assert.Equal(9, Sample.Refused(text).Line);
    }

    [Fact]
    public void All_bad_entities_are_reported_in_one_run()
    {
        var exception = Sample.RefusedEntity("0 LINE|10 x|20 2|11 3|21 4|0 CIRCLE|10 1|20 1|0 LINE|10 1|20 2|11 3|21 4");
        Assert.Equal(["LINE", "CIRCLE"], exception.Faults.Select(fault => fault.EntityType));
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void Reading_does_not_depend_on_the_culture(string culture)
    {
        var tags = "0 LINE|10 -1.5|20 2|11 3|21 4|0 circle|10 1|20 1|40 2";
        var entities = Drawings.Under(culture, () => Sample.Read(Sample.Entities(tags)).Entities);
        Assert.Equal(-1.5, Assert.IsType<DxfLine>(entities[0]).Start.X);
        Assert.IsType<DxfCircle>(entities[1]);
    }
}
