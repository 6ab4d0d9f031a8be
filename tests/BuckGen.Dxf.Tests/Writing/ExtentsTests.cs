using System.Globalization;
using System.Numerics;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tests.Support;
using CsCheck;

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

    /// <summary>
    /// Judged by many points along each arc, the centre found another way: by the angle that the bulge is the tangent of a
    /// quarter of.
    /// </summary>
    [Fact]
    public void Bulged_pieces_reach_as_far_as_points_along_them() =>
        Gen.Select(Gen.Double[-50, 90], Gen.Double[-70, 60], Gen.Double[-0.99, 0.99]).Array[3, 5].Sample(
            corners =>
            {
                var polyline =
                    new DxfPolyline([.. corners.Select(c => new DxfVertex(c.Item1 + 200, c.Item2 - 300, c.Item3))], true);
                var points = polyline.Vertices
                    .SelectMany((v, i) => Along(v, polyline.Vertices[(i + 1) % polyline.Vertices.Length])).ToList();
                AssertExtents(
                    points.Min(p => p.X), points.Min(p => p.Y), points.Max(p => p.X), points.Max(p => p.Y),
                    within: 0.02, polyline);
            },
            iter: 30);

    [Theory]
    [InlineData(300, 40, 1150, 2020, 220)] // 300 mm wide: 200 mm high in a window of 3:2, and a tenth round it
    [InlineData(40, 300, 1020, 2150, 330)]
    [InlineData(0, 0, 1000, 2000, 1)] // a point has no size, the view must
    public void The_viewport_frames_the_drawing(double width, double height, double middleX, double middleY, double viewHeight)
    {
        DxfEntity entity = width == 0 ? new DxfPointEntity(new(1000, 2000))
            : new DxfLine(new(1000, 2000), new(1000 + width, 2000 + height));
        var tags = Drawings.Tags(Drawings.Create(entity), DxfVersion.R2000);
        var viewport = tags.SkipWhile(tag => tag is not { Code: 0, Value: "VPORT" }).Skip(1)
            .TakeWhile(tag => tag.Code != 0).ToList();
        double Value(int code) => double.Parse(viewport.Single(tag => tag.Code == code).Value, CultureInfo.InvariantCulture);
        Assert.Equal((middleX, middleY, viewHeight, 1.5), (Value(12), Value(22), Value(40), Value(41)));
    }

    private static IEnumerable<(double X, double Y)> Along(DxfVertex start, DxfVertex end)
    {
        var (chord, turn) = (new Complex(end.X - start.X, end.Y - start.Y), 4 * Math.Atan(start.Bulge));
        // Chords of equal turns laid end to end: their sum runs from start to end.
        const int Steps = 400;
        var step = chord / Enumerable.Range(0, Steps)
            .Aggregate(Complex.Zero, (sum, k) => sum + Complex.FromPolarCoordinates(1, turn * k / Steps));
        var at = new Complex(start.X, start.Y);
        for (var k = 0; k <= Steps; k++)
        {
            yield return (at.Real, at.Imaginary);
            at += step * Complex.FromPolarCoordinates(1, turn * k / Steps);
        }
    }

    private static void AssertExtents(double minX, double minY, double maxX, double maxY, params DxfEntity[] entities) =>
        AssertExtents(minX, minY, maxX, maxY, 1e-5, entities);

    private static void AssertExtents(double minX, double minY, double maxX, double maxY, double within,
        params DxfEntity[] entities)
    {
        foreach (var version in Enum.GetValues<DxfVersion>())
        {
            var tags = Drawings.Tags(Drawings.Create(entities), version).ToList();
            double[] expected = [minX, minY, maxX, maxY];
            Assert.All(expected.Zip(Point("$EXTMIN").Concat(Point("$EXTMAX"))),
                pair => Assert.Equal(pair.First, pair.Second, within));

            IEnumerable<double> Point(string name) =>
                tags.Skip(tags.FindIndex(tag => tag.Value == name) + 1).Take(2)
                    .Select(tag => double.Parse(tag.Value, CultureInfo.InvariantCulture));
        }
    }
}
