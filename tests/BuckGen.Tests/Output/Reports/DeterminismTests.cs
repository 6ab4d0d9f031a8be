using System.Globalization;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Dxf;
using BuckGen.Intake.Reading;
using BuckGen.Jobs;
using BuckGen.Output.Files;
using BuckGen.Tests.Conventions;
using Xunit;

namespace BuckGen.Tests.Output.Reports;

/// <summary>The same job gives byte-identical files: twice, in any culture, for every example.</summary>
[Trait("Tier", "slow")]
public class DeterminismTests
{
    public static TheoryData<string> Examples =>
        [.. Directory.GetFiles(Path.Combine(Repository.Root, "examples"), "*.toml", SearchOption.AllDirectories)
        .Select(p => Path.GetRelativePath(Repository.Root, p).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    public static TheoryData<string> Samples => SampleJobs.Names;

    [Fact]
    public void There_are_examples() => Assert.InRange(Examples.Count, 2, int.MaxValue);

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_gives_the_same_bytes_twice_and_in_Turkish_and_German(string job) => AssertSame(() => Make(job));

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_sample_gives_the_same_bytes_twice_and_in_Turkish_and_German(string name) =>
        AssertSame(() => [.. SampleJobs.FilesAnew(name)]);

    private static void AssertSame(Func<OutputFile[]> make)
    {
        var first = Under("", make);
        Assert.NotEmpty(first);
        // Three runs that agree also show that two in one culture would.
        foreach (var culture in (string[])["tr-TR", "de-DE"])
        {
            var again = Under(culture, make);

            Assert.Equal(first.Select(f => f.Path), again.Select(f => f.Path));
            Assert.All(first.Zip(again),
                p => Assert.True(p.First.Content.AsSpan().SequenceEqual(p.Second.Content.AsSpan()), $"{p.First.Path} "
                    + $"differs in '{culture}'"));
        }
    }

    private static OutputFile[] Make(string path)
    {
        var job = JobFile.Read(Repository.Text(path), Path.GetFileName(path));
        var content = File.ReadAllBytes(Path.Combine(Repository.Root, Path.GetDirectoryName(path)!, job.OutlineFile));
        var outline = OutlineReader.Read(content, job.OutlineFile, job.Reading);
        var plan = CutPlan.Create(BuckDesign.Create(outline, job.Buck), job.Cutting);
        return [.. OutputFiles.Create(plan, job.Output with { Svg = true, DxfVersion = DxfVersion.R2000 }),
            .. OutputFiles.Create(plan, job.Output)];
    }

    private static T Under<T>(string culture, Func<T> work)
    {
        var before = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = new(culture);
            return work();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = before;
        }
    }
}
