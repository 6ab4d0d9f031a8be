using System.Diagnostics;
using BuckGen.Output.Folders;
using BuckGen.Tests.Output.Folders;
using Xunit;

namespace BuckGen.Tests.Output.Files;

/// <summary>What a run does to its folder, on a real disk.</summary>
[Trait("Tier", "slow")]
public sealed class OutputFolderTests : Scratch
{
    [Fact]
    public void Files_lie_where_their_paths_say()
    {
        var change = OutputFolder.Write(Out, Result("new", "cut/a.dxf", "layers/b.dxf"));

        Assert.Equal(["cut/a.dxf: new cut/a.dxf", "layers/b.dxf: new layers/b.dxf", "summary.json: new summary.json"], Present());
        Assert.Empty(change.Removed);
        Assert.Empty(change.Remarks);
        Assert.Empty(Beside());
    }

    [Fact]
    public void What_an_earlier_run_made_and_this_one_did_not_is_removed_with_its_empty_folder()
    {
        OutputFolder.Write(Out,
            Result("old", "layers/layer-01.dxf", "layers/layer-02.dxf", "jig/ring-01.dxf", "process-card.txt"));
        var change = OutputFolder.Write(Out, Result("new", "layers/layer-01.dxf"));

        Assert.Equal(["layers/layer-01.dxf: new layers/layer-01.dxf", "summary.json: new summary.json"], Present());
        Assert.Equal(["jig/ring-01.dxf", "layers/layer-02.dxf", "process-card.txt"],
            change.Removed.Order(StringComparer.Ordinal));
        Assert.Empty(change.Remarks);
    }

    [Fact]
    public void What_another_program_put_there_stays()
    {
        Put("out/layers/notes.txt", "mine");
        Put("out/a/b/c.txt", "mine");
        Directory.CreateDirectory(At("out/empty/er"));
        OutputFolder.Write(Out, Result("old", "layers/layer-01.dxf"));
        OutputFolder.Write(Out, Result("new"));

        Assert.Equal(["a/b/c.txt: mine", "empty/er/", "layers/notes.txt: mine", "summary.json: new summary.json"], Present());
    }

    [Fact]
    public void A_folder_that_was_called_unfinished_is_its_owners()
    {
        Put("out.unfinished/mine.txt", "mine");
        OutputFolder.Write(Out, Result("new", "layers/layer-01.dxf"));

        Assert.Equal(["mine.txt: mine"], Present("out.unfinished"));
    }

    [Fact]
    public void The_folder_itself_stays_the_same_folder()
    {
        OutputFolder.Write(Out, Result("old", "layers/layer-01.dxf"));
        if (!OperatingSystem.IsLinux()) return; // Its number on the disk is read, with a program of Linux.
        File.SetUnixFileMode(Out,
            UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute
                | UnixFileMode.GroupRead | UnixFileMode.SetGroup);
        var (rights, number) = (File.GetUnixFileMode(Out), Number());

        OutputFolder.Write(Out, Result("new", "layers/layer-01.dxf"));

        Assert.Equal((rights, number), (File.GetUnixFileMode(Out), Number()));

        string Number()
        {
            using var stat = Process.Start(new ProcessStartInfo("stat", ["-c", "%i", Out]) { RedirectStandardOutput = true })!;
            return stat.StandardOutput.ReadToEnd();
        }
    }

    [Theory]
    [InlineData("summary.json")]
    [InlineData("layers/layer-01.dxf")]
    [InlineData(".buckgen-files")]
    public void What_lies_in_the_way_and_is_not_ours_is_refused_and_replaced_by_force(string path)
    {
        Put($"out/{path}", "mine");

        AssertRefused(path, "--force");
        Assert.Equal([$"{path}: mine"], Everything());

        OutputFolder.Write(Out, Result("new", "layers/layer-01.dxf"), force: true);
        Assert.Equal(["layers/layer-01.dxf: new layers/layer-01.dxf", "summary.json: new summary.json"], Present());
    }

    [Fact]
    public void What_was_changed_since_is_its_owners_and_only_force_replaces_it()
    {
        OutputFolder.Write(Out, Result("old", "layers/layer-01.dxf"));
        Put("out/layers/layer-01.dxf", "changed by hand");

        AssertRefused("layers/layer-01.dxf");
        Assert.Equal("changed by hand", Read("out/layers/layer-01.dxf"));
        Assert.Equal("old summary.json", Read("out/summary.json"));

        OutputFolder.Write(Out, Result("new", "layers/layer-01.dxf"), force: true);
        Assert.Equal("new layers/layer-01.dxf", Read("out/layers/layer-01.dxf"));
    }

    [Fact]
    public void What_was_changed_since_and_is_not_written_again_stays_and_is_named()
    {
        OutputFolder.Write(Out, Result("old", "layers/layer-01.dxf", "layers/layer-02.dxf"));
        Put("out/layers/layer-02.dxf", "changed by hand");
        Put("out/layers/notes.txt", "mine");

        var change = OutputFolder.Write(Out, Result("new", "layers/layer-01.dxf"));

        Assert.Equal("changed by hand", Read("out/layers/layer-02.dxf"));
        Assert.Empty(change.Removed);
        Assert.EndsWith(": layers/layer-02.dxf.", Assert.Single(change.Remarks));
    }

