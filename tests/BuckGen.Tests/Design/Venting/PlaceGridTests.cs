using BuckGen.Design.Venting;
using BuckGen.Geometry;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>The grid finds what a look at all places finds.</summary>
public class PlaceGridTests
{
    private static readonly Gen<Vec2> Places = Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], (x, y) => new Vec2(x, y));

    [Fact]
    public void Places_within_a_distance_are_found() =>
        Gen.Select(Places.Array[0, 80], Places, Gen.Double[0.1, 30], Gen.Double[0.5, 20]).Sample((places, p, distance, cell) =>
        {
            var grid = Filled(places, cell);
            var near = Enumerable.Range(0, places.Length).Where(i => places[i].DistanceTo(p) < distance).ToArray();
            Assert.Equal(near, grid.Within(p, distance).Order());
            Assert.Equal(near.Length > 0, grid.HasWithin(p, distance));
        });

    [Fact]
    public void Places_in_a_rectangle_are_found() =>
        Gen.Select(Places.Array[0, 80], Places, Places, Gen.Double[0.5, 20]).Sample((places, a, b, cell) =>
            Assert.Equal(Enumerable.Range(0, places.Length).Where(i => Bounds.FromCorners(a, b).Contains(places[i])),
                Filled(places, cell).Inside(Bounds.FromCorners(a, b)).Order()));

    [Fact]
    public void A_place_at_the_distance_itself_is_not_nearer()
    {
        var grid = Filled([new(0, 0)], 7);
        Assert.False(grid.HasWithin(new(7, 0), 7));
        Assert.True(grid.HasWithin(new(6.999, 0), 7));
    }

    [Fact]
    public void Vents_keep_apart_on_all_layers_but_serve_their_own()
    {
        var vents = new PlacedVents(7);
        vents.Add(new(new(0, 0), 1, 1, VentReason.Wall));
        vents.Add(new(new(20, 0), 1, 2, VentReason.Corner));
        Assert.True(vents.IsTaken(new(26, 0)));
        Assert.False(vents.IsTaken(new(27, 0)));
        Assert.Empty(vents.Beside(new(18, 0), 1));
        Assert.Equal(new(20, 0), Assert.Single(vents.Beside(new(18, 0), 2)).Centre);
        Assert.Equal(new(0, 0), Assert.Single(vents.Inside(new(-1, -1, 30, 1), 1)).Centre);
        Assert.Equal(2, vents.All.Count);
    }

    private static PlaceGrid Filled(IEnumerable<Vec2> places, double cell)
    {
        var grid = new PlaceGrid(cell);
        foreach (var p in places) grid.Add(p);
        return grid;
    }
}
