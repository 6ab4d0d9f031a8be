using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Output.Files;
using BuckGen.Settings;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>What was written is judged, not what was designed: the layers are read back from their DXF.</summary>
[Trait("Tier", "slow")]
public sealed class PlenumTests
{
    [Theory]
    [InlineData(BuckKind.Male)]
    [InlineData(BuckKind.Female)]
    public void Every_bore_opens_into_the_one_channel_that_leads_to_the_port(BuckKind kind)
    {
        var design = Vented.Design(Vented.Sign(), Vented.Spec(kind, 12, PlenumKind.Channels));
        var channels = Loops(design, 1, "CUT_INNER");
        var port = design.Layers[0].Region.Bounds.Centre;
        var main = Assert.Single(channels, c => c.Contains(port));
        var bores = Circles(design, 2);
        Assert.Equal(design.Vents!.Vents.Length, bores.Count);
        Assert.All(bores, b => Assert.True(main.Contains(b.Centre), $"the bore at {b.Centre} is not over the channel"));
    }

    [Fact]
    public void Every_vent_of_the_surface_lies_over_a_wider_bore_of_the_plate_below()
    {
        var design = Vented.Design(Vented.Sign(), Vented.Spec(depth: 12, plenum: PlenumKind.Channels));
        var (bores, vents) = (Circles(design, 2), Circles(design, 3));
        Assert.Equal(vents.Count, bores.Count);
        Assert.All(vents, v => Assert.Contains(bores, b => b.Centre.DistanceTo(v.Centre) < 1e-4 && b.Radius > 2 * v.Radius));
    }

    [Fact]
    public void Feet_keep_clear_of_the_bores_and_stand_near_enough()
    {
        var design = Vented.Design(Vented.Sign(), Vented.Spec(depth: 12, plenum: PlenumKind.Feet));
        var feet = design.Layers[0].Parts.Select(p => p.Shape.Outer.Bounds).ToArray();
        Assert.True(feet.Length >= 9);
        foreach (var bore in Circles(design, 2))
            Assert.All(feet, f => Assert.True(f.Centre.DistanceTo(bore.Centre) >= f.Width / 2 + bore.Radius));
        Assert.DoesNotContain(design.Findings, f => f.Id == "base-bows");
    }

    [Fact]
    public void A_port_wider_than_the_base_spans_is_reported()
    {
        var spec = Vented.Spec(plenum: PlenumKind.Channels);
        var design = Vented.Design(Vented.Rectangle(300, 200), spec with { Plenum = spec.Plenum! with { PortDiameter = 150 } });
        Assert.Contains(design.Findings, f => f.Id == "base-bows");
    }

    [Theory]
    [InlineData(PlenumKind.Channels)]
    [InlineData(PlenumKind.Feet)]
    public void A_plenum_of_which_nothing_is_left_is_an_error_and_no_empty_file(PlenumKind kind)
    {
        var spec = Vented.Spec(depth: 12, plenum: kind);
        var design =
            Vented.Design(Vented.Rectangle(20, 15),
                spec with
                {
                    Base = spec.Base! with { Margin = 1 },
                    Plenum = spec.Plenum! with { Width = 40, PortDiameter = 60 }
                });

        Assert.Single(design.Findings, f => f.Id == "plenum-vanishes" && f.Severity == Severity.Error);
        var files = OutputFiles.Create(CutPlan.Create(design, new()), new OutputOptions(), force: true)
            .Select(f => f.Path).ToArray();
        Assert.DoesNotContain("layers/layer-01.dxf", files);
        Assert.Contains("layers/layer-02.dxf", files);
    }

    [Fact]
    public void Vents_and_a_plenum_without_a_base_are_refused()
    {
        var spec = Vented.Spec(plenum: PlenumKind.Feet);
        var refused = Assert.Throws<SpecException>(() => Vented.Design(Vented.Rectangle(100, 60), spec with { Base = null }));
        Assert.Contains("base", refused.Message, StringComparison.Ordinal);
    }

    private static List<(Vec2 Centre, double Radius)> Circles(BuckDesign design, int layer) =>
        [.. Read(design, layer).OfType<DxfCircle>().Where(c => c.Layer == "VENT")
            .Select(c => (new Vec2(c.Centre.X, c.Centre.Y), c.Radius))];

    private static List<Loop> Loops(BuckDesign design, int layer, string name) =>
        [.. Read(design, layer).OfType<DxfPolyline>().Where(p => p.Layer == name)
            .Select(p => Loop.FromCorners([.. p.Vertices.Select(v => (new Vec2(v.X, v.Y), v.Bulge))]))];

    private static ImmutableArray<DxfEntity> Read(BuckDesign design, int layer) =>
        DxfReader.Read([.. DxfCutFile.Write(LayerDrawing.Create(design.Layers[layer - 1]), DxfVersion.R12)]).Entities;
}
