using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Geometry.Tests;
using BuckGen.Output.Reports;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design;

/// <summary>One list of findings, whoever shows it.</summary>
public class FindingListTests
{
    /// <summary>A steep deep cavity with sharp corners: the sheet thins, and corners are sharp.</summary>
    private static readonly Lazy<BuckDesign> Deep =
        new(() => Formed.Design(Shapes.Rectangle(60, 40), Formed.Spec(BuckKind.Female, 30, 1) with
        {
            Stock = [new("board 6", 6, 50, 50) { SizeIsAssumed = true }],
            Prediction = new(),
            Checks = new()
            {
                MaxThinning = 1.5,
                Silenced = [new("thin-spot", "tried before"), new("draft-low", "the customer wants it so"),
                new("web-between", "a slip")]
            },
        }));

    [Theory]
    [InlineData("thin-spot")]
    [InlineData("draft-low")]
    public void What_is_silenced_is_listed_once_with_its_reason_also_when_the_prediction_found_it(string id)
    {
        Assert.NotNull(Deep.Value.Findings.First(f => f.Id == id).Silenced);
        Assert.DoesNotContain(Deep.Value.Findings, f => f.Id == "silence-idle"
            && f.Message.Contains(id, StringComparison.Ordinal));
    }

    [Fact]
    public void A_silence_without_a_finding_is_named() =>
        Assert.Contains("web-between", Assert.Single(Deep.Value.Findings, f => f.Id == "silence-idle").Message,
            StringComparison.Ordinal);

    [Fact]
    public void Findings_are_numbered_in_the_order_in_which_they_are_listed()
    {
        var plan = CutPlan.Create(Deep.Value, new());

        Assert.InRange(plan.Findings.Length, 1, 100);
        Assert.Equal(Enumerable.Range(1, Deep.Value.Findings.Length), Deep.Value.Findings.Select(f => f.Number));
        Assert.Equal(Enumerable.Range(1, plan.AllFindings.Length), plan.AllFindings.Select(f => f.Number));
        Assert.Equal(plan.AllFindings.Select(f => (f.Number, f.Id)),
            Summary.Create(plan, "", []).Findings.Select(f => (f.Number, f.Id)));
        Assert.Equal(plan.AllFindings.Select(f => f.Severity).OrderDescending(), plan.AllFindings.Select(f => f.Severity));
    }
}
