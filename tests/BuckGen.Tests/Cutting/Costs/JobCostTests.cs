using BuckGen.Cutting.Boards;
using BuckGen.Cutting.Costs;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Cutting.Costs;

/// <summary>Time and money follow from lengths, counts and the shop's rates, computed here by hand.</summary>
[Trait("Tier", "slow")]
public class JobCostTests
{
    private static readonly RateSpec Rates = new()
    {
        Currency = "EUR",
        Labour = 36,
        Machine = 30,
        MarkFeed = 3000,
        PathSeconds = 1.5,
        BoardMinutes = 2,
        DrillSeconds = 12,
        GlueMinutes = 5,
    };

    private static readonly Stock Mdf6 = new("MDF 6", 6, 600, 400) { Price = 8, CutFeed = 600 };

    [Fact]
    public void Boards_cost_whole_and_by_share()
    {
        var plan = Plan(Spec());

        var cost = JobCost.Compute(plan, Rates)!;

        var (wood, plastic) = (cost.Materials[0], cost.Materials[1]);
        var box = plan.Boards.Single().Placements.Aggregate(Bounds.Nothing, (b, p) => b.With(p.Bounds));
        Assert.Equal(("MDF 6", 1, box.Width * box.Height / (600 * 400)), (wood.Name, wood.Count, wood.Share));
        Assert.Equal((8, 8 * wood.Share), (wood.WholeCost, wood.ShareCost));
        // Two blanks go onto a sheet of 0.744 m2 at 12.50 a square metre.
        Assert.Equal(("PETG 1 mm", 0.5, 12.5 * 1.22 * 0.61), (plastic.Name, plastic.Share, plastic.UnitPrice));
        Assert.Equal(wood.ShareCost + plastic.ShareCost, cost.MaterialByShare);
        Assert.Empty(cost.Missing);
    }

    [Fact]
    public void Work_takes_length_over_feed_and_count_times_seconds()
    {
        var plan = Plan(Spec());

        var cost = JobCost.Compute(plan, Rates)!;

        WorkStep Step(string name) => cost.Work.Single(w => w.Name == name);
        Assert.Equal((plan.CutLength / 600, plan.CutLength / 600 / 60 * 30), (Step("cut MDF 6").Minutes, Step("cut MDF 6").Cost));
        var paths = plan.Boards.SelectMany(s => s.Placements).SelectMany(p => p.Part.Paths).ToArray();
        Assert.Equal(paths.Where(p => p.Layer == CutLayer.Mark).Sum(p => p.Length) / 3000,
            Step("mark and letter").Minutes!.Value, 1e-9);
        Assert.Equal(paths.Length * 1.5 / 60, Step("start paths").Minutes);
        Assert.Equal((2, 1.2), (Step("load boards").Minutes, Math.Round(Step("load boards").Cost!.Value, 9)));
        // Four layers and two plates are five glue lines.
        Assert.Equal((5, 25), (Step("glue").Amount, Step("glue").Minutes));
        // Every vent is too narrow for the laser through 6 mm; the bores below are laser-cut.
        Assert.Equal((plan.Design.Vents!.Vents.Length, plan.Design.Vents.Vents.Length * 0.2),
            (Step("drill by hand").Amount, Math.Round(Step("drill by hand").Minutes!.Value, 9)));
        Assert.Equal(cost.Work.Sum(w => w.Minutes), cost.Minutes);
    }

    [Fact]
    public void Without_rates_nothing_is_costed() =>
        Assert.Null(
            JobCost.Compute(
                Plan(Spec() with
                {
                    Stock = [Mdf6 with { Price = null, CutFeed = null }],
                    Base = null,
                    Vents = null,
                    Sheet = null
                }), RateSpec.None));

    [Fact]
    public void What_is_not_given_is_reported()
    {
        var spec = Spec() with { Stock = [Mdf6 with { CutFeed = null }], Base = null, Vents = null, Sheet = null };

        var cost = JobCost.Compute(Plan(spec), new() { BoardMinutes = 3 })!;

        Assert.Equal(
            ["time to cut MDF 6", "time to mark and letter", "time to start paths", "time to glue",
                "price of the hour to load boards"], cost.Missing);
        Assert.Equal((3, 0), (cost.Minutes, cost.WorkCost));
    }

    [Fact]
    public void Prices_and_feeds_can_stand_in_the_shops_own_catalog()
    {
        var catalog =
            CatalogFile.Read(
                "[[stock]]\nid = \"oak\"\nname = \"Oak 10\"\nthickness = 10\nprice = 22.5\ncut-feed = 250\nsource = \"our "
                + "timber merchant, May\"", "shop.toml");

        var oak = Stock.FromCatalog(catalog.FindStock("oak")!);

        Assert.Equal((22.5, 250), (oak.Price, oak.CutFeed));
    }

    [Fact]
    public void A_rate_out_of_range_is_refused() =>
        Assert.Contains("from 0 to 600 minutes",
            Assert.Throws<SpecException>(() => JobCost.Compute(Plan(Spec()), Rates with { GlueMinutes = -1 })).Message);

    private static BuckSpec Spec() => Formed.Spec(BuckKind.Male, 24, 5) with
    {
        Stock = [Mdf6],
        Base = new(Mdf6, 20, Mdf6),
        Vents = new(),
        Sheet = new()
        {
            Plastic = Catalog.BuiltIn.FindPlastic("petg"),
            PricePerSquareMetre = 12.5,
            Sizes = [new(200, 100), new(1220, 610)]
        },
        Former = new() { Opening = new(500, 400) },
    };

    private static CutPlan Plan(BuckSpec spec) =>
        CutPlan.Create(BuckDesign.Create(Outline.FromRegion("part", Formed.Rectangle(100, 80)), spec), new());
}
