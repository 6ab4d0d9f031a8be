using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>Where a vent has room: a bore of 5 mm keeps 2 mm of wood, so its centre stays 4.5 mm from an edge.</summary>
public sealed class BoreRoomTests
{
    private const double Hair = 1e-6;

    private static readonly LayerBlank Plate = new(1, LayerRole.Base, Vented.Mdf6, 0, 6, Vented.Rectangle(100, 60));
    private static readonly LayerBlank Wall = new(2, LayerRole.Wall, Vented.Mdf6, 6, 12, Vented.Rectangle(50, 60));
    private static readonly LayerBlank Top = new(3, LayerRole.Wall, Vented.Mdf6, 12, 18, Vented.Rectangle(10, 10));

    [Theory]
    [InlineData(4.5 + Hair, 30, true)]
    [InlineData(4.5, 30, true)]
    [InlineData(4.5 - Hair, 30, false)]
    [InlineData(80, 55.5 + Hair, false)]
    [InlineData(80, 55.5 - Hair, true)]
    [InlineData(-10, 30, false)] // clear of the edge, but outside
    public void A_bore_keeps_its_land_to_the_edge(double x, double y, bool free) =>
        Assert.Equal(free, Room().IsFree(new(x, y), Plate));

    [Theory]
    [InlineData(45.5 - Hair, true)] // the bore through the plate does not rule here, the hole of 1 mm does at 2.5 mm
    [InlineData(47.5 - Hair, true)]
    [InlineData(47.5 + Hair, false)]
    public void A_pit_opens_with_the_narrow_hole_alone(double x, bool free) =>
        Assert.Equal(free, Room().IsFree(new(x, 30), Wall));

    [Fact]
    public void The_layers_below_count_with_the_whole_bore_and_those_above_not_at_all()
    {
        Assert.False(Room().IsFree(new(3, 30), Wall));
        Assert.True(Room().IsFree(new(30, 30), Wall));
        Assert.False(Room().IsFree(new(30, 30), Top));
    }

    [Theory]
    [InlineData(7.5 + Hair, true)] // half of 6, half of 5, and 2
    [InlineData(7.5 - Hair, false)]
    public void A_dowel_keeps_its_land_too(double away, bool free)
    {
        var room = Room(dowels: [new(new(70, 30), 6), new(new(70, 30), 6)]);
        Assert.Equal(free, room.IsFree(new(70 + away, 30), Plate));
        Assert.Equal(free, room.IsFree(new(70, 30 - away), Plate));
    }

    [Theory]
    // Each dowel keeps its own land: half of 6 or of 20 mm, half of 5, and 2.
    [InlineData(70, 7.5, true)]
    [InlineData(70, 7.5 - Hair, false)]
    [InlineData(20, 14.5 + Hair, true)]
    [InlineData(20, 14.5 - Hair, false)]
    public void Dowels_of_two_sizes_keep_each_its_own(double dowel, double away, bool free) =>
        Assert.Equal(free, Room(dowels: [new(new(70, 30), 6), new(new(20, 30), 20)]).IsFree(new(dowel, 30 - away), Plate));

    [Fact]
    public void Nothing_is_free_in_a_keep_out_area()
    {
        var room = Room(new() { KeepOut = [new(60, 20, 90, 40)] });
        Assert.False(room.IsFree(new(70, 30), Plate));
        Assert.True(room.IsFree(new(70, 45), Plate));
        Assert.Equal(7, room.Apart);
    }

    [Fact]
    public void A_wall_hides_what_lies_behind_it()
    {
        var floor = new AirFloor(Plate, new(Loop.Rectangle(new(0, 0, 100, 60)), []), new(Shapes.RectangleAt(40, 20, 2, 20)));
        Assert.False(floor.Sees(new(20, 30), new(60, 30)));
        Assert.False(floor.Sees(new(60, 30), new(20, 30)));
        Assert.True(floor.Sees(new(20, 50), new(60, 50)));
        Assert.True(floor.Sees(new(20, 30), new(39, 30)));
        Assert.True(floor.Sees(new(20, 30), new(40, 30))); // as far as the wall itself
        Assert.Equal(20, floor.ToWall(new(20, 30), 30), 1e-9);
        Assert.Equal(double.PositiveInfinity, floor.ToWall(new(20, 30), 10));
        Assert.Equal(0, floor.ToWall(new(41, 30), 30)); // under the wall
    }

    [Fact]
    public void A_given_vent_gives_way_along_its_row_by_whole_millimetres_up_to_half_the_spacing()
    {
        var floor = new AirFloor(Plate, new(Loop.Rectangle(new(0, 0, 100, 60)), []), new(Region.Empty));
        var taken = new PlacedVents(7);
        var placement = new VentPlacement(floor, Room(dowels: [new(new(50, 30), 6)]), new() { Spacing = 20 }, 1, taken);
        Vec2 Way(double along) => new(along, 30);

        Assert.True(placement.TryPlace(new(Way(50), VentReason.Wall, Way, 50)));
        Assert.Equal(new Vent(new(58, 30), 1, 1, VentReason.Wall), Assert.Single(taken.All));
        Assert.True(placement.TryPlace(new(Way(50), VentReason.Corner, Way, 50)));
        Assert.Equal(new(42, 30), taken.All[1].Centre); // the other way is taken
        Assert.False(placement.TryPlace(new(Way(50), VentReason.Wall, Way, 50)));
        Assert.False(placement.TryPlace(new(Way(50), VentReason.Counter)));
        Assert.True(placement.IsDone(new(new(60, 30), VentReason.Wall)));
        Assert.True(placement.IsDone(new(new(58 + 7 - Hair, 30), VentReason.Wall)));
        Assert.False(placement.IsDone(new(new(58 + 7, 30), VentReason.Wall)));
    }

    private static BoreRoom Room(VentSpec? spec = null, DowelHole[]? dowels = null) =>
        new([Plate, Wall, Top], dowels ?? [], spec ?? new(), 1);
}
