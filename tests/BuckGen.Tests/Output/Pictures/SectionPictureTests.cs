using BuckGen.Geometry.Tests;
using BuckGen.Output.Pictures;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Output.Pictures;

public class SectionPictureTests
{
    [Fact]
    public void The_section_states_drafts_and_edge_radius_and_draws_the_round()
    {
        var plain = SectionPicture.Draw(PlainBuck.Create(Shapes.Rectangle(100, 60)))!;
        var shaped = SectionPicture.Draw(PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with
        {
            Side = [new() { Draft = 5 }, new() { Height = 0, Inset = 8 }, new() { Height = 12, Draft = 20 }],
            EdgeRadius = 3,
        }))!;

        Assert.Contains("Section A-A. Blue: the wall after sanding, 5 degrees of draft.", Texts(plain));
        Assert.Contains("Section A-A. Blue: the wall after sanding, 5 to 20 degrees of draft.", Texts(shaped));
        Assert.Contains("The edge radius is 3 mm.", Texts(shaped));
        // A wall of three boards on either side; then the ledge and the chords of the round more.
        Assert.True(shaped.Items.Length > plain.Items.Length + 10, $"{shaped.Items.Length} and {plain.Items.Length} items");
    }

    private static string[] Texts(Picture picture) => [.. picture.Items.OfType<PictureText>().Select(t => t.Text)];
}
