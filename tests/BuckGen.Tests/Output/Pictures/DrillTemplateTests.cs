using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Pdf;
using BuckGen.Output.Pictures.Templates;
using BuckGen.Tests.Design.Venting;
using Xunit;

namespace BuckGen.Tests.Output.Pictures;

public class DrillTemplateTests
{
    private const double Near = 1e-9;

    private static readonly BuckDesign Design = Vented.Design(Vented.Rectangle(90, 60), Vented.Spec());

    [Fact]
    public void Every_vent_is_there_in_its_real_place_and_size()
    {
        var picture = DrillTemplate.Draw(Design)!;

        var circles = picture.Items.OfType<PictureShape>().Where(s => s.Paths is [{ Closed: true }])
            .Select(s => Loop.FromSegments(s.Paths[0].Segments).AsCircle(Near)).ToList();
        Assert.NotEmpty(Design.Vents!.Vents);
        Assert.All(Design.Vents.Vents,
            v => Assert.Contains(circles, c =>
                c is { } circle && circle.Centre.DistanceTo(v.Centre) < Near && Math.Abs(circle.Radius - v.Diameter / 2) < Near));
        Assert.All(Design.Vents.Vents, v => Assert.Equal(2, picture.Items.OfType<PictureShape>().Count(s =>
            s.Paths is [{ Closed: false, Segments: [var line] }] && line.PointAt(0.5).DistanceTo(v.Centre) < Near)));
    }

    [Fact]
    public void The_line_to_check_the_print_by_is_100_mm_long()
    {
        var lines = DrillTemplate.Draw(Design)!.Items.OfType<PictureShape>().Where(s => s.Paths is [{ Closed: false }]);

        Assert.Single(lines, l => Math.Abs(l.Paths[0].Segments[0].Length - 100) < Near);
    }

    [Fact]
    public void Everything_stands_on_the_page_and_the_title_is_the_job_s()
    {
        var picture = DrillTemplate.Draw(Design, "Lamp <foot>")!;

        Assert.All(picture.Items.OfType<PictureShape>(),
            s => Assert.All(s.Paths.SelectMany(p => p.Segments), e => Assert.True(picture.Page.Contains(e.Bounds))));
        Assert.All(picture.Items.OfType<PictureText>(),
            t => Assert.True(picture.Page.Contains(t.Place)
                && t.Place.X + t.Text.Length * PictureText.UsualLetterWidth * t.Height <= picture.Page.MaxX));
        Assert.Contains(picture.Items.OfType<PictureText>(), t => t.Text == "Lamp <foot>: drilling template");
    }

    [Theory]
    [InlineData(90, 60)]
    [InlineData(260, 30)]
    [InlineData(30, 200)]
    public void The_title_stands_over_the_drawing_the_words_under_it_and_none_on_another(double width, double height)
    {
        var design = Vented.Design(Vented.Rectangle(width, height), Vented.Spec());
        var picture = DrillTemplate.Draw(design)!;

        var drawing = design.Layers.Where(l => l.Role != LayerRole.Plenum)
            .Aggregate(Bounds.Nothing, (b, l) => b.With(l.Region.Bounds));
        PictureText[] texts = [.. picture.Items.OfType<PictureText>()];
        Bounds[] rooms = [.. texts.Select(Room)];
        var lines = picture.Items.OfType<PictureShape>().Select(Extent).Where(b => !drawing.Grown(Near).Contains(b)).ToArray();
        Assert.Equal("test: drilling template", texts[0].Text);
        Assert.InRange(rooms[0].MinY - drawing.MaxY, 0.5, 10);
        Assert.All(rooms[1..].Concat(lines), r => Assert.InRange(r.MaxY, picture.Page.MinY, drawing.MinY));
        Assert.All(rooms.Index(), r => Assert.All(rooms[(r.Index + 1)..].Concat(lines),
            o => Assert.False(r.Item.Intersects(o), $"{texts[r.Index].Text} at {r.Item} and {o}")));
        Assert.All(texts.Where(t => t.Text != "100 mm"), t => Assert.Equal(drawing.MinX, t.Place.X, Near));
        // The length stands beside the right end of its line.
        var (length, line) = (Assert.Single(rooms.Zip(texts), t => t.Second.Text == "100 mm").First,
            Assert.Single(lines, l => Math.Abs(l.Width - 100) < Near));
        Assert.InRange(length.MinX - line.MaxX, 1, 5);
        Assert.InRange(line.MinY, length.MinY, length.MaxY);
        // The line is drawn as the edge to cut is, with a stroke across each end.
        Assert.Equal([(line.MinX, 4), (line.MaxX, 4)],
            lines.Where(l => l.Width < Near).OrderBy(l => l.MinX).Select(l => (l.MinX, l.Height)));
    }

    [Fact]
    public void The_words_name_the_layer_the_number_the_drill_and_where_the_air_gathers()
    {
        var words = string.Join(' ', DrillTemplate.Draw(Design)!.Items.OfType<PictureText>().Skip(2).Select(t => t.Text));

        Assert.Equal("Print at 100 %, without fitting to the page, and measure the line above before use: it must be 100 mm "
            + "long. Layer 2, from above: 13 vents, drill 0.6 mm (13 wall). Dashed: dowels, not to be drilled into. Wear eye "
            + "protection and keep the dust away.", words);
    }

    [Fact]
    public void Only_the_top_layer_s_edge_is_black_and_no_plenum_is_drawn()
    {
        var design = Vented.Design(Vented.Rectangle(90, 60), Vented.Spec(plenum: PlenumKind.Channels));
        var edges = DrillTemplate.Draw(design)!.Items.OfType<PictureShape>().Take(design.Layers.Length - 1).ToArray();

        Assert.Contains(design.Layers, l => l.Role == LayerRole.Plenum);
        Assert.Equal(design.Layers.Where(l => l.Role != LayerRole.Plenum).Select(l => l.Region.Bounds), edges.Select(Extent));
        Assert.All(edges[..^1], e => Assert.Equal((PictureColours.Grey, 0.2), (e.Ink.Stroke, e.Ink.Width)));
        Assert.Equal((PictureColours.Black, 0.35), (edges[^1].Ink.Stroke, edges[^1].Ink.Width));
    }

    [Fact]
    public void Without_vents_there_is_none() =>
        Assert.Null(DrillTemplate.Draw(Vented.Design(Design.Outline.Region, Design.Spec with { Vents = null })));

    private static Bounds Extent(PictureShape shape) =>
        shape.Paths.SelectMany(p => p.Segments).Aggregate(Bounds.Nothing, (b, e) => b.With(e.Bounds));

    /// <summary>Where a text that starts at its place stands.</summary>
    private static Bounds Room(PictureText text) => text.Align == TextAlign.Start
        ? Bounds.FromCorners(text.Place, text.Place + new Vec2(Helvetica.Width(text.Text, text.Height), 0.7 * text.Height))
        : throw new ArgumentException($"{text.Text} does not start at its place.");
}
