using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Catalogs;
using BuckGen.Settings;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

public class StackPlanTests
{
    [Fact]
    public void One_stock_repeated_meets_a_multiple_of_it()
    {
        var plan = StackPlan.Choose(36, Stocks(12), 0.5);

        Assert.Equal([12, 12, 12], Thicknesses(plan));
        Assert.Equal(36, plan.Depth, 1e-9);
        Assert.Equal(0, plan.Miss, 1e-9);
    }

    [Fact]
    public void Measured_thickness_counts_not_the_name_of_the_board()
    {
        // Ten boards sold as 4 mm, 3.8 mm on average: 38 mm and not 40. The mill's figures stand in the catalog.
        var ply = Stock.FromCatalog(Catalog.BuiltIn.FindStock("birch-ply-4")!);

        var plan = StackPlan.Choose(38, [ply], 0.5);

        Assert.Equal(10, plan.LayerStocks.Length);
        Assert.Equal(38.0, plan.Depth, 1e-9);
        Assert.Equal(11, StackPlan.Choose(40, [ply], 0.5).LayerStocks.Length);
        Assert.Equal(1.8, StackPlan.Choose(40, [ply], 0.5).Miss, 1e-9);
    }

    /// <summary>Ten boards of 3.5 to 4.1 mm, by a Finnish mill's data sheet for sanded birch plywood sold as 4 mm.</summary>
    [Fact]
    public void Boards_not_measured_leave_the_depth_open()
    {
        var plan = StackPlan.Choose(38, [Stock.FromCatalog(Catalog.BuiltIn.FindStock("birch-ply-4")!)], 0.5);

        Assert.Equal((35.0, 41.0), (Math.Round(plan.DepthRange.Low, 9), Math.Round(plan.DepthRange.High, 9)));
        Assert.Equal((38.0, 38.0, 0.0), Measured(StackPlan.Choose(38, [new("ply", 3.8)], 0.5)));
    }

    [Fact]
    public void A_board_that_was_measured_has_one_thickness_whatever_the_mill_allows()
    {
        var measured = Stock.FromCatalog(Catalog.BuiltIn.FindStock("birch-ply-4")!) with { ThicknessIsAssumed = false };

        Assert.Equal((38.0, 38.0, 0.0), Measured(StackPlan.Choose(38, [measured], 0.5)));
    }

    /// <summary>
    /// Boards of 9 and 0.4 mm: three and eight miss 30.73 mm by 0.53 mm, which the checks refuse; one thin board more is within
    /// half a millimetre.
    /// </summary>
    [Fact]
    public void A_miss_just_beyond_the_tolerance_is_beyond_it()
    {
        var plan = StackPlan.Choose(30.73, Stocks(9, 0.4), 0.5);

        Assert.Equal(30.6, plan.Depth, 1e-9);
        Assert.InRange(Math.Abs(plan.Miss), 0, 0.5);
    }

    [Fact]
    public void Where_the_stack_may_not_be_higher_a_tenth_is_too_much()
    {
        Assert.Equal([12.1], Thicknesses(StackPlan.Choose(12, Stocks(12.1, 5), 0.5)));
        Assert.Equal([5, 5], Thicknesses(StackPlan.Choose(12, Stocks(12.1, 5), 0.5, neverMore: true)));
        Assert.Equal([12.1], Thicknesses(StackPlan.Choose(12.1, Stocks(12.1, 5), 0.5, neverMore: true)));
    }

    [Fact]
    public void A_stack_ends_where_no_wood_is_left() =>
        // A disc of 2 mm shrinks by 1.05 mm a layer: at 24 mm nothing is left of it.
        Assert.Equal(2, PlainBuck.Create(Shapes.Disc(2), PlainBuck.Spec with { OutlineAt = OutlineAt.Base }).Layers.Length);

    /// <summary>
    /// MDF within 0.2 mm either way (EN 622-1, from memory): the worst case adds up, the likely one by squares.
    /// </summary>
    [Theory]
    [InlineData(10, 2.0, 0.63)]
    [InlineData(20, 4.0, 0.89)]
    public void What_boards_may_be_off_adds_up(int boards, double worst, double likely)
    {
        var plan = StackPlan.Choose(boards * 12, [Stock.FromCatalog(Catalog.BuiltIn.FindStock("mdf-12")!)], 0.5);

        Assert.Equal(boards, plan.LayerStocks.Length);
        Assert.Equal(2 * worst, plan.DepthRange.High - plan.DepthRange.Low, 1e-9);
        Assert.Equal(likely, plan.LikelySpread, 0.005);
    }

