using BuckGen.Intake.Reading;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>Which statement about the unit wins, and that it is always reported.</summary>
public class UnitRules
{
    private const string Inches = "9\n$INSUNITS\n70\n1\n";
    private const string NoUnit = "9\n$INSUNITS\n70\n0\n";
    private const string Imperial = "9\n$MEASUREMENT\n70\n0\n";
    private const string Metric = "9\n$MEASUREMENT\n70\n1\n";

    [Theory]
    [InlineData(Inches, 25.4, "inches ($INSUNITS 1)")]
    [InlineData("9\n$INSUNITS\n70\n2\n", 304.8, "feet ($INSUNITS 2)")]
    [InlineData("9\n$INSUNITS\n70\n4\n", 1, "millimetres ($INSUNITS 4)")]
    [InlineData("9\n$INSUNITS\n70\n5\n", 10, "centimetres ($INSUNITS 5)")]
    [InlineData("9\n$INSUNITS\n70\n6\n", 1000, "metres ($INSUNITS 6)")]
    [InlineData(Inches + Metric, 25.4, "inches ($INSUNITS 1)")]
    [InlineData(NoUnit + Imperial, 25.4, "inches ($MEASUREMENT 0)")]
    [InlineData("9\n$INSUNITS\n70\n99\n" + Metric, 1, "millimetres ($MEASUREMENT 1)")]
    [InlineData(Imperial, 25.4, "inches ($MEASUREMENT 0)")]
    [InlineData(Metric, 1, "millimetres ($MEASUREMENT 1)")]
    [InlineData(NoUnit, 1, "millimetres, assumed")]
    [InlineData("", 1, "millimetres, assumed")]
    public void The_unit_comes_from_the_first_statement_that_names_one_and_is_reported(string header, double factor, string words)
    {
        var outline = OutlineReader.Read(FileWith(header, "", Rectangle(0, 0, 2, 1)), "test.dxf");

        Assert.Equal(2 * factor, outline.Region.Bounds.Width, 1e-9);
        Assert.Equal(words, outline.Units);
    }

    [Theory]
    [InlineData(NoUnit, 1)]
    [InlineData(NoUnit + Imperial, 1)]
    [InlineData(Inches, 0)]
    public void A_unit_that_is_not_certain_is_warned_of(string header, int warnings) =>
        Assert.Equal(warnings,
            OutlineReader.Read(FileWith(header, "", Rectangle(0, 0, 2, 1)), "test.dxf").Notes
                .Count(n => n.Kind == "unit-assumed"));

    [Fact]
    public void Stated_extents_are_never_believed()
    {
        const string extents = "9\n$EXTMIN\n10\n-500\n20\n-500\n9\n$EXTMAX\n10\n5000\n20\n1e20\n";

        Assert.Equal(new(0, 0, 2, 1),
            OutlineReader.Read(FileWith(Files.Millimetres + extents, "", Rectangle(0, 0, 2, 1)), "test.dxf").Region.Bounds);
    }
}
