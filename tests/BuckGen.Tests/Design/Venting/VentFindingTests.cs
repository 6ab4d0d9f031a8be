using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Physics.Air;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>What is reported about vents names place, value, limit and remedy.</summary>
public sealed class VentFindingTests
{
    private static readonly LayerBlank Plate = new(2, LayerRole.Base, Vented.Mdf6, 6, 12, Vented.Rectangle(100, 60));

    [Theory]
    [InlineData(VentReason.Given, "that was asked for")]
    [InlineData(VentReason.Gap, "in the gap")]
    [InlineData(VentReason.Counter, "in the counter or pit")]
    [InlineData(VentReason.Corner, "in the corner")]
    [InlineData(VentReason.Wall, "along the wall")]
    [InlineData(VentReason.Pattern, "of the pattern")]
    public void A_vent_without_room(VentReason reason, string where)
    {
        var finding = VentFindings.NoRoom(new(new(12, 34.5), reason), Plate);
        Assert.Equal($"There is no room for a vent {where} at (12.000, 34.500) on layer 2.", finding.Message);
        Assert.Equal("Use a narrower bore or less land, move a dowel, or widen the place.", finding.Remedy);
        AssertAbout(finding, "vent-no-room", place: new(12, 34.5), height: 12);
    }

    [Fact]
    public void A_wall_without_vents()
    {
        var finding = VentFindings.FarApart(new(1, 2), 40.26, 25, Plate);
        Assert.Equal(
            "Along the wall at (1.000, 2.000) on layer 2, 40.3 mm are without a vent, more than the spacing of 25 mm: an "
            + "edge, a dowel, a wall or another bore is in the way.",
            finding.Message);
        Assert.Equal("Use a narrower bore or less land, move a dowel, or widen the place.", finding.Remedy);
        AssertAbout(finding, "vent-spacing", place: new(1, 2), height: 12, value: 40.26, limit: 25);
    }

    [Fact]
    public void A_point_that_lies_on_no_floor()
    {
        var finding = VentFindings.NotOnAFloor(new(-3, 4));
        Assert.Equal("The vent at (-3.000, 4.000) does not lie on a floor but under a wall or outside; it is left out.",
            finding.Message);
        Assert.Equal("Move the point into a pocket or onto the base beside the wall.", finding.Remedy);
        AssertAbout(finding, "vent-not-on-floor", place: new(-3, 4));
    }

    [Fact]
    public void Holes_wider_than_the_sheet_is_thick()
    {
        var sizing = new VentSizing(1.5, 0.6667, 0.65);
        Assert.Empty(VentFindings.OfSize(0.65, sizing));
        var finding = Assert.Single(VentFindings.OfSize(0.8, sizing));
        Assert.Equal("Vents of 0.8 mm are wider than the formed sheet is thick on average (0.67 mm); they may leave pimples.",
            finding.Message);
        Assert.Equal("Use a narrower drill, a thicker sheet or a larger plate.", finding.Remedy);
        AssertAbout(finding, "vents-too-wide", value: 0.8, limit: 0.65);
    }

    [Theory]
    [InlineData(2.345, AirBottleneck.Holes, 40, "2.35 s", "the vents",
        "Allow wider vents or a smaller spacing: about 40 vents of this size would do.")]
    [InlineData(2.345, AirBottleneck.Pump, 20, "2.35 s", "the pump", "Use a larger pump or tank, or accept a slower draw.")]
    [InlineData(null, AirBottleneck.Reservoir, null, "more than a minute", "the tank",
        "Use a larger pump or tank, or accept a slower draw.")]
    public void Air_that_leaves_too_slowly(double? seconds, AirBottleneck limit, int? needed, string time, string what,
        string remedy)
    {
        var finding = Assert.Single(VentFindings.OfAir(Air(seconds, limit, needed), 20, new() { WantedTime = 1.25 }));
        Assert.Equal(
            $"The 0.123 L of air under the sheet take {time} to leave through 20 vents, more than the wanted 1.25 s; "
            + $"{what} hold it back.", finding.Message);
        Assert.Equal(remedy, finding.Remedy);
        AssertAbout(finding, "air-too-slow", value: seconds, limit: 1.25);
    }

    [Theory]
    [InlineData(1.2)]
    [InlineData(1.25)]
    public void Air_that_leaves_in_time_is_not_reported(double seconds) =>
        Assert.Empty(VentFindings.OfAir(Air(seconds, AirBottleneck.Pump, 1), 20, new() { WantedTime = 1.25 }));

    private static VentAir Air(double? seconds, AirBottleneck limit, int? needed) => new(
        0.1234, needed, false,
        new() { Seconds = seconds, RigidSeconds = null, ChokedShare = 0, Bottleneck = limit, Samples = [] });

    private static void AssertAbout(
        Finding finding, string id, Vec2? place = null, double? height = null, double? value = null, double? limit = null)
    {
        Assert.Equal((id, Severity.Warning), (finding.Id, finding.Severity));
        Assert.Equal((place, height, value, limit), (finding.Place, finding.Height, finding.Value, finding.Limit));
        Assert.False(string.IsNullOrEmpty(finding.Source));
    }
}
