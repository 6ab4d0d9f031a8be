using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Intake.Reading;
using BuckGen.Jobs;
using BuckGen.Output.Pictures;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Png;
using BuckGen.Output.Pictures.Svg;
using BuckGen.Output.Pictures.Templates;
using BuckGen.References.Tests.Support;
using BuckGen.Tests.Output.Pictures;

namespace BuckGen.References.Tests.Drawn;

/// <summary>Pictures of pixels against the same drawings as SVG, drawn by librsvg.</summary>
public class PngPictureTests(ITestOutputHelper log)
{
    private const int Width = 1600, LongestLine = 24;

    [Theory]
    [InlineData("boathouse-sign")]
    [InlineData("specimen-box")]
    public void They_look_as_librsvg_draws_them(string example)
    {
        Reference.Librsvg.Need();
        using var scratch = new ScratchFolder();
        foreach (var whole in Pictures(example))
        {
            // librsvg moves some pairs of letters nearer to each other, which shifts the end of a long line by a letter's stroke
            // or more.
            var picture = whole with { Items = [.. whole.Items.Where(i => i is not PictureText { Text.Length: > LongestLine })] };
            var (svg, png) = (scratch.File("picture.svg"), scratch.File("picture.png"));
            File.WriteAllBytes(svg, [.. SvgPicture.Write(picture)]);
            var drawn = Reference.Librsvg
                .Run(TimeSpan.FromMinutes(1), "--width", $"{Width}", "--height", "9999", "--keep-aspect-ratio",
                    "--background-color", "white", svg, "--output", png);
            Assert.True(drawn.ExitCode == 0, drawn.All);

            var (ours, theirs) = (PngImage.Read([.. PngPicture.Write(picture, Width)]), PngImage.Read(File.ReadAllBytes(png)));
            Assert.Equal(Width, ours.Width);
            // librsvg takes a pixel more where the last one is hardly touched.
            Assert.InRange(theirs.Width - ours.Width, 0, 1);
            Assert.InRange(theirs.Height - ours.Height, 0, 1);
            Assert.True(ours.Inked > 0.01, $"{picture.Title} is all but blank");
            var (difference, blank) = (ours.DifferenceTo(theirs),
                PngImage.Read([.. PngPicture.Write(picture with { Items = [] }, Width)]).DifferenceTo(theirs));
            log.WriteLine($"{example}, {picture.Title}: {difference:F3} of 255 on average; a blank page would be {blank:F1} off");
            // What is left comes from the edges of letters and lines, which each program softens in its own way.
            Assert.True(difference < 1
                && difference < blank / 10, $"{picture.Title} differs by {difference}, a blank page by {blank}");
        }
    }

    private static IEnumerable<Picture> Pictures(string example)
    {
        var folder = Path.Combine(RepositoryFolder.Path, "examples", example);
        var job = JobFile.Read(File.ReadAllText(Path.Combine(folder, "job.toml")), "job.toml");
        var design =
            BuckDesign.Create(OutlineReader
                .Read(File.ReadAllBytes(Path.Combine(folder, job.OutlineFile)), job.OutlineFile, job.Reading), job.Buck);
        var plan = CutPlan.Create(design, job.Cutting);
        return [PreviewPicture.Draw(design, job.Title, plan.AllFindings), PlanPicture.Draw(design, plan.AllFindings),
            SectionPicture.Draw(design)!, StackPicture.Draw("Stack", design.Layers)!, CutPicture.Draw(plan.Boards[0]),
            .. DrillTemplate.Draw(design, job.Title) is { } template ? [template] : Array.Empty<Picture>()];
    }
}
