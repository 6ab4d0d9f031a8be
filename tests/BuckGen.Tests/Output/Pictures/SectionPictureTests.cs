using BuckGen.Design.Bucks;
using BuckGen.Geometry;
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

    /// <summary>
    /// A section beside the cavity shows a plain block. The small one lies low, so that the widest wood is above it.
    /// </summary>
    [Fact]
    public void The_section_of_a_female_buck_runs_through_its_cavity()
    {
        var outline = Shapes.Union(Shapes.RectangleAt(0, 0, 100, 40), Shapes.RectangleAt(40, 60, 20, 10));

        var cut = SectionPicture.CutAt(PlainBuck.Create(outline, PlainBuck.Spec with { Kind = BuckKind.Female }))!.Value;

        Assert.InRange(cut, 1, 39);
    }

    /// <summary>The jig is set on the cooled part, which was larger on the wood.</summary>
    [Theory]
    [InlineData(BuckKind.Male)]
    [InlineData(BuckKind.Female)]
    public void The_red_line_lies_where_the_jig_cuts_the_part_while_it_is_hot(BuckKind kind)
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with
        {
            Kind = kind,
            Shrinkage = 10,
            Sheet = new(),
            Jig = new() { TrimHeight = 18 },
        });
        var picture = SectionPicture.Draw(design)!;

        Bounds Drawn(Func<Ink, bool> of) => picture.Items.OfType<PictureShape>().Where(s => of(s.Ink))
            .SelectMany(s => s.Paths).SelectMany(p => p.Segments).Aggregate(Bounds.Nothing, (b, s) => b.With(s.Bounds));
        var wall = Drawn(i => i.Fill == PictureColours.Wood);
        var cut = Drawn(i => i.Stroke == PictureColours.Repaired);
        Assert.Equal(0, cut.Height, 1e-9);
        Assert.True(cut.MinX < wall.MinX && cut.MaxX > wall.MaxX, "It does not reach beyond the wood.");
        // The part lost a tenth of its height.
        var fromFlange = kind == BuckKind.Male ? cut.MinY - wall.MinY : wall.MaxY - cut.MinY;
        var onWood = design.Part!.Cut.Height / 0.9;
        Assert.InRange(onWood, 12, 20);
        Assert.Equal(onWood / (design.Height - design.Layers.First(l => l.Role == LayerRole.Wall).Bottom),
            fromFlange / wall.Height, 1e-9);
        Assert.Contains(Texts(picture), t => t.EndsWith(" Red: the cut.", StringComparison.Ordinal));
    }

    private static string[] Texts(Picture picture) => [.. picture.Items.OfType<PictureText>().Select(t => t.Text)];
}
