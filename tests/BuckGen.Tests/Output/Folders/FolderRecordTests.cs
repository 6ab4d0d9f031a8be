using System.Text;
using BuckGen.Output.Files;
using BuckGen.Output.Folders;
using BuckGen.Tests.Output.Reports;
using Xunit;

namespace BuckGen.Tests.Output.Folders;

/// <summary>The record of what was written, the journal of what is being done, and what may be listed.</summary>
[Trait("Tier", "slow")]
public sealed class FolderRecordTests
{
    private static readonly string Whole = Text(new("b", [1]), new("a b", []));

    [Fact]
    public void A_record_reads_back_what_it_was_written_from()
    {
        var read = FolderRecord.Parse(Whole)!;

        // The sums are those of FIPS 180-4 for one byte 01 and for nothing, taken with sha256sum.
        Assert.Equal(["a b", "b"], read.Files.Keys);
        Assert.Equal("4bf5122f344554c53bde2ebb8cd2b7e3d1600ad631c385a5d7cce23c7785459a", read.Files["b"]);
        Assert.Equal("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855", read.Files["a b"]);
        Assert.Empty(FolderRecord.Parse(Text())!.Files);
    }

    [Fact]
    public void A_record_that_was_changed_or_cut_off_anywhere_does_not_count()
    {
        for (var length = 0; length < Whole.Length; length++) Assert.Null(FolderRecord.Parse(Whole[..length]));
        for (var place = 0; place < Whole.Length; place++)
            Assert.Null(FolderRecord.Parse(Whole[..place] + (Whole[place] == 'x' ? 'y' : 'x') + Whole[(place + 1)..]));
        Assert.Null(FolderRecord.Parse(Whole + "\n"));
        Assert.Null(FolderRecord.Parse(Signed("nonsense")));
        Assert.Null(FolderRecord.Parse(Signed($"{new string('a', 64)} b")));
        Assert.Null(FolderRecord.Parse(Signed($"{new string('g', 64)}  b")));
        Assert.Null(FolderRecord.Parse(Signed($"{new string('a', 64)}  ")));
        Assert.Null(FolderRecord.Parse(Signed($"{new string('a', 64)}  b", $"{new string('b', 64)}  b")));
        Assert.NotNull(FolderRecord.Parse(Signed($"{new string('a', 64)}  b")));
    }

    [Theory]
    [InlineData("process-card.txt", true)]
    [InlineData("report.html", true)]
    [InlineData("report.png", true)]
    [InlineData("layers/layer-01.dxf", true)]
    [InlineData("cut/board-01-mdf-12.svg", true)]
    [InlineData("drill/vents.csv", true)]
    [InlineData("jig/ring-01.dxf", true)]
    [InlineData("panel/panel-01.dxf", true)]
    [InlineData("model/buck.stl", true)]
    [InlineData("templates/trim.pdf", true)]
    [InlineData("notes.txt", false)]
    [InlineData("layers", false)]
    [InlineData("layers/", false)]
    [InlineData("layers/..", false)]
    [InlineData("layers/../report.html", false)]
    [InlineData("layers/my notes.txt", false)]
    [InlineData("layers/deep/layer-01.dxf", false)]
    [InlineData("layers/layer_01.dxf", false)]
    [InlineData("old/layers/layer-01.dxf", false)]
    [InlineData("/layers/layer-01.dxf", false)]
    public void Only_names_that_this_program_gives_may_be_removed(string path, bool may) =>
        Assert.Equal(may, FolderRecord.MayList(path));

    [Theory]
    [InlineData(ChangeMethod.Swap)]
    [InlineData(ChangeMethod.Moves)]
    public void A_journal_reads_back_what_it_was_written_from(object way)
    {
        var (come, go) = (new FileSum("a/b c.dxf", new('1', 64)), new FileSum("d", new('2', 64)));
        var read = Journal.Parse(Encoding.UTF8.GetString(new Journal((ChangeMethod)way, [come], [go], ["a", "x/y"]).ToBytes()));

        Assert.Equal((ChangeMethod)way, read.Method);
        Assert.Equal([come], read.Incoming);
        Assert.Equal([go], read.Outgoing);
        Assert.Equal(["a", "x/y"], read.Folders);
        Assert.True(read.Contains(come) && read.Contains(go));
        Assert.False(read.Contains(new("d", come.Sum)));
    }

    [Fact]
    public void Every_file_that_a_job_makes_may_be_listed() =>
        Assert.All(
            SampleJobs.Names.SelectMany(n => SampleJobs.Files(n.Data)).Where(f => f.Path != OutputFiles.SummaryPath),
            f => Assert.True(FolderRecord.MayList(f.Path), f.Path));

    private static string Text(params OutputFile[] files) =>
        Encoding.UTF8.GetString([.. FolderRecord.FromFiles(files).AsFile().Content]);

    /// <summary>A record of lines with the proof that belongs to them.</summary>
    private static string Signed(params string[] lines)
    {
        var text = string.Join('\n', [Whole.Split('\n')[0], .. lines]);
        return $"{text}\n# {Contents.Sum(Encoding.UTF8.GetBytes(text))}\n";
    }
}
