using BuckGen.Physics.Membranes;
using Xunit;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>Sheets that slide on the tool, with all friction from none to stick.</summary>
[Trait("Tier", "slow")]
public class FrictionTests(FrictionTests.Runs runs) : IClassFixture<FrictionTests.Runs>
{
    private static readonly FormingLoad Slow = new(100 * Formed.PressureUnit) { PathTolerance = 0.02 };

    private static readonly ITool Channel = new Cavity(Formed.Size, 0.5 * Formed.Size),
        Trough = new Pit(Formed.Size, Math.PI / 4, round: false);

    private static readonly Block Block = Block.Strip(0.5 * Formed.Size, 0.5 * Formed.Size);

    /// <summary>Its edge lies between two columns of nodes; see the remarks of <see cref="FrictionContact"/>.</summary>
    private static readonly Block OffNodes = Block.Strip(0.497 * Formed.Size, 0.5 * Formed.Size);

    /// <summary>
    /// Without friction there is one tension all along, over edges too: an even thickness, the width over the formed length.
    /// </summary>
    [Theory]
    [InlineData("channel", 1.5)]
    [InlineData("trough", 1.4142)]
    [InlineData("block", 1.5)]
    public void Without_friction_the_thickness_is_even(string tool, double length)
    {
        var formed = Form(tool, 0);

        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        Assert.Equal(1 / length, formed.MeanThickness / formed.Sheet.Thickness, 0.01 / length);
        Assert.All(formed.ThicknessRatios(), p => Assert.Equal(1 / length, p.ThicknessRatio, 0.03 / length));
        Assert.Equal(formed.PlasticVolumeBefore, formed.PlasticVolumeAfter, formed.PlasticVolumeBefore * 1e-9);
    }

    [Theory]
    [InlineData("channel", 0.01)]
    [InlineData("trough", 0.01)]
    // Short of the 1 % aimed at: the triangles across the edge, of which a node slips before the sheet presses.
    [InlineData("block off the nodes", 0.2)]
    public void Much_friction_is_stick(string tool, double worst)
    {
        var (much, stick) = (Form(tool, 1e4), Form(tool, null));

        Assert.Equal(FormingOutcome.Converged, much.Outcome);
        Assert.Equal(stick.MeanThickness, much.MeanThickness, 0.01 * stick.MeanThickness);
        Assert.All(much.Thickness.Zip(stick.Thickness), t => Assert.Equal(1, t.First / t.Second, worst));
        if (ToolOf(tool) is Block)
            Assert.All(much.ThicknessRatios().Where(p => p.Position.X < 45), p => Assert.Equal(1, p.ThicknessRatio, 0.01));
    }

    /// <summary>The less friction, the more even: the thinnest place gets thicker, the thickest thinner.</summary>
    [Theory]
    [InlineData("channel")]
    [InlineData("trough")]
    [InlineData("block")]
    public void Less_friction_is_more_even(string tool)
    {
        FormedSheet[] formed = [.. new double?[] { 0, 0.1, 0.3, 1, null }.Select(f => Form(tool, f))];

        Assert.All(formed, f => Assert.Equal(FormingOutcome.Converged, f.Outcome));
        Assert.All(formed, f => Assert.Equal(0, ToolPenetration.MaxNodePenetration(f, ToolOf(tool)), 1e-6));
        var (least, most) = (formed.Select(f => f.Thickness.Min()).ToArray(), formed.Select(f => f.Thickness.Max()).ToArray());
        for (var i = 1; i < formed.Length; i++)
            // Where friction holds all but everything, what is left is the difference of two runs.
            Assert.True(least[i] < least[i - 1] * 1.002 && most[i] > most[i - 1] * 0.998,
                $"{string.Join(' ', least)}, {string.Join(' ', most)}");
        Assert.True(least[0] > 1.15 * least[1] && least[1] > 1.15 * least[4], string.Join(' ', least));
    }

