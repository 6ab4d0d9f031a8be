using BuckGen.Geometry.Lettering;
using Xunit;

namespace BuckGen.Geometry.Tests;

public class LetteringTests
{
    private const double Tolerance = 0.005;

    public static TheoryData<char> Written => [.. StrokeAlphabet.Characters.Where(c => c != ' ')];

    public static TheoryData<char> LettersAndFigures => [.. StrokeAlphabet.Characters.Where(char.IsAsciiLetterOrDigit)];

    [Fact]
    public void Figures_capitals_and_the_promised_signs_can_be_written()
    {
        Assert.Equal(" +-./0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ", StrokeAlphabet.Characters);
        Assert.True(StrokeAlphabet.Contains('A'));
        Assert.False(StrokeAlphabet.Contains('a'));
    }

    [Theory]
    [MemberData(nameof(Written))]
    public void Every_character_is_drawn_inside_its_box(char character)
    {
        var strokes = StrokeText.Layout(character.ToString(), 1);

        Assert.NotEmpty(strokes);
        Assert.All(strokes, stroke => Assert.True(stroke.Vertices.Length >= 2));
        var points = strokes.SelectMany(Trace).ToList();
        var (left, right) = (points.Min(p => p.X), points.Max(p => p.X));
        Assert.InRange(points.Min(p => p.Y), -Tolerance, 1);
        Assert.InRange(points.Max(p => p.Y), 0, 1 + Tolerance);
        // The room on its two sides keeps a character clear of its neighbours at the width of an engraved line.
        Assert.True(left >= 0.07, $"starts at {left:F3}");
        Assert.True(right <= StrokeText.Width(character.ToString(), 1) - 0.07, $"ends at {right:F3}");
    }

    [Theory]
    [MemberData(nameof(LettersAndFigures))]
    public void Letters_and_figures_use_the_whole_cap_height(char character)
    {
        var heights = StrokeText.Layout(character.ToString(), 1).SelectMany(Trace).Select(p => p.Y).ToList();

        Assert.Equal(0, heights.Min(), 2 * Tolerance);
        Assert.Equal(1, heights.Max(), 2 * Tolerance);
    }

    [Fact]
    public void Six_and_nine_stand_on_a_foot_that_tells_which_way_up_they_are()
    {
        foreach (var figure in "69")
        {
            var foot = StrokeText.Layout(figure.ToString(), 1)[^1].Vertices;
            Assert.Equal([0, 0], foot.Select(v => v.Y));
        }
    }

    [Fact]
    public void Nought_is_slashed_and_the_letter_O_is_not()
    {
        Assert.Equal(2, StrokeText.Layout("0", 1).Length);
        Assert.Single(StrokeText.Layout("O", 1));
    }

    [Fact]
    public void Figures_share_one_width()
    {
        Assert.All("123456789", figure => Assert.Equal(StrokeText.Width("0", 5), StrokeText.Width(figure.ToString(), 5), 9));
    }

    [Fact]
    public void The_width_of_a_text_is_the_sum_of_its_characters()
    {
        const string text = "LAYER 03/12 -1.5+";

        Assert.All(text, c => Assert.True(StrokeText.Width(c.ToString(), 6) > 0));
        Assert.Equal(text.Sum(c => StrokeText.Width(c.ToString(), 6)), StrokeText.Width(text, 6), 9);
        Assert.Equal(0, StrokeText.Width("", 6));
        Assert.Empty(StrokeText.Layout("", 6));
    }

    [Fact]
    public void Characters_follow_one_another_and_grow_with_the_height()
    {
        var pair = StrokeText.Layout("A7", 5);
        var second = StrokeText.Layout("7", 1);
        var start = StrokeText.Width("A", 5);

        var moved = pair[^second.Length..];
        for (var i = 0; i < second.Length; i++)
        {
            Assert.Equal(second[i].Vertices.Length, moved[i].Vertices.Length);
            foreach (var (expected, actual) in second[i].Vertices.Zip(moved[i].Vertices))
            {
                Assert.Equal(start + 5 * expected.X, actual.X, 9);
                Assert.Equal(5 * expected.Y, actual.Y, 9);
                Assert.Equal(expected.Bulge, actual.Bulge);
            }
        }
    }

    [Fact]
    public void A_half_circle_has_a_bulge_of_one_exactly()
    {
        Assert.Contains(StrokeText.Layout("U", 4)[0].Vertices, v => v.Bulge == 1);
    }

    [Theory]
    [InlineData("layer", "'l'")]
    [InlineData("10 µM", "'µ'")]
    [InlineData("A\tB", "U+0009")]
    public void An_unknown_character_is_refused_by_name(string text, string named)
    {
        Assert.Contains(named, Assert.Throws<ArgumentException>(() => StrokeText.Layout(text, 5)).Message,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => StrokeText.Width(text, 5));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-4)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_height_must_be_above_nothing(double height)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StrokeText.Layout("A", height));
    }

    // Points along a stroke, arcs included, close enough to see how far it reaches.
    private static IEnumerable<(double X, double Y)> Trace(Stroke stroke)
    {
        for (var i = 0; i < stroke.Vertices.Length; i++)
        {
            var from = stroke.Vertices[i];
            yield return (from.X, from.Y);
            if (from.Bulge == 0)
                continue;
            Assert.True(i + 1 < stroke.Vertices.Length, "the last vertex has no way on, so no bulge");
            var to = stroke.Vertices[i + 1];
            var half = (1 / from.Bulge - from.Bulge) / 4;
            var (cx, cy) = ((from.X + to.X) / 2 - half * (to.Y - from.Y), (from.Y + to.Y) / 2 + half * (to.X - from.X));
            var (radius, start) = (double.Hypot(from.X - cx, from.Y - cy), Math.Atan2(from.Y - cy, from.X - cx));
            for (var step = 1; step < 200; step++)
            {
                var angle = start + 4 * Math.Atan(from.Bulge) * step / 200;
                yield return (cx + radius * Math.Cos(angle), cy + radius * Math.Sin(angle));
            }
        }
    }
}
