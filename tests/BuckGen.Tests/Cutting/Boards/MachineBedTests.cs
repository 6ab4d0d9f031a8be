using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Intake.Outlines;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Cutting.Boards;

/// <summary>A board larger than the machine's bed is cut up first.</summary>
public class MachineBedTests
{
    [Theory]
    [InlineData(600, 400, 600, 400, 1)] // the board fits
    [InlineData(400, 600, 600, 400, 1)] // it fits turned
    [InlineData(300, 300, 300, 300, 2)]
    [InlineData(450, 250, 450, 250, 1)] // larger than 250 x 400
    [InlineData(250, 450, 450, 250, 1)]
    public void The_larger_piece_that_fits_is_laid_out(double width, double height, double pieceWidth, double pieceHeight,
        int perBoard)
    {
        var plan = Plan(new(width, height), 80);

        Assert.Equal(new RectangleSize(pieceWidth, pieceHeight), plan.Boards[0].Piece);
        Assert.Equal(perBoard, plan.Boards[0].PiecesPerBoard);
        Assert.Equal((pieceWidth, pieceHeight) == (600, 400) ? 0 : 1, plan.Findings.Count(f => f.Id == "board-larger-than-bed"));
        Assert.All(plan.Boards.SelectMany(s => s.Placements),
            p => Assert.True(p.Bounds.MaxX <= pieceWidth - 5 && p.Bounds.MaxY <= pieceHeight - 5));
    }

    [Fact]
    public void A_part_larger_than_the_bed_is_an_error()
    {
        var finding = Plan(new(150, 150), 200).Findings.First(f => f.Id == "part-larger-than-stock");

        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Contains("the machine's bed holds", finding.Message);
    }

    private static CutPlan Plan(RectangleSize bed, double side) => CutPlan.Create(
        BuckDesign.Create(Outline.FromRegion("part", Formed.Rectangle(side, side)),
            Formed.Spec(BuckKind.Male, 12, 5) with { Stock = [new("board 6", 6, 600, 400)] }),
        new() { Bed = bed });
}
