using System.Text;
using System.Text.RegularExpressions;
using BuckGen.Cutting.Boards;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Intake.Catalogs;
using BuckGen.Output.Reports.Card;
using BuckGen.Physics.Heat;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Output.Reports;

public class ProcessCardTests
{
    [Theory]
    [InlineData("petg")]
    [InlineData("abs")]
    [InlineData("hips")]
    [InlineData("pmma")]
    [InlineData("pc")]
    [InlineData("pvc")]
    [InlineData("pp")]
    [InlineData("hdpe")]
    public void Every_plastic_has_its_window_its_times_and_its_cautions(string plastic)
    {
        var entry = Catalog.BuiltIn.FindPlastic(plastic)!;

        var card = Card(plastic, 1.5);

        Assert.Contains(entry.Name, card);
        Assert.Contains(FormattableString.Invariant($"never above {entry.FormingUpper:0} C"), card);
        Assert.Contains(FormattableString.Invariant($"below {entry.SetTemperature:0} C"), card);
        Assert.InRange(Seconds(card, "Heating"), 10, 200);
        var (first, later) = (Range(card, "Cooling     first part"), Range(card, "            later parts"));
        Assert.InRange(first.Low, 10, first.High - 5);
        Assert.InRange(later.Low, 10, later.High - 5);
        Assert.InRange(first.High, 30, 1200);
        Assert.True(later.High > first.High, "the buck is warmer for later parts");
        Assert.Contains("WHAT WORKED", card);
        Assert.Contains("SOURCES", card);
        Assert.Equal(plastic == "pc", card.Contains("Dry the sheet.", StringComparison.Ordinal));
    }

    [Fact]
    public void Thicker_sheet_takes_longer_and_a_second_heater_less()
    {
        Assert.True(Seconds(Card("petg", 3), "Heating") > 1.5 * Seconds(Card("petg", 1), "Heating"));
        Assert.True(Seconds(Card("petg", 3, below: true), "Heating") < Seconds(Card("petg", 3), "Heating"));
    }

    [Fact]
    public void Thicker_sheet_takes_longer_to_cool()
    {
        var (thin, thick) = (Range(Card("petg", 1), "Cooling     first part"), Range(Card("petg", 3), "Cooling     first part"));

        Assert.True(thick.Low > 2 * thin.Low && thick.High > 2 * thin.High);
    }

    /// <summary>
    /// Good contact, lively air and heavy wood with air below give the one end; poor contact, quiet air and light wood on an
    /// insulating platen the other. The thin board lets the far face count.
    /// </summary>
    [Fact]
    public void The_first_part_runs_from_all_that_is_quick_to_all_that_is_slow()
    {
        var times = Cooling(Formed.Spec(BuckKind.Male, 6, 5, gauge: 1) with { Stock = [new("board", 6)] });

        SheetFace Room(double film, double emissivity) =>
            new() { FilmCoefficient = film, AirTemperature = 20, Emissivity = emissivity, HeaterTemperature = 20 };
        double Seconds(SheetMaterial wood, double contact, SheetFace far, SheetFace air) => SheetCooling.Until(
            new(1, new(0.205, 1270, 1500)), new SheetBacking(new(6, wood), contact, far), air, 144.5, 60, 45).Seconds!.Value;
        var quick = Seconds(new(0.18, 880, 1700), 500, Room(10, 0.95), Room(10, 0.95));
        var slow = Seconds(new(0.1, 400, 1200), 100, SheetFace.Insulated, Room(5, 0.85));
        Assert.Equal(quick, times.First.Low, 0.015 * quick);
        Assert.Equal(slow, times.First.High, 0.015 * slow);
    }

    [Fact]
    public void Boards_that_conduct_less_cool_the_part_more_slowly()
    {
        CoolingTimes Times(string stock) => Cooling(Formed.Spec(BuckKind.Male, 25, 5) with
        {
            Stock = [Stock.FromCatalog(Catalog.BuiltIn.FindStock(stock)!)],
        });
        var (plastic, foam, wood) = (Times("acrylic-5"), Times("tooling-board-25"), Times("birch-ply-12"));

        Assert.True(plastic.First.High < wood.First.High && wood.First.High < foam.First.High);
        Assert.True(plastic.First.Low < wood.First.Low);
        // What the catalog does not know is wood of any kind: no narrower than that of one kind.
        var any = Cooling(Formed.Spec(BuckKind.Male, 25, 5) with { Stock = [new("board", 12)] });
        Assert.True(any.First.Low <= wood.First.Low && any.First.High >= wood.First.High);
        // A stack of both has the range of both.
        BuckMaterial Of(params string[] stocks) => BuckMaterial.Find(Formed.Design(Formed.Disc(100),
            Formed.Spec(BuckKind.Male, 37, 5) with
            {
                Stock = [.. stocks.Select(s => Stock.FromCatalog(Catalog.BuiltIn.FindStock(s)!))],
            }));
        var both = Of("birch-ply-12", "tooling-board-25");
        Assert.Equal((0.06, 0.2), (both.Conductivity.Low, both.Conductivity.High));
        Assert.Equal((450, 750), (both.Density.Low, both.Density.High));
        Assert.Equal((0.12, 0.17), (Of("birch-ply-12").Conductivity.Low, Of("birch-ply-12").Conductivity.High));
    }