    private static (double, double, double) Measured(StackPlan plan) =>
        (Math.Round(plan.DepthRange.Low, 9), Math.Round(plan.DepthRange.High, 9), plan.LikelySpread);

    [Fact]
    public void Fewest_layers_are_used_though_thinner_stocks_would_fit_too()
    {
        Assert.Equal([18, 18], Thicknesses(StackPlan.Choose(36, Stocks(3, 6, 12, 18), 0.5)));
        // Greedy from the thickest would take 18 + 6 + 6 where 15 + 15 serves.
        Assert.Equal([15, 15], Thicknesses(StackPlan.Choose(30, Stocks(18, 15, 6), 0.5)));
    }

    [Fact]
    public void A_miss_within_the_tolerance_saves_layers()
    {
        Assert.Equal([12, 12, 12], Thicknesses(StackPlan.Choose(36.4, Stocks(12, 0.4), 0.5)));
        Assert.Equal([12, 12, 12, 0.4], Thicknesses(StackPlan.Choose(36.4, Stocks(12, 0.4), 0.3)));
    }

    [Fact]
    public void Of_two_stacks_with_as_many_layers_the_nearer_is_taken() =>
        Assert.Equal([9.2, 9], Thicknesses(StackPlan.Choose(18.2, Stocks(9, 9.2), 0.5)));

    [Fact]
    public void What_no_stack_meets_is_missed_by_as_little_as_can_be()
    {
        var over = StackPlan.Choose(31, Stocks(12), 0.5);
        var under = StackPlan.Choose(29, Stocks(12), 0.5);

        Assert.Equal((36, 5), (over.Depth, over.Miss));
        Assert.Equal((24, -5), (under.Depth, under.Miss));
    }

    [Fact]
    public void A_depth_below_the_thinnest_stock_gets_one_layer() =>
        Assert.Equal([12], Thicknesses(StackPlan.Choose(2, Stocks(12, 18), 0.5)));

    [Fact]
    public void The_thickest_boards_lie_at_the_bottom() =>
        Assert.Equal([18, 12, 3], Thicknesses(StackPlan.Choose(33, Stocks(3, 18, 12), 0.1)));

    [Fact]
    public void Of_two_stocks_equally_thick_the_first_listed_is_used() =>
        Assert.All(StackPlan.Choose(24, [new("oak", 12), new("pine", 12)], 0.5).LayerStocks, s => Assert.Equal("oak", s.Name));

    [Fact]
    public void More_layers_than_the_limit_are_refused() =>
        Assert.Contains("limit is 400", Assert.Throws<SpecException>(() => StackPlan.Choose(1000, Stocks(1), 0.5)).Message);

    [Fact]
    public void No_other_stack_is_better() =>
        Gen.Select(Gen.Int[20, 1000].Array[1, 3], Gen.Int[200, 3000], Gen.Int[0, 60]).Sample((tenths, depth, tolerance) =>
        {
            var stocks = Stocks([.. tenths.Select(t => t / 10.0)]);
            var plan = StackPlan.Choose(depth / 10.0, stocks, tolerance / 10.0);

            var best = AllStacks(tenths.Distinct().ToArray(), depth + tenths.Max())
                .Select(s => (s.Layers, Miss: Math.Abs(s.Height - depth)))
                .OrderBy(s => s.Miss <= tolerance ? 0 : 1)
                .ThenBy(s => s.Miss <= tolerance ? s.Layers : s.Miss)
                .ThenBy(s => s.Miss <= tolerance ? s.Miss : s.Layers)
                .First();
            Assert.Equal(best.Layers, plan.LayerStocks.Length);
            Assert.Equal(best.Miss / 10.0, Math.Abs(plan.Miss), 1e-6);
            Assert.Equal(plan.Depth, plan.LayerStocks.Sum(s => s.Thickness), 1e-9);
        }, iter: 200);

    /// <summary>Every number of every stock up to a height, in tenths of a millimetre.</summary>
    private static IEnumerable<(int Layers, int Height)> AllStacks(int[] tenths, int maxLayers)
    {
        IEnumerable<(int Layers, int Height)> stacks = [(0, 0)];
        foreach (var t in tenths)
            stacks = stacks.SelectMany(s => Enumerable.Range(0, (maxLayers - s.Height) / t + 1)
                .Select(n => (s.Layers + n, s.Height + n * t))).ToArray();
        return stacks.Where(s => s.Layers > 0);
    }

    private static ImmutableArray<Stock> Stocks(params double[] thicknesses) =>
        [.. thicknesses.Select(t => new Stock(FormattableString.Invariant($"{t} mm"), t))];

    private static double[] Thicknesses(StackPlan plan) => [.. plan.LayerStocks.Select(s => s.Thickness)];
}
