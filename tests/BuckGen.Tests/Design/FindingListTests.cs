using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
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
    public void Kinds_of_findings_are_numbered_in_the_order_in_which_they_are_listed()
    {
        var plan = CutPlan.Create(Deep.Value, new());

        Assert.InRange(plan.Findings.Length, 1, 100);
        AssertNumbered(Deep.Value.Findings);
        AssertNumbered(plan.AllFindings);
        Assert.Equal(plan.AllFindings.Select(f => (f.Number, f.Id)),
            Summary.Create(plan, "", []).Findings.Select(f => (f.Number, f.Id)));
        Assert.Equal(plan.AllFindings.Select(f => f.Severity).OrderDescending(), plan.AllFindings.Select(f => f.Severity));
    }

    [Fact]
    public void Findings_of_a_kind_stand_together_from_the_bottom_up_and_share_a_number()
    {
        static Finding Found(string id, Severity severity, double height) =>
            new(id, severity, "so it is", "do so") { Height = height };

        var list = FindingList.Create(
            [
                Found("web", Severity.Warning, 9), Found("neck", Severity.Warning, 4), Found("note", Severity.Note, 0),
                Found("web", Severity.Warning, 2), Found("draft", Severity.Error, 5), Found("web", Severity.Note, 3),
            ], []);

        Assert.Equal(
            [("draft", 5, 1), ("web", 2, 2), ("web", 9, 2), ("neck", 4, 3), ("note", 0, 4), ("web", 3, 5)],
            list.Select(f => (f.Id, (int)f.Height!.Value, f.Number)));
    }

    /// <summary>From 1 without a gap, one number for each kind, and all of a kind together.</summary>
    private static void AssertNumbered(ImmutableArray<Finding> findings)
    {
        var kinds = findings.Select(f => (f.Severity, f.Id, f.Silenced)).Distinct().ToArray();
        Assert.InRange(kinds.Length, 2, findings.Length);
        Assert.Equal(
            findings.Select(f => Array.IndexOf(kinds, (f.Severity, f.Id, f.Silenced)) + 1), findings.Select(f => f.Number));
    }
}
