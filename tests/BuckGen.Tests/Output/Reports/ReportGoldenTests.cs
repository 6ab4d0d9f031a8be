using System.Text;
using System.Text.RegularExpressions;
using BuckGen.Output.Files;
using Snapshooter.Xunit3;
using Xunit;

namespace BuckGen.Tests.Output.Reports;

/// <summary>
/// What a person and a program read of a job stays as it was: all words and numbers of page, card and summary. The drawings of
/// the page are held by <see cref="BuckGen.Tests.Output.Pictures.PictureGoldenTests"/>.
/// </summary>
[Trait("Tier", "slow")]
public partial class ReportGoldenTests
{
    [Theory]
    [InlineData("with jigs and a panel")]
    [InlineData("reckoned")]
    [InlineData("read with repairs and notes")]
    [InlineData("with ledges on a base in pieces")]
    [InlineData("a lid with a predicted wall")]
    [InlineData(SampleJobs.InTwoBucks)]
    public void The_words_of_the_page_stay_as_they_were(string name) =>
        Snapshot.Match(Words(name, OutputFiles.ReportPath), $"ReportGoldenTests.page_{name.Replace(' ', '_')}");

    [Theory]
    [InlineData("with jigs and a panel")]
    [InlineData("reckoned")]
    [InlineData("read with repairs and notes")]
    [InlineData("with ledges on a base in pieces")]
    [InlineData("a lid with a predicted wall")]
    [InlineData(SampleJobs.InTwoBucks)]
    public void The_numbers_of_the_summary_stay_as_they_were(string name) =>
        Snapshot.Match(Words(name, OutputFiles.SummaryPath), $"ReportGoldenTests.summary_{name.Replace(' ', '_')}");

    [Fact]
    public void The_card_of_a_sign_in_several_bucks_stays_as_it_was() =>
        Snapshot.Match(Words(SampleJobs.InTwoBucks, OutputFiles.ProcessCardPath));

    [Fact]
    public void Each_buck_of_a_sign_carries_the_title_of_the_sign_with_its_number()
    {
        foreach (var n in (int[])[1, 2])
        {
            Assert.Contains($"<h1>A wide one, buck {n}</h1>", Words(SampleJobs.InTwoBucks, $"buck-{n}/{OutputFiles.ReportPath}"));
            Assert.Contains($"\nA wide one, buck {n}\n", Words(SampleJobs.InTwoBucks, $"buck-{n}/{OutputFiles.ProcessCardPath}"));
        }
    }

    private static string Words(string name, string path)
    {
        var text = Encoding.UTF8.GetString([.. SampleJobs.Files(name).Single(f => f.Path == path).Content]);
        return NoWords().Replace(text, "").Replace("\r\n", "\n", StringComparison.Ordinal);
    }

    /// <summary>Drawings, style and script, and the sums that follow from both.</summary>
    [GeneratedRegex("<(svg|style|script)[^>]*>.*?</\\1>|<meta http-equiv[^>]*>", RegexOptions.Singleline)]
    private static partial Regex NoWords();
}