    [Fact]
    public void Under_the_floor_of_a_cavity_lies_the_base_alone_and_takes_up_less_heat()
    {
        BuckSpec Spec(BuckKind kind) => Formed.Spec(kind, 60, 5, gauge: 2) with { Base = new(Formed.Mdf6) };

        var (cavity, raised) = (Cooling(Spec(BuckKind.Female)), Cooling(Spec(BuckKind.Male)));

        Assert.True(cavity.First.High > 1.2 * raised.First.High);
        Assert.Equal(raised.First.Low, cavity.First.Low, 0.01);
    }

    [Fact]
    public void A_series_made_faster_keeps_the_buck_warmer()
    {
        var spec = Formed.Spec(BuckKind.Male, 25, 5);
        var (fast, slow) = (Cooling(spec, heating: 10), Cooling(spec, heating: 600));

        Assert.Equal(fast.First, slow.First);
        Assert.True(fast.Later!.Value.Low > slow.Later!.Value.Low + 5);
        Assert.True(fast.BuckFace!.Value.Low > slow.BuckFace!.Value.High);
    }

    [Fact]
    public void Long_times_are_in_minutes()
    {
        Assert.Matches(@"Cooling     first part \d+ to \d+ min on", Card("petg", 5));
        Assert.Matches(@"Cooling     first part \d0 to \d+0 s on", Card("petg", 1));
    }

    [Fact]
    public void Where_the_warmth_of_the_buck_comes_from_is_named()
    {
        Assert.Contains("Wood Handbook", Card("petg", 1));
        Assert.Contains("warmed to 45 C", Card("petg", 1));
    }

    [Fact]
    public void A_heater_too_cool_is_reported()
    {
        var card = Card("pc", 2, heater: 150);

        Assert.Contains("does not bring this sheet to", card);
        Assert.DoesNotContain("Cooling ", card);
    }

    [Fact]
    public void Without_a_plastic_it_asks_for_one_and_without_a_sheet_there_is_none()
    {
        Assert.Contains("Name the plastic", Card("", 1));
        Assert.Null(
            ProcessCard.Write(CutPlan
                .Create(Formed.Design(Formed.Disc(100), Formed.Spec(BuckKind.Male, 20, 5) with { Sheet = null }), new()), ""));
    }

    [Theory]
    [InlineData(BuckKind.Male, "edge of the face")]
    [InlineData(BuckKind.Female, "lip of the rim")]
    public void A_rounded_edge_is_named_where_the_sheet_is_drawn_over_it(BuckKind kind, string named)
    {
        var spec = Formed.Spec(kind, 20, 5) with { EdgeRadius = 2 };

        var card = ProcessCard.Write(CutPlan.Create(Formed.Design(Formed.Disc(100), spec), new()), "")!;

        Assert.Contains($"Check that the {named} is rounded to 2 mm", Encoding.UTF8.GetString([.. card.Value]));
    }

    [Fact]
    public void Lines_fit_a_page() => Assert.All(Card("pp", 1.5).Split('\n'), l => Assert.InRange(l.Length, 0, 110));

    private static string Card(string plastic, double gauge, bool below = false, double heater = 400)
    {
        var spec = Formed.Spec(BuckKind.Male, 20, 5, gauge) with
        {
            Sheet = new() { Plastic = Catalog.BuiltIn.FindPlastic(plastic), Gauge = gauge },
            Former = new() { HeaterBelow = below, Heater = heater },
        };
        return Encoding.UTF8
            .GetString([
                .. ProcessCard.Write(CutPlan.Create(Formed.Design(Formed.Disc(100), spec), new()), "A lamp foot")!.Value]);
    }

    private static CoolingTimes Cooling(BuckSpec spec, double heating = 60) =>
        CoolingTimes.Find(Formed.Design(Formed.Disc(100), spec), Catalog.BuiltIn.FindPlastic("petg")!, heating, room: 20)!;

    /// <summary>A range of times, s.</summary>
    private static (double Low, double High) Range(string card, string line)
    {
        var found = Regex.Match(card, $@"^{line} (\d+) to (\d+) (s|min)", RegexOptions.Multiline).Groups;
        double Value(int group) => (found[3].Value == "min" ? 60 : 1)
            * double.Parse(found[group].Value, System.Globalization.CultureInfo.InvariantCulture);
        return (Value(1), Value(2));
    }

    private static double Seconds(string card, string line) => double.Parse(
        Regex.Match(card, $@"^{line} +about (\d+) s", RegexOptions.Multiline).Groups[1].Value,
        System.Globalization.CultureInfo.InvariantCulture);
}
