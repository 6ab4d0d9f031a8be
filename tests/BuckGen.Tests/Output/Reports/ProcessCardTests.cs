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
        Assert.InRange(Seconds(card, "Cooling"), 2, 200);
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
    public void A_heater_too_cool_is_reported() => Assert.Contains("does not bring this sheet to", Card("pc", 2, heater: 150));

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

    private static double Seconds(string card, string line) => double.Parse(
        Regex.Match(card, $@"^{line} +about (\d+) s", RegexOptions.Multiline).Groups[1].Value,
        System.Globalization.CultureInfo.InvariantCulture);
}
