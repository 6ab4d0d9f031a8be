using System.Text.RegularExpressions;
using BuckGen.Output.Reports;
using BuckGen.Output.Reports.Page;
using Xunit;

namespace BuckGen.Tests.Output.Reports.Page;

/// <summary>The title block of the page, with what only some jobs have.</summary>
[Trait("Tier", "slow")]
public partial class PageHeadTests
{
    private static readonly Lazy<Summary> Reckoned = new(() => SummaryJson.Read([.. SampleJobs.Summary("reckoned")]));

    [Theory]
    [InlineData(1, "Female buck from drawn, 1 island, to size at the face.")]
    [InlineData(3, "Female buck from drawn, 3 islands, to size at the face.")]
    public void It_begins_with_what_the_buck_is(int islands, string expected) =>
        Assert.Contains($"<h1>drawn</h1>\n<p>{expected}</p>\n",
            Head(Reckoned.Value with { Outline = Reckoned.Value.Outline with { Islands = islands } }));

    [Theory]
    [InlineData(0, "36 mm (off by 0)")]
    [InlineData(0.5, "36 mm (off by +0.5)")]
    [InlineData(-0.25, "36 mm (off by -0.25)")]
    public void The_depth_has_its_difference_with_a_sign(double miss, string expected) =>
        Assert.Equal(expected, Fact("Depth of the buck",
            Reckoned.Value with { Buck = Reckoned.Value.Buck with { DepthMiss = miss } }));

    [Fact]
    public void A_rounded_edge_is_named_and_a_sharp_one_is_not()
    {
        Assert.Null(Fact("Upper edge", Reckoned.Value));
        Assert.Equal("rounded to 2.5 mm after gluing",
            Fact("Upper edge", Reckoned.Value with { Buck = Reckoned.Value.Buck with { EdgeRadius = 2.5 } }));
    }

    [Theory]
    [InlineData("", "184 x 164 mm of 1 mm")]
    [InlineData("petg", "184 x 164 mm of 1 mm petg")]
    public void The_blank_has_its_plastic_when_it_is_known(string plastic, string expected) =>
        Assert.Equal(expected, Fact("Blank", Reckoned.Value with { Blank = Reckoned.Value.Blank! with { Plastic = plastic } }));

    [Fact]
    public void A_single_board_is_one_board()
    {
        Assert.EndsWith(" m on 2 boards", Fact("To cut", Reckoned.Value));
        Assert.EndsWith(" m on 1 board", Fact("To cut", Reckoned.Value with { Boards = Reckoned.Value.Boards[..1] }));
    }

    [Theory]
    [InlineData("EUR", "16.25 EUR, 24 minutes")]
    [InlineData("", "16.25 , 24 minutes")]
    public void The_cost_is_that_of_what_is_used_up_and_of_the_work(string currency, string expected) =>
        Assert.Equal(expected, Fact("Cost", Reckoned.Value with
        {
            Cost = Reckoned.Value.Cost! with
            {
                MaterialByShare = 4,
                MaterialWhole = 90,
                WorkCost = 12.25,
                Minutes = 24,
                Currency = currency,
            },
        }));

    [Theory]
    [InlineData(1, "1 layer, 42 mm high")]
    [InlineData(4, "4 layers, 42 mm high")]
    public void The_stack_has_its_layers_and_its_height(int layers, string expected) =>
        Assert.Equal(expected, Fact("Stack", Reckoned.Value with { Layers = Reckoned.Value.Layers[..layers] }));

    [Fact]
    public void What_a_job_does_not_have_is_left_out() =>
        Assert.Equal(["Depth of the buck", "Stack", "Footprint", "Draft", "To cut"],
            Terms().Matches(Head(Reckoned.Value with { Blank = null, Air = null, Cost = null, Part = null }))
                .Select(m => m.Groups[1].Value));

    private static string? Fact(string what, Summary summary) =>
        Terms().Matches(Head(summary)).SingleOrDefault(m => m.Groups[1].Value == what)?.Groups[2].Value;

    private static string Head(Summary summary)
    {
        var html = new Html();
        PageHead.Add(html, summary);
        return html.ToString();
    }

    [GeneratedRegex("<dt>([^<]*)</dt><dd>([^<]*)</dd>")]
    private static partial Regex Terms();
}
