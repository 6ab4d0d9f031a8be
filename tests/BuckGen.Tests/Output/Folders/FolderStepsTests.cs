using System.Collections.Immutable;
using BuckGen.Output.Files;
using BuckGen.Output.Folders;
using Xunit;

namespace BuckGen.Tests.Output.Folders;

/// <summary>In which order a folder is changed: whatever is cut off, one whole result is left because of it.</summary>
public sealed class FolderStepsTests : Scratch
{
    /// <summary>After the old result one layer goes, one board comes and the summary is replaced.</summary>
    private static readonly ImmutableArray<OutputFile> Old = Result("old", "layers/a.dxf"), New = Result("new", "cut/b.dxf");

    private static FaultyDisk WithoutExchange => new(int.MaxValue, Fault.Error, exchanges: false);

    [Fact]
    public void Where_folders_can_be_exchanged_each_is_made_ready_and_flushed_before_it_is()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Folders can be exchanged.");

        Assert.Equal(
            """
            write beside/about.txt
            flush beside
            make beside/new like out
            make beside/old like out
            exchange beside/new and beside/old
            write beside/new/cut/b.dxf
            write beside/new/summary.json
            write beside/new/.buckgen-files
            flush beside/new/cut
            flush beside/new
            write beside/journal.part
            move beside/journal.part to beside/journal
            flush beside
            make beside/new/notes like out/notes
            link out/notes/mine.txt as beside/new/notes/mine.txt
            flush beside/new/cut
            flush beside/new/notes
            flush beside/new
            exchange beside/new and out
            flush above
            flush beside
            delete beside/new/summary.json
            delete beside/new/.buckgen-files
            delete beside/new/layers/a.dxf
            delete folder beside/new/layers
            link out/cut/b.dxf as beside/new/cut/b.dxf
            link out/summary.json as beside/new/summary.json
            link out/.buckgen-files as beside/new/.buckgen-files
            flush beside/new/cut
            flush beside/new/notes
            flush beside/new
            exchange beside/new and out
            flush above
            flush beside
            delete beside/new/summary.json
            delete beside/new/notes/mine.txt
            delete folder beside/new/notes
            delete beside/new/cut/b.dxf
            delete folder beside/new/cut
            delete beside/new/.buckgen-files
            delete folder beside/new
            delete folder beside/old
            delete beside/journal
            delete beside/about.txt
            delete folder beside
            """,
            Steps(FaultyDisk.Sound), ignoreLineEndingDifferences: true);
    }

    [Fact]
    public void Elsewhere_files_are_moved_from_the_journal_to_its_end() => Assert.Equal(
        """
        write beside/about.txt
        flush beside
        make beside/new like out
        make beside/old like out
        exchange beside/new and beside/old
        write inside/about.txt
        flush inside
        write inside/new/cut/b.dxf
        write inside/new/summary.json
        write inside/new/.buckgen-files
        flush inside/new/cut
        flush inside/new
        write inside/journal.part
        move inside/journal.part to inside/journal
        flush inside
        move out/summary.json to inside/old/summary.json
        move out/.buckgen-files to inside/old/.buckgen-files
        move out/layers/a.dxf to inside/old/layers/a.dxf
        delete folder out/layers
        move inside/new/cut/b.dxf to out/cut/b.dxf
        move inside/new/summary.json to out/summary.json
        move inside/new/.buckgen-files to out/.buckgen-files
        flush out/cut
        flush out
        delete inside/journal
        flush inside
        delete folder inside/new/cut
        delete folder inside/new
        delete inside/old/summary.json
        delete inside/old/layers/a.dxf
        delete folder inside/old/layers
        delete inside/old/.buckgen-files
        delete folder inside/old
        delete inside/about.txt
        delete folder inside
        delete folder beside/new
        delete folder beside/old
        delete beside/about.txt
        delete folder beside
        """,
        Steps(WithoutExchange), ignoreLineEndingDifferences: true);

    [Fact]
    public void A_first_result_is_moved_to_its_place_as_a_whole()
    {
        var noted = new NotedDisk(FaultyDisk.Sound, Place);
        new FolderWriter(noted).Write(Out, New, false, default);

        Assert.Equal(
            """
            write beside/about.txt
            flush beside
            write beside/new/cut/b.dxf
            write beside/new/summary.json
            write beside/new/.buckgen-files
            flush beside/new/cut
            flush beside/new
            move beside/new to out
            flush above
            delete beside/about.txt
            delete folder beside
            """,
            string.Join('\n', noted.Steps.Where(s => !s.StartsWith("make ", StringComparison.Ordinal))),
            ignoreLineEndingDifferences: true);
    }

    [Fact]
    public void Whoever_looks_at_any_step_sees_one_whole_result()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Folders can be exchanged.");
        Begin();
        Directory.CreateDirectory(At("out/empty/er"));
        File.CreateSymbolicLink(At("out/link"), "nowhere");
        var seen = new HashSet<string>();

        Write(new FaultyDisk(int.MaxValue, Fault.Error) { Meanwhile = _ => seen.Add(string.Join("; ", Everything())) }, New);

        Assert.Equal(2, seen.Count);
        Assert.All(seen, s => Assert.Contains("empty/er/", s));
        Assert.Contains(string.Join("; ", Everything()), seen);
    }

    [Theory]
    [InlineData("layers/a.dxf", "layers/a.dxf", "layers/a.dxf")]
    [InlineData("summary.json", "summary.kept.json", "summary.kept.json")]
    // Of a note both stay: what was saved in its place, and what it held before.
    [InlineData("notes/mine.txt", "notes/mine.kept.txt", "notes/mine.txt")]
    public void What_is_saved_just_before_the_exchange_is_kept_and_named(string path, string kept, string saved)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Folders can be exchanged.");
        var exchange = Array.IndexOf(AllSteps(FaultyDisk.Sound), "exchange beside/new and out") + 1;
        Begin();

        var change = Write(new FaultyDisk(int.MaxValue, Fault.Error)
        {
            Meanwhile = step =>
            {
                if (step != exchange) return;
                File.Delete(At($"out/{path}"));
                Put($"out/{path}", "by hand");
            },
        }, New);

        Assert.Equal($"{path} was changed while the files were written; it is kept as {kept}.", Assert.Single(change.Remarks));
        Assert.True(File.Exists(At($"out/{kept}")));
        Assert.Equal("by hand", Read($"out/{saved}"));
        Assert.Equal("new summary.json", Read("out/summary.json"));
        Assert.Empty(Beside());
    }

    [Fact]
    public void What_is_saved_just_before_it_is_moved_stops_the_run_and_stays()
    {
        var move = Array.IndexOf(AllSteps(WithoutExchange), "move out/summary.json to inside/old/summary.json") + 1;
        Begin();
        var disk = new FaultyDisk(int.MaxValue, Fault.Error, exchanges: false)
        {
            Meanwhile = step =>
            {
                if (step == move) Put("out/summary.json", "by hand");
            },
        };

        Assert.Equal($"{At("out/summary.json")} was changed just now; run again.",
            Assert.Throws<IOException>(() => Write(disk, New)).Message);
        Assert.Equal(["layers/a.dxf: old layers/a.dxf", "notes/mine.txt: mine", "summary.json: by hand"], Present());
        Assert.Empty(Beside());
    }

    [Fact]
    public void What_was_begun_with_a_journal_is_taken_back_and_reported()
    {
        for (var step = 4; ; step += 7)
        {
            Begin();
            var disk = new FaultyDisk(step, Fault.PowerCut, exchanges: false);
            if (Xunit.Record.Exception(() => Write(disk, New)) is not PowerCutException) break;
            var begun = File.Exists(At("out/.buckgen-work/journal"));

            var remarks = Write(FaultyDisk.Sound, New).Remarks;

            if (begun) Assert
                .Equal("An earlier run into this folder was interrupted; its changes were undone first.", Assert.Single(remarks));
            else Assert.Empty(remarks);
            Assert.Equal(["cut/b.dxf: new cut/b.dxf", "notes/mine.txt: mine", "summary.json: new summary.json"], Present());
            Assert.Empty(Beside());
        }
    }

    [Theory]
    [InlineData(1000, 0, true)]
    [InlineData(1001, 0, false)]
    [InlineData(1, 100_000_001, false)]
    public void What_holds_too_much_of_others_is_not_exchanged(int files, long bytes, bool exchanged)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Folders can be exchanged.");
        Write(FaultyDisk.Sound, Old);
        for (var i = 0; i < files; i++)
        {
            using var file = File.Create(At($"out/{i}"));
            file.SetLength(bytes);
        }

        var disk = new NotedDisk(FaultyDisk.Sound, Place);
        Write(disk, New);

        Assert.Equal(exchanged, disk.Steps.Contains("exchange beside/new and out"));
        Assert.Equal(files + 3, Directory.GetFiles(Out, "*", SearchOption.AllDirectories).Length);
    }

    [Fact]
    public void A_disk_without_second_names_gets_its_files_moved()
    {
        Begin();

        Write(new FaultyDisk(int.MaxValue, Fault.Error, links: false), New);

        Assert.Equal(["cut/b.dxf: new cut/b.dxf", "notes/mine.txt: mine", "summary.json: new summary.json"], Present());
        Assert.Empty(Beside());
    }

    /// <summary>A journal of the first way would have the next run finish what the second way has begun.</summary>
    [Fact]
    public void What_the_first_way_left_is_cleared_up_before_the_second_begins()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Folders can be exchanged.");

        var steps = AllSteps(new FaultyDisk(int.MaxValue, Fault.Error, links: false));

        var (written, gone) = (Array.IndexOf(steps, "move beside/journal.part to beside/journal"),
            Array.IndexOf(steps, "delete beside/journal"));
        Assert.InRange(written, 0, steps.Length);
        Assert.InRange(gone, written, Array.FindIndex(steps, s => s.Contains("inside/", StringComparison.Ordinal)));
    }

    /// <summary>Whatever fails, a file's folder reaches the disk before the journal that could still put it right.</summary>
    [Fact]
    public void The_journal_goes_only_after_every_folder_it_is_about_is_flushed()
    {
        var undone = 0;
        for (var step = 1; step < 100; step++)
        {
            Begin();
            var noted = new NotedDisk(new FaultyDisk(step, Fault.Error, exchanges: false), Place);
            var failed = Xunit.Record.Exception(() => Write(noted, New)) is IOException;
            var end = noted.Steps.ToList().LastIndexOf("delete inside/journal");
            if (end < 0) continue;

            foreach (var (move, at) in noted.Steps.Take(end).Select((s, i) => (s, i))
                .Where(m => m.s.StartsWith("move inside/", StringComparison.Ordinal)
                    && m.s.Contains(" to out/", StringComparison.Ordinal)))
            {
                var folder = move[(move.IndexOf(" to ", StringComparison.Ordinal) + 4)..move.LastIndexOf('/')];
                if (!Directory.Exists(At(folder))) continue;
                Assert.True(noted.Steps.Take(end).Skip(at).Contains($"flush {folder}"), $"Step {step}: {move}");
                if (failed) undone++;
            }
        }

        Assert.InRange(undone, 3, 1000);
    }

    [Fact]
    public void A_run_that_fails_before_the_exchange_changes_nothing_and_leaves_nothing_beside()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Folders can be exchanged.");
        var steps = AllSteps(FaultyDisk.Sound);
        // Until its mark is on the disk a run owns nothing beside the folder; the next one clears up.
        var (first, exchange) = (Array.IndexOf(steps, "flush beside") + 2,
            Array.IndexOf(steps, "exchange beside/new and out") + 1);
        Assert.InRange(exchange, first + 10, 100);

        for (var step = first; step <= exchange; step++)
        {
            Begin();
            var before = Present();
            var noted = new NotedDisk(new FaultyDisk(step, Fault.Error), Place);
            // A link that can't be made is no failure: files are moved then.
            if (Xunit.Record.Exception(() => Write(noted, New)) is IOException)
                Assert.Equal(before, Present());
            Assert.True(Beside().Length == 0, $"{noted.Steps[step - 1]} failed and left {string.Join(", ", Beside())}");
        }
    }

    [Fact]
    public void A_name_that_is_too_long_for_the_disk_is_reported()
    {
        var path = At(new string('x', 300));

        Assert.Equal($"{path} is too long a name for this disk; name a shorter one.",
            Assert.Throws<IOException>(() => OutputFolder.Write(path, New)).Message);
    }

    /// <summary>The old result and a user's note.</summary>
    private void Begin()
    {
        if (Directory.Exists(Out)) Directory.Delete(Out, true);
        Write(FaultyDisk.Sound, Old);
        Put("out/notes/mine.txt", "mine");
    }

    private FolderChange Write(IDisk disk, ImmutableArray<OutputFile> files) =>
        new FolderWriter(disk).Write(Out, files, false, default);

    /// <summary>The steps but the making of folders without permissions of their own, which is done for every file.</summary>
    private string Steps(IDisk disk) =>
        string.Join('\n', AllSteps(disk)
            .Where(s => !s.StartsWith("make ", StringComparison.Ordinal) || s.Contains(" like ", StringComparison.Ordinal)));

    private string[] AllSteps(IDisk disk)
    {
        Begin();
        var noted = new NotedDisk(disk, Place);
        Write(noted, New);
        return [.. noted.Steps];
    }
}
