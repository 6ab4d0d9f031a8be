using System.Collections.Immutable;
using System.Text;
using BuckGen.Output.Files;
using BuckGen.Output.Folders;
using Xunit;

namespace BuckGen.Tests.Output.Folders;

/// <summary>A user works in the folder while a result is written: whatever step it is at, nothing of theirs is lost.</summary>
[Trait("Tier", "slow")]
public sealed class OthersAtWorkTests() : Scratch(inMemory: true)
{
    private const string Theirs = "by hand";

    private static readonly ImmutableArray<OutputFile> Old =
        Result("old", "layers/layer-01.dxf", "layers/layer-02.dxf", "report.html");
    private static readonly ImmutableArray<OutputFile> New =
        Result("new", "layers/layer-01.dxf", "cut/board-01.dxf", "report.html");

    public static TheoryData<string, bool> Places
    {
        get
        {
            var places = new TheoryData<string, bool>();
            foreach (var path in
                (string[])["notes/mine.txt", "notes/new.txt", "layers/layer-01.dxf", "layers/layer-02.dxf", "cut/board-01.dxf",
                    "fresh.txt", "summary.json"])
                foreach (var exchanges in (bool[])[true, false])
                    places.Add(path, exchanges);
            return places;
        }
    }

    [Theory]
    [MemberData(nameof(Places))]
    public void What_is_written_into_the_folder_at_any_step_is_found_there_afterwards(string path, bool exchanges)
    {
        foreach (var saves in (Action<string>[])[WriteInPlace, WriteAndRename])
        {
            for (var (step, steps) = (1, 1); step <= steps; step++)
            {
                Fresh();
                var wrote = false;
                var disk = new FaultyDisk(int.MaxValue, Fault.Error, exchanges)
                {
                    Meanwhile = s => wrote |= s == step && TrySave(saves, At($"out/{path}")),
                };
                Write(disk, New);
                steps = disk.Steps;

                Write(FaultyDisk.Sound, Result("third"));
                if (wrote) Assert.True(Everything().Any(e => e.EndsWith($": {Theirs}", StringComparison.Ordinal)),
                    $"Step {step}: {string.Join(", ", Everything())}");
                Assert.Contains(Everything(), e => e.StartsWith("notes/mine.txt: ", StringComparison.Ordinal));
                Assert.Empty(Beside());
            }
        }
    }

    /// <summary>
    /// A run that finds the work folder of another, and then finds it gone, tries again. The system reports a name that is taken.
    /// </summary>
    [Fact]
    public void A_name_that_is_taken_is_known_from_the_error_of_the_system()
    {
        Fresh();
        File.WriteAllText(At("taken"), "");

        var taken = Assert.Throws<IOException>(() => Directory.CreateDirectory(At("taken")));

        Assert.True(DiskErrors.WasTaken(taken));
        Assert.False(DiskErrors.WasTaken(new IOException("full") { HResult = 28 }));
    }

    [Fact]
    public void Runs_into_one_folder_wait_for_each_other()
    {
        Fresh();
        Parallel.For(0, 24, new() { MaxDegreeOfParallelism = 4 },
            n => new FolderWriter(FaultyDisk.Sound).Write(Out, n % 2 == 0 ? Old : New, false, default));

        string[] found = [.. Present().Where(e => !e.StartsWith("notes/", StringComparison.Ordinal))];
        var whole = found[0].Contains(": old ", StringComparison.Ordinal) ? Old : New;
        Assert.Equal(whole.Select(f => $"{f.Path}: {Encoding.UTF8.GetString([.. f.Content])}")
            .Order(StringComparer.Ordinal), found);
        Assert.Empty(Beside());
    }

    [Fact]
    public void Runs_into_a_folder_that_is_not_there_yet_wait_for_each_other()
    {
        for (var round = 0; round < 5; round++)
        {
            Parallel.For(0, 4, n => new FolderWriter(FaultyDisk.Sound).Write(Out, n % 2 == 0 ? Old : New, false, default));

            Assert.Single(Present().Select(e => e.Split(": ")[1][..3]).Distinct());
            Assert.Empty(Beside());
            Directory.Delete(Out, true);
        }
    }

    [Fact]
    public void A_run_that_takes_too_long_is_reported_in_one_line_or_the_waiting_is_stopped()
    {
        Fresh();
        using (WorkFolder.Claim(FaultyDisk.Sound, WorkFolder.Beside(Out)!, Out, default))
        {
            using var soon = new CancellationTokenSource(TimeSpan.FromMilliseconds(200));
            Assert.ThrowsAny<OperationCanceledException>(() =>
                new FolderWriter(FaultyDisk.Sound).Write(Out, New, false, soon.Token));
            var told = Assert
                .Throws<IOException>(() => new FolderWriter(FaultyDisk.Sound).Write(Out, New, false, default)).Message;
            Assert.Equal($"{Out} is being written by another run of BuckGen; wait until it is done and run again.", told);
        }

        Assert.Empty(Beside());
        Assert.Contains("summary.json: old summary.json", Present());
    }

    [Fact]
    public void What_was_prepared_in_the_folder_itself_keeps_others_out_too()
    {
        Fresh();
        using (WorkFolder.Claim(FaultyDisk.Sound, WorkFolder.Inside(Out), Out, default))
        {
            using var soon = new CancellationTokenSource(TimeSpan.FromMilliseconds(200));
            Assert.ThrowsAny<OperationCanceledException>(() =>
                new FolderWriter(FaultyDisk.Sound).Write(Out, New, false, soon.Token));
        }

        new FolderWriter(FaultyDisk.Sound).Write(Out, New, false, default);
        Assert.DoesNotContain(Everything(), e => e.StartsWith(".buckgen-work", StringComparison.Ordinal));
    }

    private void Fresh()
    {
        if (Directory.Exists(Out)) Directory.Delete(Out, true);
        Write(FaultyDisk.Sound, Old);
        Put("out/notes/mine.txt", "mine");
    }

    private void Write(IDisk disk, ImmutableArray<OutputFile> files)
    {
        try
        {
            new FolderWriter(disk).Write(Out, files, false, default);
        }
        catch (IOException)
        {
            // Refused, since a user's file is in the way: that is one way to lose nothing.
        }
    }

    /// <summary>Saves as a simple editor does; false where the folder isn't there.</summary>
    private static bool TrySave(Action<string> save, string path)
    {
        try
        {
            save(path);
            return true;
        }
        catch (DirectoryNotFoundException)
        {
            return false;
        }
    }

    private static void WriteInPlace(string path) => File.WriteAllText(path, Theirs);

    private static void WriteAndRename(string path)
    {
        File.WriteAllText(path + "~", Theirs);
        File.Move(path + "~", path, overwrite: true);
    }
}
