using Xunit;

namespace BuckGen.Tests.Intake.Outlines;

public class FillRuleTests
{
    private const string SameWay = "M0 0H60V60H0Z M20 20H40V40H20Z";
    private const string OtherWay = "M0 0H60V60H0Z M20 20V40H40V20Z";

    [Theory]
    [InlineData(SameWay, "nonzero", 3600)]
    [InlineData(OtherWay, "nonzero", 3200)]
    [InlineData(SameWay, "evenodd", 3200)]
    public void A_shape_is_filled_by_its_own_rule(string path, string rule, double area)
    {
        var outline = Reading.Svg($"<path d=\"{path}\" fill-rule=\"{rule}\"/>");

        Assert.Equal(area, outline.Region.Area, 1e-3);
        Assert.Equal(area == 3600, outline.Notes.Any(n => n.Kind == "nonzero-applied"));
    }

    [Fact]
    public void Shapes_drawn_inside_each_other_are_holes_whatever_their_rule()
    {
        var outline =
            Reading.Svg("<rect width=\"60\" height=\"60\"/><rect x=\"20\" y=\"20\" width=\"20\" height=\"20\" fill=\"white\"/>");

        Assert.Equal(3200, outline.Region.Area, 1e-3);
    }
}
