using System.Text.RegularExpressions;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Reading;
using BuckGen.Jobs;
using BuckGen.Output.Files;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Pdf;
using BuckGen.Output.Pictures.Templates;
using BuckGen.Tests.Conventions;
using BuckGen.Tests.Design.Venting;
using Xunit;

namespace BuckGen.Tests.Output.Pictures;

[Trait("Tier", "slow")]
public class TrimTemplateTests
{
    private static readonly BuckSpec Plain = Vented.Spec() with { Vents = null };

    [Fact]
    public void Each_jig_has_its_line_in_real_size()
    {
        var design =
            Vented.Design(Vented.Rectangle(90, 60),
                Plain with { Jig = new JigSpec(), Flange = new FlangeSpec(Vented.Mdf6), Panel = new PanelSpec(Vented.Mdf6) });

        var templates = TrimTemplates.Create(design, "Job");

        Assert.Equal(["Job: trim line of the flange", "Job: trim line of the part", "Job: opening of the panel"],
            templates.Select(t => t.Drawing.Title));
        Assert.Equal([design.Flange!.TrimLine.Bounds, design.Jig!.TrimLine.Bounds, design.Panel!.Opening.Bounds],
            templates.Select(t => t.Drawing.Items.OfType<PictureShape>().Last())
                .Select(s => s.Paths.SelectMany(p => p.Segments).Aggregate(Bounds.Nothing, (b, e) => b.With(e.Bounds))));
        Assert.All(templates, t => Assert.NotEmpty(t.Drawing.Items.OfType<PictureText>()));
    }

    [Theory]
    [InlineData(BuckKind.Male, "Seen from above the buck, as one looks at the part's face.")]
    [InlineData(BuckKind.Female,
        "Seen from above the buck, as one looks into the part; for the view of its face turn the paper over.")]
    public void Each_says_from_which_side_it_shows_the_part(BuckKind kind, string expected)
    {
        var design = Vented.Design(Vented.Rectangle(90, 60), Plain with
        {
            Kind = kind,
            Jig = new JigSpec(),
            Flange = new FlangeSpec(Vented.Mdf6),
            Panel = new PanelSpec(Vented.Mdf6),
        });

        Assert.Equal(Enumerable.Repeat(expected, 3), TrimTemplates.Create(design).Select(t => t.Words[^1]));
    }

    [Fact]
    public void The_trim_line_is_the_part_s_outside_at_the_height_of_the_ring()
    {
        // 90 mm wide at the foot, 5 degrees of draft on either side, and the wall outside of it.
        var jig = Vented
            .Design(Vented.Rectangle(90, 60),
                Plain with { Draft = 5, OutlineAt = OutlineAt.Base, Jig = new JigSpec { TrimHeight = 12 } }).Jig!;

        var wall = jig.TrimLine.Bounds.Width - (90 - 2 * 12 * Math.Tan(5 * Math.PI / 180));
        Assert.Equal(12, jig.Height, 6);
        Assert.InRange(wall / 2, 0.2, 1.5);
    }

    [Fact]
    public void The_word_of_an_angle_stands_in_its_widest_place_and_no_wider()
    {
        var angle = Region.FromLoops([Loop.FromCorners(
            [(new(0, 0), 0), (new(120, 0), 0), (new(120, 26), 0), (new(26, 26), 0), (new(26, 120), 0), (new(0, 120), 0)])]);
        var line = Vented.Design(angle, Plain with { Jig = new JigSpec() });

        var word = Assert.Single(TrimTemplates.Create(line, "Job").Single(t => t.Drawing.Title.EndsWith("the part",
            StringComparison.Ordinal)).Drawing.Items.OfType<PictureText>());

        var room = line.Jig!.TrimLine;
        var half = 0.5 * Helvetica.Width(word.Text, word.Height);
        Assert.True(room.Contains(word.Place - new Vec2(half, 0)) && room.Contains(word.Place + new Vec2(half, word.Height)));
    }

    [Fact]
    public void The_word_of_a_part_with_a_waist_stands_beside_the_waist()
    {
        var waisted = Region.FromLoops([Loop.Polygon([new(0, 0), new(50, 0), new(50, 21), new(70, 21), new(70, 0), new(120, 0),
            new(120, 50), new(70, 50), new(70, 29), new(50, 29), new(50, 50), new(0, 50)])]);
        var design = Vented.Design(waisted, Plain with { Flange = new FlangeSpec(Vented.Mdf6), Jig = new JigSpec() });

        var word = Assert.Single(TrimTemplates.Create(design, "Job").Single(t => t.Drawing.Title.EndsWith("the part",
            StringComparison.Ordinal)).Drawing.Items.OfType<PictureText>());

        Assert.InRange(design.Jig!.TrimLine.Loops.Min(l => l.DistanceTo(word.Place)), TileGrid.Overlap, 30);
    }

    [Fact]
    public void A_design_without_jigs_has_none() =>
        Assert.Empty(TrimTemplates.Create(Vented.Design(Vented.Rectangle(90, 60), Plain)));

    [Theory]
    [InlineData("boathouse-sign", "templates/trim.pdf")]
    [InlineData("specimen-box", "templates/drilling.pdf", "templates/trim.pdf")]
    public void The_examples_get_those_that_they_have_something_for(string example, params string[] expected)
    {
        var folder = Path.Combine(Repository.Root, "examples", example);
        var job = JobFile.Read(File.ReadAllText(Path.Combine(folder, "job.toml")), "job.toml", Catalog.BuiltIn);
        var design =
            BuckDesign.Create(OutlineReader
                .Read(File.ReadAllBytes(Path.Combine(folder, job.OutlineFile)), job.OutlineFile, job.Reading), job.Buck);
        var plan = CutPlan.Create(design, job.Cutting);

        foreach (var paper in Enum.GetValues<Paper>())
        {
            var files = OutputFiles.Create(plan, job.Output with { Paper = paper });
            var made = files.Where(f => f.Path.StartsWith("templates/", StringComparison.Ordinal)).ToList();
            Assert.Equal(expected, made.Select(f => f.Path));
            foreach (var file in made)
            {
                // BUCKGEN_LOOK names a folder to put them in, for looking at.
                if (Environment.GetEnvironmentVariable("BUCKGEN_LOOK") is { Length: > 0 } look)
                    File.WriteAllBytes(Path.Combine(look, $"{example}-{Path.GetFileNameWithoutExtension(file.Path)}-{paper}.pdf"),
                        [.. file.Content]);
                var pages = PrintedPage.Read(file.Content);
                Assert.Contains(job.Title, pages[0].Text, StringComparison.Ordinal);
                Assert.Contains(pages[0].Boxes, b => Math.Abs(b.Width - 100) < 0.01 && Math.Abs(b.Height - 100) < 0.01);
                Assert.All(pages.Where(p => !p.Text.Contains("Print at 100 %", StringComparison.Ordinal)),
                    p => Assert.Matches(new Regex(@"[A-Z]+\d+ of [A-Z]+\d+"), p.Text));
            }
        }
    }
}
