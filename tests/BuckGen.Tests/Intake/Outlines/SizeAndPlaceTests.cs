using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Settings;
using Xunit;

namespace BuckGen.Tests.Intake.Outlines;

/// <summary>Outlines that get another size than they are drawn in, and drawings far from their origin.</summary>
public class SizeAndPlaceTests
{
    private const string Drawn = "<path d='M10 10H50V30H10Z'/><circle cx='30' cy='20' r='5' fill='white'/>";

    public static TheoryData<string> Names =>
        [.. Corpus.Files.Where(f => f.HasTruth && f.Expect == "accept").Select(f => f.Name)];

    [Theory]
    [InlineData(300.0, null, null, 7.5, "to 300 x 150 mm: the width asked for, 300 mm")]
    [InlineData(null, 10.0, null, 0.5, "to 20 x 10 mm: the height asked for, 10 mm")]
    [InlineData(300.0, 100.0, null, 5, "to 200 x 100 mm: as large as fits the width and height asked for, 300 x 100 mm")]
    [InlineData(80.0, 100.0, null, 2, "to 80 x 40 mm: as large as fits the width and height asked for, 80 x 100 mm")]
    [InlineData(null, null, 25.4, 25.4, "to 1016 x 508 mm: the scale asked for")]
    public void It_gets_the_size_that_is_asked_for(double? width, double? height, double? scale, double factor, string words)
    {
        var plain = Reading.Svg(Drawn);

        var outline = Reading.Svg(Drawn, new(Tolerance.Default) { Width = width, Height = height, Scale = scale });

        Assert.Equal(factor, outline.Scale, 1e-9);
        Assert.Equal(plain.Region.Area * factor * factor, outline.Region.Area, 1e-6 * outline.Region.Area);
        Assert.Equal(2, outline.Region.Segments.Count(s => s.IsArc));
        var note = Assert.Single(outline.Notes);
        Assert.Equal("scaled", note.Kind);
        Assert.All((string[])["is drawn 40 x 20 mm large", words], s => Assert.Contains(s, note.Message));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_width_is_met_exactly_and_leaves_the_shape_as_it_is(string name)
    {
        var file = Corpus.File(name);
        var plain = Read(file, null);

        var outline = Read(file, 250);

        Assert.Equal(250, outline.Region.Bounds.Width, 1e-9);
        Assert.Equal(plain.LoopCount, outline.LoopCount);
        // Both are fitted within the tolerance: across the edge that is as much area as the edge is long.
        var factor = 250 / plain.Region.Bounds.Width;
        Assert.InRange(Math.Abs(outline.Region.Area - plain.Region.Area * factor * factor), 0,
            Tolerance.Default.Chord * (1 + factor) * outline.Region.Perimeter + 1e-6);
    }

    /// <summary>What is drawn beside the outline does not count: a background, a line that encloses nothing.</summary>
    [Fact]
    public void The_width_is_that_of_the_outline_and_not_of_the_drawing()
    {
        var outline = Reading.Svg("<rect width='100' height='100' fill='white'/>" + Drawn,
            new(Tolerance.Default) { Width = 300 });

        Assert.Equal(300, outline.Region.Bounds.Width, 1e-9);
        Assert.Equal(7.5, outline.Scale, 1e-9);
    }

    [Fact]
    public void Curves_are_fitted_at_the_size_they_get()
    {
        const string curve = "<path d='M10 10C20 0 40 0 50 10V30H10Z'/>";

        var (plain, large) = (Reading.Svg(curve), Reading.Svg(curve, new(Tolerance.Default) { Scale = 50 }));

        Assert.True(large.Curves.Pieces > plain.Curves.Pieces);
        Assert.InRange(large.Curves.MaxError, 0, Tolerance.Default.Chord);
    }

    [Theory]
    [InlineData(10.0, null, 2.0, "a scale, or a width and height")]
    [InlineData(null, 10.0, 2.0, "a scale, or a width and height")]
    [InlineData(0.0, null, null, "The width of the outline is 0 mm")]
    [InlineData(null, null, -1.0, "The scale of the outline is -1")]
    public void A_size_that_can_not_be_is_refused(double? width, double? height, double? scale, string words) =>
        Assert.Contains(words, Assert.Throws<SpecException>(() =>
            Reading.Svg(Drawn, new(Tolerance.Default) { Width = width, Height = height, Scale = scale })).Message);

    /// <summary>Coordinates of a survey: the drawing is moved by whole kilometres, and its shape is what it was.</summary>
    [Theory]
    [InlineData(5e9, 5e9, "moved by -5000000000 mm in x and -5000000000 mm in y")]
    [InlineData(-3.2e10, 0, "moved by 32000000000 mm in x and 0 mm in y")]
    [InlineData(2e7, 9e6, "moved by -20000000 mm in x and 0 mm in y")]
    public void A_drawing_far_from_its_origin_is_moved(double x, double y, string words)
    {
        var outline = OutlineReader.Read(DxfText.File(DxfText.Rectangle(x + 40, y, 250, 100)), "survey.dxf");

        Assert.Equal(250 * 100, outline.Region.Area, 0.01);
        Assert.InRange(outline.Region.Bounds.MinX, 39.99, 40.01);
        Assert.Contains(words, Assert.Single(outline.Notes, n => n.Kind == "moved").Message);
    }

    [Fact]
    public void A_drawing_within_ten_kilometres_stays_where_it_is() =>
        Assert.Equal(9e6, OutlineReader.Read(DxfText.File(DxfText.Rectangle(9e6, 0, 250, 100)), "test.dxf").Region.Bounds.MinX);

    private static Outline Read(CorpusFile file, double? width) => OutlineReader.Read(file.Content, file.Name,
        OutlineOptions.Default with { Units = file.Unit, Background = file.Background, Width = width });
}
