using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Cutting.Boards;

public class ShelfLayoutTests
{
    private static readonly Stock Mdf12 = new("MDF 12", 12);
    private static readonly RectangleSize Whole = new(Mdf12.BoardWidth, Mdf12.BoardHeight);


    private static readonly Gen<CutPart[]> Parts = Gen.Select(Gen.Double[5, 500], Gen.Double[5, 380]).Array[1, 40]
        .Select(sizes => sizes.Select((s, i) => Cuts.Rectangle($"{i}A", s.Item1, s.Item2, Mdf12)).ToArray());

    private static readonly Gen<CuttingSpec> Specs = Gen.Select(Gen.Double[0, 20], Gen.Double[0, 8], (spacing, margin) =>
        new CuttingSpec(Spacing: spacing, EdgeMargin: margin));

    [Fact]
    public void Every_part_is_placed_once() =>
        Gen.Select(Parts, Specs).Sample((parts, spec) =>
        {
            var (boards, tooLarge) = ShelfLayout.Arrange(parts, Whole, spec);

            Assert.Equal(parts.Select(p => p.Name).Order(), boards.SelectMany(s => s).Select(p => p.Part.Name)
                .Concat(tooLarge.Select(p => p.Name)).Order());
            Assert.All(boards, s => Assert.NotEmpty(s));
        });

    [Fact]
    public void Parts_keep_the_spacing_from_each_other_and_the_margin_from_the_edge() =>
        Gen.Select(Parts, Specs).Sample((parts, spec) =>
        {
            foreach (var board in ShelfLayout.Arrange(parts, Whole, spec).Boards)
            {
                var usable = new Bounds(0, 0, 600, 400).Grown(-spec.EdgeMargin);
                for (var i = 0; i < board.Count; i++)
                {
                    Assert.True(usable.Grown(1e-9).Contains(board[i].Bounds));
                    for (var j = 0; j < i; j++)
                    {
                        var (a, b) = (board[i].Bounds, board[j].Bounds);
                        var apart = Math
                            .Max(Math.Max(a.MinX - b.MaxX, b.MinX - a.MaxX), Math.Max(a.MinY - b.MaxY, b.MinY - a.MaxY));
                        Assert.True(apart >= spec.Spacing - 1e-9, $"{apart} apart, not {spec.Spacing}");
                    }
                }
            }
        });

    [Fact]
    public void A_part_lies_where_its_map_takes_it() =>
        Gen.Select(Parts, Specs).Sample((parts, spec) =>
        {
            foreach (var placed in ShelfLayout.Arrange(parts, Whole, spec).Boards.SelectMany(s => s))
            {
                var outer = placed.Part.Loops(CutLayer.CutOuter)[0].Transformed(placed.Map);
                Assert.False(placed.Map.Mirrors);
                Assert.True(placed.Bounds.Grown(1e-6).Contains(outer.Bounds) && outer.Bounds.Grown(1e-6).Contains(placed.Bounds));
            }
        });

    [Fact]
    public void Only_what_fits_neither_way_is_too_large() =>
        Gen.Select(Parts, Specs).Sample((parts, spec) =>
        {
            var (width, height) = (600 - 2 * spec.EdgeMargin, 400 - 2 * spec.EdgeMargin);
            bool Fits(CutPart p) =>
                (p.Bounds.Width <= width && p.Bounds.Height <= height) || (p.Bounds.Height <= width && p.Bounds.Width <= height);

            Assert.Equal(parts.Where(p => !Fits(p)).Select(p => p.Name).Order(),
                ShelfLayout.Arrange(parts, Whole, spec).TooLarge.Select(p => p.Name).Order());
        });

    [Fact]
    public void Parts_fill_a_board_before_another_is_begun()
    {
        // Six parts of 190 x 190 mm go on a board of 600 x 400 with 5 mm of margin: 3 x 190 + 2 x 4 = 578 and 2 x 190 + 4 = 384.
        var parts = Enumerable.Range(0, 13).Select(i => Cuts.Rectangle($"{i}A", 190, 190, Mdf12));

        var (boards, _) = ShelfLayout.Arrange(parts, Whole, new());

        Assert.Equal([6, 6, 1], boards.Select(s => s.Count));
    }

    [Fact]
    public void A_part_too_long_one_way_is_turned()
    {
        var (boards, tooLarge) = ShelfLayout.Arrange([Cuts.Rectangle("1A", 300, 500, Mdf12)], Whole, new());

        Assert.Empty(tooLarge);
        Assert.Equal(new Bounds(5, 5, 505, 305), boards[0][0].Bounds);
    }

    [Theory]
    [InlineData(300, 100, false)]
    [InlineData(100, 300, true)]
    public void Parts_lie_flat(double width, double height, bool turned)
    {
        var placed = ShelfLayout.Arrange([Cuts.Rectangle("1A", width, height, Mdf12)], Whole, new()).Boards[0][0];

        Assert.Equal(new Bounds(5, 5, 305, 105), placed.Bounds);
        // What was the lower left corner lies at the left below, or at the right after a quarter turn.
        Assert.Equal(0, placed.Map.Apply(new(0, 0)).DistanceTo(turned ? new(305, 5) : new(5, 5)), 1e-9);
    }

    [Fact]
    public void The_work_can_be_stopped() =>
        Assert.Throws<OperationCanceledException>(() =>
            ShelfLayout.Arrange([Cuts.Rectangle("1A", 10, 10, Mdf12)], Whole, new(), new(true)));

    [Fact]
    public void A_part_as_large_as_the_board_just_fits() =>
        Assert.Empty(ShelfLayout.Arrange([Cuts.Rectangle("1A", 590, 390, Mdf12)], Whole, new()).TooLarge);
}
