using BuckGen.Cutting.Boards;
using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using Xunit;

namespace BuckGen.Tests.Cutting.Boards;

/// <summary>A board of 600 x 400 mm and the pieces it is cut into for the machine's bed.</summary>
public class BoardLayoutTests
{
    private static readonly Stock Mdf12 = new("MDF 12", 12, 600, 400);

    [Theory]
    [InlineData(250, 200, 4)] // 2 x 2
    [InlineData(200, 250, 4)] // turned
    [InlineData(300, 400, 2)]
    [InlineData(200, 100, 12)] // 3 x 4
    [InlineData(601, 400, 1)]
    [InlineData(400, 600, 1)]
    public void A_board_gives_as_many_pieces_as_lie_on_it_the_same_way(double width, double height, int pieces) =>
        Assert.Equal(pieces, new BoardLayout(1, Mdf12, []) { Piece = new(width, height) }.PiecesPerBoard);

    [Fact]
    public void The_piece_is_the_whole_board_unless_the_bed_is_smaller()
    {
        Assert.Equal(new(600, 400), new BoardLayout(1, Mdf12, []).Piece);
        Assert.Equal(new(600, 400), MachineBed.Piece(Mdf12, new()));
        // As large either way: it lies as the bed does.
        Assert.Equal(new(300, 200), MachineBed.Piece(Mdf12, new() { Bed = new(300, 200) }));
        Assert.Equal(new(200, 300), MachineBed.Piece(Mdf12, new() { Bed = new(200, 300) }));
        // 500 x 400 of the bed of 500 x 550, or 550 x 400 turned.
        Assert.Equal(new(550, 400), MachineBed.Piece(Mdf12, new() { Bed = new(500, 550) }));
    }

    [Fact]
    public void The_share_that_is_used_is_that_of_the_finished_parts_in_the_piece()
    {
        Placement Of(double width, double height) =>
            new(Cuts.Rectangle("1A", width, height, Mdf12), Affine.Identity, new(0, 0, width, height));

        Assert.Equal(0.25, new BoardLayout(1, Mdf12, [Of(200, 200), Of(100, 200)]).Utilisation, 1e-12);
        Assert.Equal(0.5, new BoardLayout(1, Mdf12, [Of(100, 100)]) { Piece = new(200, 100) }.Utilisation, 1e-12);
    }

    [Fact]
    public void Parts_are_laid_out_by_their_shorter_sides_then_by_their_longer_ones()
    {
        (double Width, double Height)[] sizes = [(50, 300), (80, 80), (100, 60), (60, 200), (250, 30)];
        var parts = sizes.Select((s, i) => Cuts.Rectangle($"{i}", s.Width, s.Height, Mdf12));

        var placed = ShelfLayout.Arrange(parts, new(600, 400), new()).Boards.Single();

        Assert.Equal("13204", string.Concat(placed.Select(p => p.Part.Name)));
    }
}
