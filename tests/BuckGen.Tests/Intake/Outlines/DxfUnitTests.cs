using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Intake.Outlines;

public class DxfUnitTests
{
    [Theory]
    [InlineData("9\n$INSUNITS\n70\n1\n", 254)]
    [InlineData("9\n$INSUNITS\n70\n5\n", 100)]
    [InlineData("9\n$INSUNITS\n70\n4\n9\n$MEASUREMENT\n70\n0\n", 10)]
    [InlineData("9\n$MEASUREMENT\n70\n0\n", 254)]
    [InlineData("9\n$INSUNITS\n70\n0\n9\n$MEASUREMENT\n70\n1\n", 10)]
    [InlineData("", 10)]
    public void The_header_sets_the_unit(string header, double width)
    {
        var outline = OutlineReader.Read(FileWith(header, "", Rectangle(0, 0, 10, 5)), "test.dxf");

        Assert.Equal(width, outline.Region.Bounds.Width, 1e-9);
    }

    [Fact]
    public void An_assumed_unit_is_reported_with_the_size_in_mm_and_inches()
    {
        var outline = OutlineReader.Read(FileWith("", "", Rectangle(0, 0, 127, 25.4)), "test.dxf");

        var note = Assert.Single(outline.Notes);
        Assert.Equal("unit-assumed", note.Kind);
        Assert.Contains("127 x 25.4 mm (5 x 1 in)", note.Message);
    }

    [Theory]
    [InlineData("mm", 10)]
    [InlineData("cm", 100)]
    [InlineData("m", 10000)]
    [InlineData("in", 254)]
    [InlineData("ft", 3048)]
    public void The_unit_asked_for_wins_over_the_header(string unit, double width)
    {
        var outline = OutlineReader.Read(File(Rectangle(0, 0, 10, 5)), "test.dxf", OutlineOptions.Default with { Units = unit });

        Assert.Equal(width, outline.Region.Bounds.Width, 1e-9);
        Assert.Equal($"{unit} (as asked)", outline.Units);
        Assert.Empty(outline.Notes);
    }

    [Fact]
    public void An_unknown_unit_is_refused() =>
        Assert.Contains("\"furlong\"", Assert.Throws<OutlineException>(
            () =>
                OutlineReader.Read(File(Circle(0, 0, 5)), "test.dxf",
                    OutlineOptions.Default with { Units = "furlong" })).Message);

    [Fact]
    public void Inches_that_make_the_outline_larger_than_any_board_are_doubted()
    {
        var content = FileWith("9\n$INSUNITS\n70\n1\n", "", Rectangle(0, 0, 120, 80));

        Assert.Contains("In millimetres it would be 120 x 80 mm", Reading.Refusal(content));
        Assert.Equal(3048,
            OutlineReader.Read(content, "test.dxf", OutlineOptions.Default with { Units = "in" }).Region.Bounds.Width, 1e-9);
    }
}