    [Fact]
    public void A_file_that_has_the_very_bytes_is_no_hindrance()
    {
        Put("out/layers/layer-01.dxf", "new layers/layer-01.dxf");
        Put("out/summary.json", "new summary.json");

        OutputFolder.Write(Out, Result("new", "layers/layer-01.dxf"));

        // From now on they are recorded.
        OutputFolder.Write(Out, Result("newer", "layers/layer-01.dxf"));
        Assert.Equal("newer layers/layer-01.dxf", Read("out/layers/layer-01.dxf"));
    }

    [Fact]
    public void A_result_without_a_record_is_refused_and_by_force_what_is_left_of_it_is_named()
    {
        // As versions before the record wrote it.
        Put("out/summary.json",
            """{ "schema": "buckgen-summary/1", "files": ["layers/layer-01.dxf", "layers/layer-02.dxf", "summary.json"] }""");
        Put("out/layers/layer-01.dxf", "old");
        Put("out/layers/layer-02.dxf", "old");

        AssertRefused("summary.json");

        var change = OutputFolder.Write(Out, Result("new", "layers/layer-01.dxf"), force: true);
        Assert.Equal("old", Read("out/layers/layer-02.dxf"));
        Assert.EndsWith(": layers/layer-02.dxf.", Assert.Single(change.Remarks));
    }

    [Theory]
    [InlineData("layers/layer-09.dxf")]
    [InlineData("notes.txt")]
    [InlineData("photos/layer-09.dxf")]
    [InlineData("../outside.txt")]
    public void A_forged_summary_removes_nothing(string listed)
    {
        Put($"out/{listed}", "mine");
        OutputFolder.Write(Out, [Made("summary.json", $$"""{ "schema": "buckgen-summary/1", "files": ["{{listed}}"] }""")]);

        OutputFolder.Write(Out, Result("new"));

        Assert.Equal("mine", Read($"out/{listed}"));
    }

    [Theory]
    [InlineData("notes.txt")]
    [InlineData("photos/layer-09.dxf")]
    [InlineData("layers/../notes.txt")]
    [InlineData("../outside.txt")]
    public void A_forged_record_removes_nothing_but_what_has_a_name_of_ours(string listed)
    {
        Directory.CreateDirectory(At("out/layers"));
        Put($"out/{listed}", "mine");
        File.WriteAllBytes(At($"out/{Record}"), [.. FolderRecord.FromFiles([Made(listed, "mine")]).AsFile().Content]);

        OutputFolder.Write(Out, Result("new"));

        Assert.Equal("mine", Read($"out/{listed}"));
    }

    [Fact]
    public void A_linked_folder_is_not_gone_through()
    {
        OutputFolder.Write(Out, Result("old", "layers/layer-01.dxf", "jig/ring-01.dxf"));
        Directory.Move(At("out/layers"), At("elsewhere"));
        Directory.Move(At("out/jig"), At("elsewhere too"));
        Directory.CreateSymbolicLink(At("out/layers"), At("elsewhere"));
        Directory.CreateSymbolicLink(At("out/jig"), At("elsewhere too"));

        AssertRefused("out/layers is a link");
        var change = OutputFolder.Write(Out, Result("new"));

        Assert.Empty(change.Removed);
        Assert.Equal("old layers/layer-01.dxf", Read("elsewhere/layer-01.dxf"));
        Assert.Equal("old jig/ring-01.dxf", Read("elsewhere too/ring-01.dxf"));
        Assert.Contains(Present(), e => e.StartsWith("layers -> ", StringComparison.Ordinal));
        Assert.ThrowsAny<IOException>(() => OutputFolder.Write(Out, Result("new", "layers/layer-01.dxf"), force: true));
    }

    [Fact]
    public void A_linked_file_is_not_written_through()
    {
        Put("mine.txt", "mine");
        Directory.CreateDirectory(Out);
        File.CreateSymbolicLink(At("out/summary.json"), At("mine.txt"));

        AssertRefused("summary.json");

        OutputFolder.Write(Out, Result("new"), force: true);
        Assert.Equal("mine", Read("mine.txt"));
        Assert.Equal(["summary.json: new summary.json"], Present());
    }

    [Fact]
    public void A_link_to_the_folder_stands_for_it()
    {
        Put("real/notes.txt", "mine");
        Directory.CreateSymbolicLink(Out, At("real"));

        OutputFolder.Write(Out, Result("new"));

        Assert.NotNull(new DirectoryInfo(Out).LinkTarget);
        Assert.Equal(["notes.txt: mine", "summary.json: new summary.json"], Present("real"));
        Assert.Equal(["real"], Beside());
    }

    [Fact]
    public void A_link_that_leads_nowhere_is_refused()
    {
        Directory.CreateSymbolicLink(Out, At("nowhere"));

        AssertRefused("leads to no folder");
        Assert.Equal(["nowhere"], [Path.GetFileName(new DirectoryInfo(Out).LinkTarget)]);
    }

