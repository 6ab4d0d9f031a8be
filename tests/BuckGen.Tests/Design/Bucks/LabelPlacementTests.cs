using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Lettering;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>Where "1A" stands on a piece, 8 mm high unless it must be smaller.</summary>
public class LabelPlacementTests
{
    private static readonly double Width = StrokeText.Width("1A", 8);

    [Fact]
    public void It_stands_level_in_the_middle()
    {
        var label = Place(Shapes.Rectangle(100, 60))!;

        Assert.Equal("1A", label.Text);
        Assert.Equal((50, 30), (Math.Round(label.Box.Centre.X, 6), Math.Round(label.Box.Centre.Y, 6)));
        Assert.Equal(8, label.Box.Height, 1e-9);
        Assert.Equal(Width, label.Box.Width, 1e-9);
        AssertStrokesFillTheBox(label);
    }

    [Fact]
    public void On_a_narrow_piece_it_stands_turned()
    {
        var label = Place(Shapes.Rectangle(10.5, 60))!;

        Assert.Equal(8, label.Box.Width, 1e-9);
        Assert.Equal(Width, label.Box.Height, 1e-9);
        AssertStrokesFillTheBox(label);
    }

    [Theory]
    // A millimetre of clear space on both sides: 8 mm of height fit, else 6, 4.5, 3.375 or 2.53 mm.
    [InlineData(10.1, 8)]
    [InlineData(9.9, 6)]
    [InlineData(7.9, 4.5)]
    [InlineData(6.4, 3.375)]
    [InlineData(5.3, 2.53125)]
    public void On_a_small_piece_it_is_smaller(double height, double size) =>
        Assert.Equal(size, Place(Shapes.Rectangle(60, height))!.Box.Height, 1e-9);

    [Fact]
    public void Where_not_even_small_letters_fit_there_are_none() => Assert.Null(Place(Shapes.Rectangle(60, 4.5)));

    [Fact]
    public void It_goes_where_it_is_hidden_later()
    {
        var label = Place(Shapes.Rectangle(100, 60), hidden: Shapes.RectangleAt(60, 10, 30, 20))!;

        Assert.Equal((75, 20), (Math.Round(label.Box.Centre.X, 6), Math.Round(label.Box.Centre.Y, 6)));
    }

    [Fact]
    public void It_keeps_clear_of_lines_by_three_millimetres_where_it_can()
    {
        var line = new Segment(new(50, 0), new(50, 60));

        var label = Place(Shapes.Rectangle(100, 60), line)!;

        Assert.True(Math.Abs(label.Box.Centre.X - 50) >= Width / 2 + 3);
        // And no farther away than the places that are tried stand apart, 2.5 mm.
        Assert.True(Math.Abs(label.Box.Centre.X - 50) <= Width / 2 + 3 + 2.5);
    }

    private static Label? Place(Region piece, Segment? line = null, Region? hidden = null) => LabelPlacement.Place(
        "1A", 8, piece.Islands[0], new SegmentIndex(line is { } l ? [.. piece.Segments, l] : piece.Segments), hidden
            ?? Region.Empty);

    private static void AssertStrokesFillTheBox(Label label)
    {
        var points = label.Strokes.SelectMany(s => s.Vertices).Select(v => new Vec2(v.X, v.Y)).ToArray();
        Assert.All(points, p => Assert.True(label.Box.Grown(1e-6).Contains(p)));
        // A letter has some room of its own beside it.
        Assert.Equal(label.Box.MinX, points.Min(p => p.X), 2.0);
        Assert.Equal(label.Box.MaxX, points.Max(p => p.X), 2.0);
        Assert.Equal(label.Box.MinY, points.Min(p => p.Y), 2.0);
        Assert.Equal(label.Box.MaxY, points.Max(p => p.Y), 2.0);
    }
}
