using BuckGen.Design;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;
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

    [Fact]
    public void Without_vents_there_is_none() =>
        Assert.Null(DrillTemplate.Draw(Vented.Design(Design.Outline.Region, Design.Spec with { Vents = null })));
}
