using System.Text.RegularExpressions;
using BuckGen.Output.Folders;
using Xunit;

namespace BuckGen.Tests.Output.Folders;

/// <summary>The small parts of which a folder is changed.</summary>
public sealed class FolderPartsTests : Scratch
{
    /// <summary>Numbers of Linux and macOS (errno.h) and of Windows (winerror.h), from memory.</summary>
    [Theory]
    [InlineData(28, true, false, false)] // ENOSPC
    [InlineData(122, true, false, false)] // EDQUOT
    [InlineData(69, true, false, false)] // EDQUOT of macOS
    [InlineData(unchecked((int)0x80070070), true, false, false)]
    [InlineData(unchecked((int)0x80070027), true, false, false)]
    [InlineData(30, false, true, false)] // EROFS
    [InlineData(unchecked((int)0x80070013), false, true, false)]
    [InlineData(11, false, false, true)] // EAGAIN
    [InlineData(35, false, false, true)]
    [InlineData(unchecked((int)0x80070020), false, false, true)]
    [InlineData(unchecked((int)0x80070021), false, false, true)]
    [InlineData(2, false, false, false)] // ENOENT
    public void A_fault_of_the_disk_is_known_by_its_number(int number, bool full, bool readOnly, bool held)
    {
        var fault = new IOException("", number);

        Assert.Equal((full, readOnly, held), (DiskErrors.IsFull(fault), DiskErrors.IsReadOnly(fault), DiskErrors.IsHeld(fault)));
        Assert.False(DiskErrors.IsFull(new InvalidOperationException())
            || DiskErrors.IsReadOnly(new UnauthorizedAccessException()));
    }

    [Fact]
    public void A_folder_that_can_not_be_flushed_is_named_with_the_system_s_reason()
    {
        if (OperatingSystem.IsWindows()) return;
        var missing = Path.Combine(Out, "missing");

        var message = Assert.Throws<IOException>(() => UnixCalls.Flush(missing)).Message;

        Assert.Matches($"^{Regex.Escape(missing)} can't be flushed: [A-Z][a-z ]+\\.$", message);
    }

    [Fact]
    public void A_file_is_kept_in_its_place_or_beside_it_under_a_name_that_says_why()
    {
        var disk = new Disk();
        Directory.CreateDirectory(Out);
        string Keep(string path) => DisplacedFiles.MoveToFreePath(disk, Put("moved", "kept"), Out, path);

        Assert.Equal("a/b.txt", Keep("a/b.txt"));
        Assert.Equal("a/b.kept.txt", Keep("a/b.txt"));
        Assert.Equal("a/b.kept-2.txt", Keep("a/b.txt"));
        Assert.Equal("a/b.kept-3.txt", Keep("a/b.txt"));
        Assert.Equal("plain", Keep("plain"));
        Assert.Equal("plain.kept", Keep("plain"));
        Assert.Equal(6, Present().Length);
        Assert.All(Present(), f => Assert.EndsWith(": kept", f));
    }

    [Fact]
    public void A_few_files_are_named_and_the_rest_is_counted()
    {
        Assert.Equal("a, b, c", Replacement.Named(["a", "b", "c"]));
        Assert.Equal("a, b, c and 2 more", Replacement.Named(["a", "b", "c", "d", "e"]));
    }

    [Fact]
    public void The_folders_above_a_file_are_named_the_nearest_first()
    {
        Assert.Equal(["a/b", "a"], Replacement.AllAbove("a/b/c.txt"));
        Assert.Empty(Replacement.AllAbove("c.txt"));
    }

    [Fact]
    public void A_view_distinguishes_files_folders_and_links_and_skips_our_own_work()
    {
        Put("out/a/file.txt", "12345");
        Put($"out/{WorkFolder.InsideName}/secret", "1");
        Put($"out/a/{WorkFolder.InsideName}", "2");
        File.CreateSymbolicLink(At("out/link"), At("out/a"));

        var view = FolderView.Scan(Out);

        Assert.Equal(["a", $"a/{WorkFolder.InsideName}", "a/file.txt", "link"], view.Entries.Keys);
        Assert.Equal(new Entry(EntryKind.File, 5), view.At("a/file.txt"));
        Assert.Equal(new Entry(EntryKind.Folder, 0), view.At("a"));
        Assert.Equal(new Entry(EntryKind.Link, 0), view.At("link"));
        Assert.Null(view.At("b"));
        Assert.True(view.IsComplete);
        Assert.Empty(FolderView.Scan(At("nowhere")).Entries);
        Assert.True(FolderView.Scan(At("nowhere")).IsComplete);
    }

    [Fact]
    public void What_lies_at_a_path_is_found_without_following_links()
    {
        var file = Put("out/file.txt", "abc");
        File.CreateSymbolicLink(At("out/dead"), "nowhere");
        File.CreateSymbolicLink(At("out/folder"), Place);

        Assert.True(Contents.Exists(file) && Contents.Exists(At("out/dead")) && Contents.Exists(Out));
        Assert.False(Contents.Exists(At("out/none")));
        Assert.True(Contents.IsFolder(Out));
        Assert.False(Contents.IsFolder(At("out/folder")) || Contents.IsFolder(file));
        // The sum of "abc" is the example of FIPS 180-4.
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Contents.Sum(file));
        Assert.Equal(Contents.Sum("link to nowhere"u8), Contents.Sum(At("out/dead")));
        Assert.True(Contents.CanRead(file) && Contents.CanRead(At("out/dead")));
    }

    [Fact]
    public void A_file_that_others_read_can_be_read_and_one_that_is_gone_cannot()
    {
        var file = Put("out/file.txt", "abc");
        using var theirs = File.OpenRead(file);

        Assert.True(Contents.CanRead(file));
        Assert.Equal(Contents.Sum("abc"u8), Contents.Sum(file));
        Assert.False(Contents.CanRead(At("out/none")));
    }

    [Fact]
    public void A_folder_gets_the_permissions_of_another()
    {
        if (OperatingSystem.IsWindows()) return; // It has no such permissions.
        const UnixFileMode Own = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
        Directory.CreateDirectory(Out, Own);

        new Disk().MakeFolder(At("twin"), Out);

        Assert.Equal(Own, File.GetUnixFileMode(At("twin")));
    }

    [Fact]
    public void A_move_that_cannot_be_made_fails_at_once()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There it is tried again while another program holds the file.");

        Assert.Throws<FileNotFoundException>(() => new Disk().Move(At("none"), At("there")));
    }

    [Fact]
    public void What_the_system_cannot_do_is_reported()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "There are second names and folders can be flushed.");
        var (file, other) = (Put("a", "1"), Put("b", "2"));

        Assert.StartsWith($"{file} can't get the second name {other}: ",
            Assert.Throws<IOException>(() => UnixCalls.Link(file, other)).Message);
        Assert.StartsWith($"{Out} can't be flushed: ", Assert.Throws<IOException>(() => UnixCalls.Flush(Out)).Message);
        Assert.Equal("2", Read("b"));
    }
}
