using System.Text;
using System.Text.RegularExpressions;
using BuckGen.Cutting.Boards;
using BuckGen.Design.Bucks;
using BuckGen.Intake.Catalogs;
using BuckGen.Output.Reports.Card;
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
