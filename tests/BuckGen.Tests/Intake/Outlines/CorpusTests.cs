using System.Diagnostics;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using Xunit;

namespace BuckGen.Tests.Intake.Outlines;

public class CorpusTests
{
    // A corpus that went missing, or a reader that refuses everything, must not look like success.
    private const int MinCompared = 120;
    private const int MinRefused = 31;

    public static TheoryData<string> Names => [.. Corpus.Files.Select(f => f.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_file_is_read_as_it_is_or_refused_in_one_line(string name)
    {
        var file = Corpus.File(name);
        var watch = Stopwatch.StartNew();

        var outcome = Read(file);

        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(10), $"took {watch.Elapsed}");
        if (outcome.Refusal is { } refusal)
        {
            Assert.True(file.Expect.Contains("reject") || file.Expect.Contains("clear-error"), refusal);
            Assert.StartsWith(name, refusal);
            Assert.DoesNotContain('\n', refusal);
        }
        else
        {
            Assert.NotEqual("reject", file.Expect);
            // The truth is the even-odd one; where crossings were resolved by the nonzero rule, OverlapTests has the area.
            if (file.HasTruth && !outcome.Outline!.Repairs.Any(r => r.Kind == "overlap-united"))
                AssertAgrees(outcome.Outline!.Region, file);
        }
    }

    [Fact]
    public void Enough_files_are_compared_and_refused()
    {
        var outcomes = Corpus.Files.Select(f => (File: f, Outcome: Read(f))).ToList();

        Assert.InRange(outcomes.Count(o => o.File.HasTruth && o.Outcome.Outline is not null), MinCompared, int.MaxValue);
        Assert.InRange(outcomes.Count(o => o.Outcome.Refusal is not null), MinRefused, int.MaxValue);
    }

    [Fact]
    public void What_needs_a_warning_or_a_repair_is_reported()
    {
        Assert.All(Corpus.Files.Where(f => f.Expect == "accept-with-warning"), f =>
        {
            var outline = OutlineReader.Read(f.Content, f.Name);
            Assert.True(outline.Notes.Length + outline.Repairs.Length > 0, f.Name);
        });
        Assert.All(Corpus.Files.Where(f => f.Expect == "repair"),
            f => Assert.NotEmpty(OutlineReader.Read(f.Content, f.Name).Repairs));
    }

    private static (Outline? Outline, string? Refusal) Read(CorpusFile file)
    {
        try
        {
            var options = OutlineOptions.Default with { Units = file.Unit, Background = file.Background };
            return (OutlineReader.Read(file.Content, file.Name, options), null);
        }
        catch (OutlineException e)
        {
            return (null, e.Message);
        }
    }

    private static void AssertAgrees(Region region, CorpusFile file)
    {
        Assert.Equal(file.Count("closed_loops"), region.Islands.Length + region.HoleCount);
        Assert.Equal(file.Count("outer_loops"), region.Islands.Length);
        Assert.Equal(file.Count("holes"), region.HoleCount);
        Assert.Equal(file.Area, region.Area, file.Area * file.Tolerance("area_rel"));
        Assert.Equal(file.Perimeter, region.Perimeter, file.Perimeter * file.Tolerance("length_rel"));

        var (near, bounds, truth) = (file.Tolerance("bbox_mm"), region.Bounds, file.Numbers("bbox_mm"));
        Assert.Equal(truth[0], bounds.MinX, near);
        Assert.Equal(truth[2], bounds.MaxX, near);
        // The y of an SVG's truth runs down from the top of the page; only the height can be compared.
        Assert.Equal(truth[3] - truth[1], bounds.Height, near);
        if (file.IsDxf) Assert.Equal(truth[1], bounds.MinY, near);
        var centroid = Moments.Centroid(region) - bounds.LowerLeft;
        var centred = Math.Max(near, Corpus.DefaultTolerance.GetProperty("centroid_mm").GetDouble());
        Assert.Equal(file.Centroid.X, centroid.X, centred);
        Assert.Equal(file.Centroid.Y, centroid.Y, centred);
    }
}
