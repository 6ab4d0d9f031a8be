using System.Globalization;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Writing;

public class ExtentsTests
{
    [Fact]
    public void A_circle_reaches_its_radius() => AssertExtents(-2, -1, 4, 5, new DxfCircle(new(1, 2), 3));

    [Fact]
    public void An_arc_reaches_only_as_far_as_it_runs() => AssertExtents(0, 0, 5, 5, new DxfArc(new(0, 0), 5, 0, 90));

    [Fact]
    public void An_arc_over_the_x_axis_reaches_its_quadrant()
    {
        var half = 5 * Math.Sqrt(0.5);
        AssertExtents(half, -half, 5, half, new DxfArc(new(0, 0), 5, 315, 45));
    }

    [Fact]
    public void A_left_bulge_reaches_to_the_right_of_its_chord() =>
        AssertExtents(0, -5, 10, 0, new DxfPolyline([new(0, 0, 1), new(10, 0)], false));

    [Fact]
    public void A_right_bulge_reaches_to_the_left_of_its_chord() =>
        AssertExtents(0, 0, 10, 2, new DxfPolyline([new(0, 0, -0.4), new(10, 0)], false));

    [Fact]
    public void The_closing_piece_counts() =>
        AssertExtents(-5, 0, 10, 10, new DxfPolyline([new(0, 0), new(10, 0), new(10, 10), new(0, 10, 1)], true));

    [Fact]
    public void Everything_counts_together() =>
        AssertExtents(-9, 0, 4, 30, new DxfLine(new(0, 0), new(4, 3)), new DxfPointEntity(new(-9, 30)));

    [Fact]
    public void The_viewport_frames_the_drawing()
    {
        var tags = Drawings.Tags(Drawings.Of(new DxfLine(new(10, 20), new(310, 40))), DxfVersion.R2000);
        var viewport = tags.SkipWhile(tag => tag is not { Code: 0, Value: "VPORT" }).Skip(1).TakeWhile(tag => tag.Code != 0).ToList();
        double Value(int code) => double.Parse(viewport.Single(tag => tag.Code == code).Value, CultureInfo.InvariantCulture);
        Assert.Equal((160, 30), (Value(12), Value(22)));
        Assert.True(Value(40) >= 20 && Value(40) * Value(41) is >= 300 and <= 400);
    }

    private static void AssertExtents(double minX, double minY, double maxX, double maxY, params DxfEntity[] entities)
    {
        foreach (var version in Enum.GetValues<DxfVersion>())
        {
            var tags = Drawings.Tags(Drawings.Of(entities), version).ToList();
            double[] expected = [minX, minY, maxX, maxY];
            Assert.All(expected.Zip(Point("$EXTMIN").Concat(Point("$EXTMAX"))), pair => Assert.Equal(pair.First, pair.Second, 5));

            IEnumerable<double> Point(string name) =>
                tags.Skip(tags.FindIndex(tag => tag.Value == name) + 1).Take(2).Select(tag => double.Parse(tag.Value, CultureInfo.InvariantCulture));
        }
    }
}