    /// <summary>
    /// A block that rises without pressure presses at its edges only, so the tension grows there by Euler's exp(f·a), a the angle
    /// down to the frame, and the sheet on the top and in the web is even each for itself: with the share m on the top, T(L/(1 -
    /// m)) = exp(f·a)·T(w/m), T(l) = l - l^-3.
    /// </summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.2)]
    [InlineData(0.4)]
    public void An_edge_passes_tension_on_as_Euler_says(double friction)
    {
        var formed =
            MembraneForming.Form(Formed.Strip(80), Block,
            new(1e-3 * Formed.PressureUnit) { PathTolerance = 0.02, Rise = 0.5 * Formed.Size, Friction = friction });

        static double Tension(double stretch) => stretch - Math.Pow(stretch, -3);
        var (low, high) = (0.25, 0.5);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (Tension(Math.Sqrt(0.5) / (1 - middle)) > Math.Exp(friction * Math.PI / 4) * Tension(0.5 / middle)) high = middle;
            else low = middle;
        }
        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        var (top, web) = (low / 0.5, (1 - low) / Math.Sqrt(0.5));
        Assert.All(formed.ThicknessRatios().Where(p => p.Position.X < 47), p => Assert.Equal(top, p.ThicknessRatio, 0.01 * top));
        Assert.All(formed.ThicknessRatios().Where(p => p.Position.X > 53), p => Assert.Equal(web, p.ThicknessRatio, 0.01 * web));
    }

    /// <summary>A box formed into and a block formed over, with edges and corners all round, at any friction.</summary>
    [Theory]
    [InlineData("box", 0.0)]
    [InlineData("box", 0.1)]
    [InlineData("box", 0.5)]
    [InlineData("box", 1e4)]
    [InlineData("buck", 0.0)]
    [InlineData("buck", 0.1)]
    [InlineData("buck", 0.5)]
    [InlineData("buck", 1e4)]
    public void Round_corners_too_it_comes_to_rest_and_nowhere_through_the_tool(string what, double friction)
    {
        ITool tool = what == "box" ? new Cavity(Formed.Size, 0.5 * Formed.Size)
            : new Frustum(Plans.Rectangle(new(0, 0), 48.5, 48.5, 10), 40, 5);
        var load = new FormingLoad(30 * Formed.PressureUnit) { Rise = what == "box" ? 0 : 40 };
        var (slid, stuck) =
            (MembraneForming.Form(Formed.Quarter(16), tool, load with { Friction = friction }),
            MembraneForming.Form(Formed.Quarter(16), tool, load));

        Assert.Equal(FormingOutcome.Converged, slid.Outcome);
        Assert.Equal(slid.PlasticVolumeBefore, slid.PlasticVolumeAfter, slid.PlasticVolumeBefore * 1e-9);
        Assert.Equal(0, ToolPenetration.MaxNodePenetration(slid, tool), 1e-6);
        Assert.Equal(0, ToolPenetration.InvertedCount(slid, tool));
        Assert.Equal(stuck.MeanThickness, slid.MeanThickness, 0.02 * stuck.MeanThickness);
        var worst = slid.Thickness.Zip(stuck.Thickness, (a, b) => Math.Abs(a / b - 1)).Max();
        if (friction == 1e4) Assert.InRange(worst, 0, what == "box" ? 0.01 : 0.1);
        else Assert.InRange(worst, 0.02, 10);
    }

    [Fact]
    public void A_second_run_gives_the_same_numbers()
    {
        var (first, second) = (Form("channel", 0.3), Run("channel", 0.3));

        Assert.Equal(first.Steps, second.Steps);
        Assert.Equal(first.Nodes, second.Nodes);
        Assert.Equal(first.Thickness, second.Thickness);
    }

    private FormedSheet Form(string tool, double? friction) => runs.Form(tool, friction);

    private static FormedSheet Run(string tool, double? friction) => MembraneForming.Form(
        Formed.Strip(80), ToolOf(tool), Slow with { Friction = friction, Rise = ToolOf(tool) is Block ? 0.5 * Formed.Size : 0 });

    private static ITool ToolOf(string tool) =>
        tool switch { "channel" => Channel, "trough" => Trough, "block" => Block, _ => OffNodes };

    /// <summary>Sheets that several tests look at, each formed once.</summary>
    public sealed class Runs
    {
        private readonly Dictionary<string, FormedSheet> formed = [];

        internal FormedSheet Form(string tool, double? friction)
        {
            var name = FormattableString.Invariant($"{tool} {friction}");
            return formed.TryGetValue(name, out var known) ? known : formed[name] = Run(tool, friction);
        }
    }
}
