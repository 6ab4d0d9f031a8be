using System.Diagnostics;
using BuckGen.Output.Folders;
using Xunit;

namespace BuckGen.Tests.Output.Folders;

/// <summary>
/// The output folder is a disk of its own, small, full or read-only. Only root may mount one; for others <see
/// cref="CutOffTests"/> tries the same way without.
/// </summary>
public sealed class MountTests : Scratch
{
    [Fact]
    public void A_full_disk_leaves_the_earlier_result_and_says_what_it_takes()
    {
        var large = new string('x', 40_000);
        using var mount = Mount.Try(Out, "size=128k");
        if (mount is null) return;
        OutputFolder.Write(Out, [Made("cut/board-01.dxf", large + "old"), Made("summary.json", "old")]);
        Put("out/notes.txt", "mine");

        var told = Assert
            .Throws<IOException>(() =>
                OutputFolder.Write(Out, [Made("cut/board-01.dxf", large + large + "new"), Made("summary.json", "new")])).Message;

        Assert.Contains("There is no room for the result", told);
        Assert.Contains("it takes 80 kB", told);
        Assert.Equal([$"cut/board-01.dxf: {large}old", "notes.txt: mine", "summary.json: old"], Present());
        OutputFolder.Write(Out, Result("new"));
        Assert.Equal(["notes.txt: mine", "summary.json: new summary.json"], Present());
        Assert.Empty(Beside());
    }

    [Fact]
    public void A_read_only_disk_is_reported_in_one_line()
    {
        using var mount = Mount.Try(Out, "size=128k,ro");
        if (mount is null) return;

        Assert.StartsWith($"{Out} may not be written",
            Assert.Throws<IOException>(() => OutputFolder.Write(Out, Result("new"))).Message);
        Assert.StartsWith($"{At("out/in/it")} may not be written",
            Assert.Throws<IOException>(() => OutputFolder.Write(At("out/in/it"), Result("new"))).Message);
        Assert.Empty(Beside());
    }

    [Fact]
    public void A_disk_within_the_folder_stays_where_it_is()
    {
        OutputFolder.Write(Out, Result("old", "layers/layer-01.dxf"));
        using var mount = Mount.Try(At("out/other"), "size=128k");
        if (mount is null) return;
        Put("out/other/notes.txt", "mine");

        OutputFolder.Write(Out, Result("new", "cut/board-01.dxf"));

        Assert.Equal(["cut/board-01.dxf: new cut/board-01.dxf", "other/notes.txt: mine", "summary.json: new summary.json"],
            Present());
        Assert.Empty(Beside());
    }

    /// <summary>A small disk in memory.</summary>
    private sealed class Mount(string place) : IDisposable
    {
        public static Mount? Try(string place, string options)
        {
            if (!OperatingSystem.IsLinux() || Environment.UserName != "root") return null;
            Directory.CreateDirectory(place);
            return Run("mount", "-t", "tmpfs", "-o", options, "tmpfs", place) ? new(place) : null;
        }

        public void Dispose() => Run("umount", place);

        private static bool Run(string program, params string[] arguments)
        {
            using var run = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
            run.StandardError.ReadToEnd();
            run.WaitForExit();
            return run.ExitCode == 0;
        }
    }
}
