using System.Collections.Immutable;
using BuckGen.Output.Files;
using BuckGen.Output.Folders;
using Xunit;

namespace BuckGen.Tests.Output.Folders;

/// <summary>
/// The law of the room: whatever fails after whatever step, the folder holds the whole old or the whole new result and everything
/// of others, and the next run leaves nothing behind. Every step of every way is tried.
/// </summary>
[Trait("Tier", "slow")]
public sealed class CutOffTests() : Scratch(inMemory: true)
{
    /// <summary>More steps than any way takes.</summary>
    private const int ManySteps = 400;

    private static readonly ImmutableArray<OutputFile> Old =
        Result("old", "layers/layer-01.dxf", "layers/layer-02.dxf", "panel/panel-01.dxf", "report.html");
    private static readonly ImmutableArray<OutputFile> New =
        Result("new", "layers/layer-01.dxf", "cut/board-01.dxf", "buck-1/layers/layer-01.dxf", "report.html");
    private static readonly ImmutableArray<OutputFile> Third = Result("third", "drill/vents.csv");

    public static TheoryData<Fault, bool, bool> Ways => new()
    {
        { Fault.PowerCut, true, true }, { Fault.PowerCut, true, false }, { Fault.PowerCut, false, true },
        { Fault.Error, true, true }, { Fault.Error, true, false }, { Fault.Error, false, true },
        { Fault.Pulled, true, true }, { Fault.Pulled, false, true },
    };

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_run_that_fails_at_any_step_leaves_one_whole_result_and_the_next_run_nothing_else(Fault fault,
        bool exchanges, bool links)
    {
        var (old, now, third) = (After(Old), After(New), After(Third));
        var step = 1;
        for (; step < ManySteps; step++)
        {
            Fresh(Old, withNotes: true);
            var disk = new FaultyDisk(step, fault, exchanges, links);
            var told = Try(disk, New);
            if (!disk.Failed) break;

            var found = Present().Where(e => !e.StartsWith(".buckgen-work/", StringComparison.Ordinal)).ToArray();
            Assert.True(NotesOf(found).SequenceEqual(NotesOf(old)), $"Step {step}: {string.Join(", ", found)}");
            // Exchanged, it is whole at once; moved, it is whole when an error has been reported and after a power cut when the
            // next run begins.
            if ((exchanges && links) || fault == Fault.Error) AssertOneOf(step, found, told == "" ? [now] : [old, now]);
            // A run that is stopped at once clears up all the same.
            Try(FaultyDisk.Sound, Third, cancellation: new(canceled: true));
            AssertOneOf(step, Present(), [old, now]);
            Assert.Empty(Beside());

            Assert.Equal("", Try(FaultyDisk.Sound, Third));
            AssertOneOf(step, Present(), [third]);
            Assert.Empty(Beside());
        }

        Assert.InRange(step, 30, ManySteps - 1);
        AssertOneOf(step, Present(), [now]);
    }

    [Theory]
    [InlineData(Fault.PowerCut)]
    [InlineData(Fault.Error)]
    public void Taking_back_what_was_begun_may_be_cut_off_as_well(Fault fault)
    {
        string[][] whole = [After(Old), After(New)];
        for (var first = 30; first < ManySteps; first += 3)
        {
            Fresh(Old, withNotes: true);
            var cut = new FaultyDisk(first, Fault.PowerCut, exchanges: false);
            Try(cut, New);
            if (!cut.Failed) break;
            for (var step = 1; step < 40; step++)
                Try(new FaultyDisk(step, fault, exchanges: false), Third, cancellation: new(canceled: true));

            Try(FaultyDisk.Sound, Third, cancellation: new(canceled: true));
            AssertOneOf(first, Present(), whole);
            Assert.Empty(Beside());
        }
    }

    [Fact]
    public void What_a_user_saved_after_a_cut_is_kept_beside_the_earlier_result()
    {
        const string Path = "out/layers/layer-01.dxf", Kept = "out/layers/layer-01.kept.dxf";
        var kept = 0;
        for (var step = 1; step < ManySteps; step++)
        {
            Fresh(Old, withNotes: false);
            var was = File.ReadAllText(At(Path));
            var disk = new FaultyDisk(step, Fault.PowerCut, exchanges: false);
            Try(disk, New);
            if (!disk.Failed) break;
            var isNew = File.Exists(At(Path)) && File.ReadAllText(At(Path)) != was;
            if (!isNew || !File.Exists(At("out/.buckgen-work/journal"))) continue;

            Put(Path, "by hand");
            Try(FaultyDisk.Sound, Third, cancellation: new(canceled: true));

            // The journal may have been at its end; then the user changed the new result.
            if (File.ReadAllText(At(Path)) == "by hand") continue;
            Assert.Equal((was, "by hand"), (File.ReadAllText(At(Path)), File.ReadAllText(At(Kept))));
            kept++;
        }

        Assert.InRange(kept, 3, ManySteps);
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_first_run_that_fails_leaves_no_folder_or_a_whole_one(Fault fault, bool exchanges, bool links)
    {
        var now = After(New, withNotes: false);
        var step = 1;
        for (; step < ManySteps; step++)
        {
            Clear();
            var disk = new FaultyDisk(step, fault, exchanges, links);
            Try(disk, New, into: At("deep/er/out"));
            if (!disk.Failed) break;

            AssertOneOf(step, Present("deep/er/out"), [[], now]);
            Assert.Equal("", Try(FaultyDisk.Sound, Third, into: At("deep/er/out")));
            Assert.Equal(["out"], Directory.GetFileSystemEntries(At("deep/er")).Select(Path.GetFileName));
        }

        Assert.InRange(step, 15, ManySteps - 1);
    }

    /// <summary>Runs and says how it failed: "" for not at all.</summary>
    private string Try(IDisk disk, ImmutableArray<OutputFile> files, string? into = null,
        CancellationToken cancellation = default)
    {
        try
        {
            new FolderWriter(disk).Write(into ?? Out, files, force: false, cancellation);
            return "";
        }
        catch (Exception failed) when (failed is IOException or PowerCutException or OperationCanceledException)
        {
            return failed.Message;
        }
    }

    /// <summary>What lies in the folder when a run has gone well.</summary>
    private string[] After(ImmutableArray<OutputFile> files, bool withNotes = true)
    {
        Fresh(files, withNotes);
        return Present();
    }

    private void Clear()
    {
        foreach (var entry in new DirectoryInfo(Place).GetDirectories()) entry.Delete(true);
    }

    private void Fresh(ImmutableArray<OutputFile> files, bool withNotes)
    {
        Clear();
        Try(FaultyDisk.Sound, files);
        if (!withNotes) return;
        Put("out/notes/mine.txt", "mine");
        Put("out/layers/a note.txt", "mine too");
        Directory.CreateDirectory(At("out/empty"));
        File.CreateSymbolicLink(At("out/link"), "nowhere");
    }

    private static string[] NotesOf(string[] present) =>
        [.. present.Where(e => e.Contains("mine", StringComparison.Ordinal) || e.Contains("->", StringComparison.Ordinal)
            || e == "empty/")];

    private static void AssertOneOf(int step, string[] found, string[][] whole) =>
        Assert.True(whole.Any(w => w.SequenceEqual(found)), $"Step {step} left: {string.Join(", ", found)}");
}