    [Theory]
    [InlineData("layers", "is a file where a folder must go")]
    [InlineData("layers/layer-01.dxf/x", "is a folder where a file must go")]
    public void What_is_a_file_instead_of_a_folder_or_the_other_way_round_is_refused(string path, string says)
    {
        Put($"out/{path}", "mine");

        AssertRefused(says);
        Assert.ThrowsAny<IOException>(() => OutputFolder.Write(Out, Result("new", "layers/layer-01.dxf"), force: true));
        Assert.Equal([$"{path}: mine"], Everything());
        Assert.Empty(Beside());
    }

    [Fact]
    public void A_file_of_the_folders_name_is_refused()
    {
        Put("out", "mine");

        AssertRefused("out is a file");
        Assert.Equal("mine", Read("out"));
    }

    [Fact]
    public void What_has_the_name_of_the_work_folder_and_is_not_ours_is_refused_and_stays()
    {
        Put(".out.buckgen-work/new/mine.txt", "mine");
        AssertRefused(".out.buckgen-work is in the way");
        Assert.Equal(["new/mine.txt: mine"], Everything(".out.buckgen-work"));

        Directory.Delete(At(".out.buckgen-work"), true);
        Put(".out.buckgen-work/lock", "mine");
        AssertRefused(".out.buckgen-work is in the way");
        Assert.Equal(["lock: mine"], Everything(".out.buckgen-work"));

        Directory.Delete(At(".out.buckgen-work"), true);
        Put(".out.buckgen-work/about.txt", "mine");
        AssertRefused(".out.buckgen-work is in the way");

        Directory.Delete(At(".out.buckgen-work"), true);
        Put("elsewhere/about.txt", "");
        Directory.CreateSymbolicLink(At(".out.buckgen-work"), At("elsewhere"));
        AssertRefused(".out.buckgen-work is in the way");
        Assert.Equal(["about.txt: "], Everything("elsewhere"));
    }

    [Fact]
    public void A_refused_run_leaves_no_folders_that_it_made_on_the_way()
    {
        Put("file", "mine");

        Assert.ThrowsAny<IOException>(() => OutputFolder.Write(At("file/a/b"), Result("new")));
        Assert.Throws<OperationCanceledException>(() =>
            OutputFolder.Write(At("a/b/out"), Result("new"), false, new(canceled: true)));

        Assert.Equal(["file"], Beside());
    }

    [Theory]
    [InlineData("../x")]
    [InlineData("a/../b")]
    [InlineData("/x")]
    [InlineData("a//b")]
    [InlineData("./a")]
    [InlineData("")]
    [InlineData("a\nb")]
    [InlineData(".buckgen-files")]
    [InlineData(".buckgen-work/x")]
    [InlineData("summary.json")]
    public void A_path_that_leads_out_of_the_folder_or_is_taken_is_a_fault_of_the_caller(string path) =>
        Assert.Throws<ArgumentException>(() => OutputFolder.Write(Out, Result("new", path)));

    [Fact]
    public void A_path_that_is_there_twice_is_named() =>
        Assert.StartsWith("\"summary.json\" is there twice.",
            Assert.Throws<ArgumentException>(() => OutputFolder.Write(Out, Result("new", "summary.json"))).Message);

    [Fact]
    public void A_folder_needs_a_name() => Assert.Throws<ArgumentException>(() => OutputFolder.Write(" ", Result("new")));

    [Fact]
    public void The_same_result_leaves_the_same_record()
    {
        OutputFolder.Write(Out, Result("new", "layers/layer-01.dxf"));
        OutputFolder.Write(At("two"), Result("new", "layers/layer-01.dxf"));

        Assert.Equal(Everything(), Everything("two"));
        Assert.Contains($"{Contents.Sum("new summary.json"u8)}  summary.json\n", Read($"out/{Record}"));
    }

    [Fact]
    public void Nothing_can_be_opened_that_would_wait_for_ever()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "There are pipes with names.");
        Directory.CreateDirectory(Out);
        Process.Start("mkfifo", [At("out/pipe"), At("out/summary.json")]).WaitForExit();

        AssertRefused("summary.json");
        File.Delete(At("out/summary.json"));
        OutputFolder.Write(Out, Result("new"));

        Assert.True(File.Exists(At("out/pipe")));
    }

    [Fact]
    public void A_place_without_write_permission_is_reported_in_one_line()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Not even root can make files there.");

        var told = Assert.ThrowsAny<IOException>(() => OutputFolder.Write("/sys/kernel", Result("new"))).Message;

        Assert.StartsWith("/sys/kernel may not be written", told);
        Assert.Contains("name another folder", told);
    }

    private void AssertRefused(params string[] says)
    {
        var before = (Everything(), Beside());
        var told = Assert.ThrowsAny<IOException>(() => OutputFolder.Write(Out, Result("new", "layers/layer-01.dxf"))).Message;
        Assert.All(says, s => Assert.Contains(s, told));
        Assert.DoesNotContain('\n', told);
        Assert.Equal(before.Item1, Everything());
        Assert.Equal(before.Item2, Beside());
    }
}
