using BuckGen.Dxf.Entities;

namespace BuckGen.Dxf.Tests;

public class PlaneTests
{
    [Fact]
    public void Straight_up_changes_nothing() =>
        Assert.Equal(new DxfPoint(1, 2, 3), DxfPlane.FromExtrusion(new(0, 0, 5)).ToDrawing(new(1, 2, 3)));

    [Fact]
    public void A_missing_direction_counts_as_straight_up() => Assert.Equal(DxfPlane.Plan, DxfPlane.FromExtrusion(default));

    [Fact]
    public void Straight_down_mirrors_x_and_z()
    {
        var plane = DxfPlane.FromExtrusion(new(0, 0, -1));
        Assert.Equal(new DxfPoint(-1, 2, -3), plane.ToDrawing(new(1, 2, 3)));
        Assert.True(plane.FacesAway);
    }

    [Theory]
    [InlineData(1, 0, 0, 0, 1, 0)]
    [InlineData(0, -1, 0, 1, 0, 0)]
    [InlineData(0, 1, 0, -1, 0, 0)]
    [InlineData(0.001, 0, 1, 0.9999995, 0, -0.0009999995)]
    public void The_x_axis_follows_the_rule_of_the_format(double ex, double ey, double ez, double x, double y, double z)
    {
        var axis = DxfPlane.FromExtrusion(new(ex, ey, ez)).XAxis;
        Assert.Equal(x, axis.X, 9);
        Assert.Equal(y, axis.Y, 9);
        Assert.Equal(z, axis.Z, 9);
    }

    [Theory]
    [InlineData(1e-300, 2e-300, 3e-300)]
    [InlineData(1e300, -2e300, 3e300)]
    public void Axes_are_unit_vectors_for_any_length(double x, double y, double z)
    {
        var plane = DxfPlane.FromExtrusion(new(x, y, z));
        Assert.All(
            [plane.XAxis, plane.YAxis, plane.ZAxis],
            axis => Assert.Equal(1, (axis.X * axis.X) + (axis.Y * axis.Y) + (axis.Z * axis.Z), 12));
    }
}
