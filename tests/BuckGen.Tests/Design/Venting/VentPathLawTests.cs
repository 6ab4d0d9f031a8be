using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>Over the corpus air finds its way from every vent to the port; judged by the layer files alone.</summary>
[Trait("Tier", "slow")]
public sealed class VentPathLawTests
{
    [Theory]
    [InlineData(BuckKind.Male, PlenumKind.Feet)]
    [InlineData(BuckKind.Male, PlenumKind.Channels)]
    [InlineData(BuckKind.Female, PlenumKind.Feet)]
    [InlineData(BuckKind.Female, PlenumKind.Channels)]
    public void Every_vent_leads_down_to_the_port(BuckKind kind, PlenumKind plenum)
    {
        var faults = new Faults();
        foreach (var c in VentCase.All.Where(c => c.Spec.Kind == kind && c.Spec.Plenum!.Kind == plenum))
        {
            var paths = new AirPaths([.. c.Design.Layers.Select(LayerFile.Create)], plenum,
                c.Design.Layers[0].Region.Bounds.Centre);
            faults.Check(paths.Mouths.Count == c.Vents.Vents.Length,
                () => $"{c.Name}: {paths.Mouths.Count} vents in the files, {c.Vents.Vents.Length} designed");
            foreach (var mouth in paths.Mouths)
            {
                faults.Check(paths.IsOpenAbove(mouth),
                    () => $"{c.Name}: the vent at {mouth.Centre} of layer {mouth.Layer} is covered");
                faults.Check(paths.ReachesPort(mouth),
                    () => $"{c.Name}: the vent at {mouth.Centre} of layer {mouth.Layer} leads nowhere");
            }
        }

        faults.None(1100);
    }

    [Fact]
    public void Some_of_the_vents_open_on_a_ledge_above_the_base() =>
        Assert.InRange(VentCase.All.Sum(c => c.Vents.Vents.Count(v => v.Layer > c.Surface.Number)), 4, int.MaxValue);
}
