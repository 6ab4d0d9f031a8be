using BuckGen.Cli.Terminals;
using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>What the program does to folders and files that hold something already.</summary>
[Trait("Tier", "slow")]
public sealed class FolderTests : Workshop
{
    [Fact]
    public void A_folder_that_holds_files_of_others_with_our_names_is_refused_unless_forced()
    {
        string[] call = ["buck", Write("plate.svg", Plate), "--depth", "24", "--stock", "12", "--out", At("out")];
        Directory.CreateDirectory(At("out"));
        Write("out/summary.json", "mine");

        Cli.Run(call).AssertRefused("summary.json", "--force");
        Assert.Equal("mine", File.ReadAllText(At("out/summary.json")));
        Assert.Equal(["summary.json"], Present("out"));

        Cli.Run([.. call, "--force"]).AssertDone();
        Assert.Contains("layers/layer-01.dxf", Present("out"));
    }

    [Fact]
    public void A_card_with_notes_in_it_is_not_lost()
    {
        string[] call =
            ["buck", Write("plate.svg", Plate), "--depth", "24", "--stock", "12", "--gauge", "1mm", "--plastic", "petg",
                "--out", At("out")];
        Assert.Equal(0, Cli.Run(call).Status);
        File.AppendAllText(At("out/process-card.txt"), "Heated 40 s. Good.\n");

        Cli.Run(call).AssertRefused("process-card.txt");
    }

    [Fact]
    public void What_is_left_of_an_earlier_run_is_named()
    {
        string[] call = ["buck", Write("plate.svg", Plate), "--stock", "12", "--out", At("out"), "--depth"];
        Cli.Run([.. call, "24"]).AssertDone();
        File.AppendAllText(At("out/layers/layer-02.dxf"), "999\nchanged by hand\n");

        var second = Cli.Run([.. call, "12"]);

        Assert.Equal(0, second.Status);
        Assert.Contains("left in the folder", second.Error);
        Assert.Contains("layers/layer-02.dxf", second.Error);
    }

    [Fact]
    public void A_run_in_the_folder_itself_keeps_the_drawing_and_the_folder()
    {
        Write("plate.svg", Plate);

        Cli.Run("make", Write("job.toml", PlateJob), "--out", Folder).AssertDone();
        Cli.Run("make", At("job.toml"), "--out", Folder).AssertDone();

        Assert.Equal(
            ["cut/board-01-mdf-12.dxf", "job.toml", "layers/layer-01.dxf", "layers/layer-02.dxf", "plate.svg", "report.html",
                "report.png", "summary.json"], Present());
    }

    [Fact]
    public void A_single_file_is_written_whole_and_leaves_nothing_beside_it()
    {
        Write("plate.svg", Plate);

        Cli.Run("inspect", At("plate.svg"), "--svg", At("picture.svg")).AssertDone();
        Cli.Run("inspect", At("plate.svg"), "--svg", At("picture.svg")).AssertDone();
        Cli.Run("inspect", At("plate.svg"), "--svg", At("plate.svg")).AssertRefused("not a picture from BuckGen");
        Cli.Run("inspect", At("plate.svg"), "--svg", At("none/picture.svg")).AssertRefused("picture.svg can't be written");

        Assert.Equal(["picture.svg", "plate.svg"], Present());
        Assert.Equal(Plate, File.ReadAllText(At("plate.svg")));
    }

    [Fact]
    public void What_a_killed_run_left_of_a_single_file_goes_and_anything_else_stays()
    {
        var whole = Cli.Run("new", At("whole.toml"));
        whole.AssertDone();
        Write(".job.toml.buckgen-new", File.ReadAllBytes(At("whole.toml"))[..100]);
        Write(".other.toml.buckgen-new", "mine");

        Cli.Run("new", At("job.toml")).AssertDone();
        Cli.Run("new", At("other.toml")).AssertRefused("in the way");

        Assert.Equal([".other.toml.buckgen-new", "job.toml", "whole.toml"], Present());
        Assert.Equal(File.ReadAllText(At("whole.toml")), File.ReadAllText(At("job.toml")));
        Assert.Equal("mine", File.ReadAllText(At(".other.toml.buckgen-new")));
    }

    [Fact]
    public void Printing_that_goes_wrong_does_not_hide_what_is_written()
    {
        var error = new StringWriter();
        using var full = new FullWriter();

        var status =
            CommandLine.Run(["buck", Write("plate.svg", Plate), "--depth", "24", "--stock", "12", "--out", At("out")],
                new(GuardedWriter.ForOutput(full), GuardedWriter.ForErrors(error)));

        Assert.Equal(0, status);
        Assert.Equal($"buckgen: wrote 6 files to {At("out")}. The result could not be printed (No room).",
            error.ToString().TrimEnd());
    }

    /// <summary>A stream on a full disk.</summary>
    private sealed class FullWriter : StringWriter
    {
        public override void Write(char value) => throw new IOException("No room.");

        public override void Write(string? value) => throw new IOException("No room.");

        public override void Write(char[] buffer, int index, int count) => throw new IOException("No room.");

        public override void WriteLine() => throw new IOException("No room.");

        public override void WriteLine(string? value) => throw new IOException("No room.");
    }
}
