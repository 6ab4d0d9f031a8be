using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry.Tests;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Prediction;

/// <summary>What the sheet does beside the block of a cavity is trimmed off and no fault of the part.</summary>
[Trait("Tier", "slow")]
public class CavityWasteTests
{
    private static readonly Lazy<BuckDesign> Tray = new(() => Formed.Design(
        Shapes.RectangleAt(0, 0, 80, 60),
        Formed.Spec(BuckKind.Female, 24, 4) with
        {
            Stock = [Formed.Mdf6],
            Former = new() { Opening = new(200, 160) },
            Prediction = new(),
        }));

    [Fact]
    public void Webs_at_the_corners_of_the_block_are_one_note()
    {
        var webs = Tray.Value.Formed!.Webs;
        Assert.NotEmpty(webs);
        Assert.All(webs, w => Assert.False(Tray.Value.Footprint.Bounds.Grown(10).Contains(w.Place)));

        Assert.DoesNotContain(Tray.Value.Findings, f => f.Id == "sheet-webs");
        var waste = Assert.Single(Tray.Value.Findings, f => f is { Id: "faults-trimmed-off", Severity: Severity.Note });
        Assert.StartsWith("Outside the cavity the sheet folds in ", waste.Message);
    }
}
