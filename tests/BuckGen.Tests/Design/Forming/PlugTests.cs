using BuckGen.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Design.Forming;

/// <summary>A plug carries part of the sheet down at full gauge; the walls get the rest.</summary>
public class PlugTests
{
    /// <summary>
    /// Source: Crawford, Plastics Engineering, 3rd ed., example 4.7(b): box 150 x 100 x 60 mm, 2 mm sheet, plug 140 x 90 mm; 4800
    /// mm³ are left for four walls of 30 000 mm².
    /// </summary>
    [Fact]
    public void The_box_of_the_plastics_handbook_with_a_plug() =>
        Assert.Equal(0.16, Blank(5).PlugWall!.Value, 1e-9);

    [Fact]
    public void A_smaller_plug_leaves_more_for_the_walls()
    {
        Assert.True(Blank(15).PlugWall > Blank(5).PlugWall);
        Assert.Null(Formed.Blank(Formed.Rectangle(150, 100), Formed.Spec(BuckKind.Female, 60, gauge: 2)).PlugWall);
        Assert.Null(
            Formed.Blank(Formed.Rectangle(150, 100),
                Formed.Spec(BuckKind.Male, 60, 5, gauge: 2) with { Former = new() { PlugGap = 5 } }).PlugWall);
    }

    private static BuckGen.Design.Forming.Blank Blank(double gap) =>
        Formed.Blank(Formed.Rectangle(150, 100),
            Formed.Spec(BuckKind.Female, 60, gauge: 2) with { Former = new() { PlugGap = gap } });
}
