using CsCheck;
using Xunit;

namespace BuckGen.Geometry.Tests;

public class AffineTests
{
    private static readonly Gen<Vec2> Points = Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], (x, y) => new Vec2(x, y));

    [Fact]
    public void A_quarter_turn_takes_east_to_north()
    {
        var turned = Affine.Rotation(Math.PI / 2, new(10, 10)).Apply(new(15, 10));

        Assert.Equal(0, turned.DistanceTo(new(10, 15)), 1e-12);
    }

    [Fact]
    public void A_reflection_keeps_its_line_and_changes_sides()
    {
        var map = Affine.Reflection(new(0, 5), new(3, 0));

        Assert.True(map.Mirrors);
        Assert.Equal(0, map.Apply(new(7, 5)).DistanceTo(new(7, 5)), 1e-12);
        Assert.Equal(0, map.Apply(new(7, 8)).DistanceTo(new(7, 2)), 1e-12);
    }

    [Fact]
    public void Scaling_keeps_its_centre() =>
        Assert.Equal(0, Affine.Scaling(2, new(3, 4)).Apply(new(4, 6)).DistanceTo(new(5, 8)), 1e-12);

    [Fact]
    public void One_map_then_another_is_both_in_turn() =>
        Gen.Select(Points, Points, Gen.Double[-3, 3]).Sample((p, centre, angle) =>
        {
            var (first, second) = (Affine.Rotation(angle, centre),
                Affine.Translation(new(2, -9)).Then(Affine.Scaling(1.5, new(0, 1))));
            return first.Then(second).Apply(p).DistanceTo(second.Apply(first.Apply(p))) < 1e-9;
        });
}
